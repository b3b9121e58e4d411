package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.fieldset;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.legend;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.HoleScreens.Screen;
import loopwright.action.PlanChoice;
import loopwright.action.SolvedHole;
import loopwright.flight.Wind;
import loopwright.geo.Place;

/** What is turned beside the chart of a hole: the wind on a dial, and the locks of the tee shot. */
final class HoleKnobs {
    private final PlanChoice choice;
    private final int number;
    private final Units units;

    HoleKnobs(PlanChoice choice, int number, Units units) {
        this.choice = choice;
        this.number = number;
        this.units = units;
    }

    DomContent content(SolvedHole hole, Screen screen) {
        return div(wind(hole, screen), locks(hole)).withClass("knobs");
    }

    private DomContent wind(SolvedHole hole, Screen screen) {
        Wind wind = choice.day().wind();
        long from = Math.round(Math.toDegrees(wind.fromBearingRadians())) % 360;
        String speed = wind.isStill() ? "0" : Words.of("%.0f", units.windNumber(wind.speedMetresPerSecond()));
        return fieldset(
                        legend(Texts.say("hole.wind")),
                        rawHtml(dial(from, north(hole, screen), wind.isStill())),
                        label(
                                span(units.windUnit()),
                                input().withType("number")
                                        .withId("wind-speed")
                                        .withValue(speed)
                                        .attr("min", 0)
                                        .attr("max", Math.round(units.windNumber(26.8)))),
                        label(
                                span(Texts.say("day.from")),
                                input().withType("number")
                                        .withId("wind-from")
                                        .withValue(Long.toString(from))
                                        .attr("min", 0)
                                        .attr("max", 360)
                                        .attr("step", 5)),
                        p(Texts.say("hole.windMeans")).withClass("note"))
                .withClass("wind")
                .attr("data-per-unit", units.windMetresPerSecond(1))
                .attr("data-gust", wind.isGusty() ? wind.gustMetresPerSecond() / wind.speedMetresPerSecond() : 0);
    }

    /** Degrees by which north is turned on the chart, clockwise. */
    private static double north(SolvedHole hole, Screen screen) {
        Place tee = hole.plan().tee();
        double[] at = screen.at(tee);
        double[] ahead = screen.at(tee.along(0, 50));
        return Math.toDegrees(Math.atan2(ahead[0] - at[0], at[1] - ahead[1]));
    }

    /** The arrow points where the wind blows to, as smoke would drift over the chart. */
    private static String dial(long from, double north, boolean still) {
        return String.format(
                Locale.ROOT,
                "<svg class=\"dial%s\" viewBox=\"-50 -50 100 100\" data-north=\"%.1f\" tabindex=\"0\" role=\"slider\""
                        + " aria-label=\"%s\" aria-valuemin=\"0\" aria-valuemax=\"359\" aria-valuenow=\"%d\">"
                        + "<circle r=\"40\"/><path class=\"tick\" transform=\"rotate(%.1f)\" d=\"M0 -36V-46\"/>"
                        + "<path class=\"blow\" transform=\"rotate(%.1f)\" d=\"M0 30V-28M-9 -15L0 -30L9 -15\"/></svg>",
                still ? " still" : "",
                north,
                Texts.say("hole.dial"),
                from,
                north,
                north + from + 180);
    }

    /** Locks on the tee shot, as addresses: each solves the hole again and shows what it costs. */
    private DomContent locks(SolvedHole hole) {
        List<DomContent> out = new ArrayList<>();
        List<String> now = new ArrayList<>(choice.forbid());
        now.addAll(choice.require());
        if (!now.isEmpty()) {
            out.add(p(
                    text(Texts.say("hole.locked", String.join(", ", now)) + " "),
                    link(choice.withLocks(List.of(), List.of()), Texts.say("hole.free"))));
        }
        var first = hole.plan().shots().get(0);
        List<String> clubs = new ArrayList<>(List.of(first.club()));
        first.alternatives().forEach(a -> clubs.add(a.club()));
        out.add(p(link(forbidding(first.club()), Texts.say("hole.lock", first.club()))));
        out.add(p(each(
                clubs.subList(1, clubs.size()),
                c -> span(link(requiring(c), Texts.say("hole.require", c)), text(" ")))));
        return div(out.toArray(DomContent[]::new)).withClass("locks");
    }

    private PlanChoice forbidding(String club) {
        List<String> more = new ArrayList<>(choice.forbid());
        more.add("hole " + number + ": " + club);
        return choice.withLocks(more, choice.require());
    }

    private PlanChoice requiring(String club) {
        return choice.withLocks(choice.forbid(), List.of("hole " + number + ": " + club));
    }

    private DomContent link(PlanChoice to, String words) {
        return a(words).withHref(HoleTable.link(to, number)).withClass("resolve");
    }
}
