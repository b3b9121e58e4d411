package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.input;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.HoleScreens.Screen;
import loopwright.action.RoundPlan;
import loopwright.action.SolvedHole;
import loopwright.geo.Place;

/** What can be played from a spot, cheapest first; on a chart each can be shown, and any two compared. */
final class WaysTable {
    private final SolvedHole.Spot spot;
    private final Units units;

    WaysTable(SolvedHole.Spot spot, Units units) {
        this.spot = spot;
        this.units = units;
    }

    /** To be read alone. */
    DomContent plain() {
        return table(
                caption(Texts.say("ways.caption")),
                ColumnHeads.of("ways.club", "ways.side", "ways.cost"),
                tbody(each(
                        spot.ways(),
                        w -> tr(th(w.club()).attr("scope", "row"), td(side(w.offsetMetres())), td(cost(w))))));
    }

    /** An aim of the coach's own stands first. */
    DomContent onChart(Screen screen, Optional<Yours> yours) {
        List<DomContent> rows = new ArrayList<>();
        yours.ifPresent(y -> rows.add(tr(
                th(Texts.say("ways.yours", y.club())).attr("scope", "row"),
                td(side(y.aimed().offsetMetres())),
                td(cost(y.alternative(spot))),
                pick("first", y.club(), y.aimed().aim(), "yours", screen),
                pick("second", y.club(), y.aimed().aim(), "yours", screen))));
        for (RoundPlan.Alternative w : spot.ways()) {
            Place aim = isBest(w) ? spot.best().aim() : w.aim();
            rows.add(tr(
                    th(shown(w.club(), aim, screen)).attr("scope", "row"),
                    td(side(w.offsetMetres())),
                    td(cost(w)),
                    pick("first", w.club(), aim, w.club(), screen),
                    pick("second", w.club(), aim, w.club(), screen)));
        }
        return div(
                table(
                                caption(Texts.say("ways.caption") + Texts.say("ways.compare")),
                                ColumnHeads.of("ways.club", "ways.side", "ways.cost", "ways.first", "ways.second"),
                                tbody(rows.toArray(DomContent[]::new)))
                        .withClass("ways"),
                div().withId("pair").attr("aria-live", "polite"));
    }

    /** A club at an aim of the coach's own. */
    record Yours(String club, SolvedHole.Aimed aimed) {
        private RoundPlan.Alternative alternative(SolvedHole.Spot spot) {
            return new RoundPlan.Alternative(
                    club,
                    aimed.aim(),
                    aimed.offsetMetres(),
                    aimed.expected() - spot.best().expected(),
                    Math.hypot(aimed.standardError(), spot.bestError()),
                    false);
        }
    }

    private static DomContent shown(String club, Place aim, Screen screen) {
        double[] at = screen.at(aim);
        return button(text(club))
                .withType("button")
                .withClass("plain")
                .attr("data-show", club)
                .attr("data-x", Words.of("%.2f", at[0]))
                .attr("data-y", Words.of("%.2f", at[1]));
    }

    private DomContent pick(String which, String club, Place aim, String value, Screen screen) {
        double[] at = screen.at(aim);
        return td(input().withType("radio")
                .withName(which)
                .withValue(value)
                .attr("data-club", club)
                .attr("data-x", Words.of("%.2f", at[0]))
                .attr("data-y", Words.of("%.2f", at[1]))
                .attr(
                        "aria-label",
                        Texts.say("ways." + which) + ": "
                                + (value.equals("yours") ? Texts.say("ways.yours", club) : club))
                .withCondChecked(
                        which.equals("first") && value.equals(spot.best().club())));
    }

    private boolean isBest(RoundPlan.Alternative w) {
        return w.club().equals(spot.best().club());
    }

    private String side(double offsetMetres) {
        String side = units.side(offsetMetres);
        return side.isEmpty() ? Texts.say("ways.onLine") : side;
    }

    private String cost(RoundPlan.Alternative w) {
        if (isBest(w) && w.cost() == 0) {
            return Texts.say("ways.best");
        }
        return w.same()
                ? Texts.say("ways.same")
                : Words.of("%+.2f", w.cost()) + " (" + Words.of("%+.2f", w.cost() - 2 * w.standardError()) + " to "
                        + Words.of("%+.2f", w.cost() + 2 * w.standardError()) + ")";
    }
}
