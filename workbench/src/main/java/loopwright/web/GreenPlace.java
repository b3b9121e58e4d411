package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.select;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.PuttAdviser;
import loopwright.action.PuttAnswer;
import loopwright.action.PuttQuestion;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.player.Player;
import loopwright.putting.GreenSpeed;
import loopwright.putting.PlaneGreen;
import loopwright.units.Distance;

/** One putt on a known slope: where to start it, how hard, the odds, and what is left. */
public final class GreenPlace implements Place {
    private static final double SLOWEST_FEET = 4;
    private static final double FASTEST_FEET = 16;
    private static final double MOST_SLOPE_PERCENT = 8;
    private static final double SHORTEST_FEET = 0.5;
    private static final double LONGEST_FEET = 60;
    private static final double PAD_PER_FOOT = 4;

    private final Workroom room;
    private final PuttAdviser adviser;

    public GreenPlace(Workroom room, PuttAdviser adviser) {
        this.room = room;
        this.adviser = adviser;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/green", this::page);
        routes.get(
                "/green/answer",
                ctx -> ctx.html(asked(ctx)
                        .map(this::answer)
                        .orElseGet(() -> p(Texts.say("green.noPlayer")))
                        .render()));
    }

    /**
     * What was asked, the hole in the middle of the pad.
     *
     * @param rightFeet of the hole, {@code belowFeet} nearer to the reader, where the ball lies
     * @param slopePercent negative: not measured
     * @param falls clock hour towards which the green falls, 12 up the pad
     */
    private record Asked(
            Shelf.Entry entry,
            Player player,
            double speedFeet,
            double rightFeet,
            double belowFeet,
            double slopePercent,
            int falls) {}

    private Optional<Asked> asked(Context ctx) {
        return PlanQuery.entry(room.store().players(), ctx.queryParam("player"), "player")
                .map(e -> new Asked(
                        e,
                        room.player(e.id(), e.version()).player(),
                        number(ctx, "speed", 10, SLOWEST_FEET, FASTEST_FEET),
                        feet(ctx, "right", 0),
                        feet(ctx, "below", 12),
                        PlanQuery.text(ctx, "slope", "").isEmpty()
                                ? -1
                                : number(ctx, "slope", 0, 0, MOST_SLOPE_PERCENT),
                        (int) number(ctx, "falls", 9, 1, 12)));
    }

    /** How far the ball lies from the hole one way, in the units that the address names; in feet where it names none. */
    private static double feet(Context ctx, String name, double otherwise) {
        String code = PlanQuery.text(ctx, "units", "");
        Units sent = code.isEmpty() ? Units.YARDS : Units.ofCode(code);
        double most = sent.greenNumber(Distance.ofFeet(LONGEST_FEET).metres());
        double asked = number(
                ctx,
                name,
                sent.greenNumber(Distance.ofFeet(otherwise).metres()),
                -most,
                most,
                Texts.say("unit." + sent.greenUnit()));
        return Distance.ofMetres(sent.greenMetres(asked)).feet();
    }

    private static double number(Context ctx, String name, double otherwise, double low, double high) {
        return number(ctx, name, otherwise, low, high, "");
    }

    private static double number(Context ctx, String name, double otherwise, double low, double high, String unit) {
        if (PlanQuery.text(ctx, name, "").isEmpty()) {
            return otherwise;
        }
        double value = PlanQuery.decimal(ctx, name);
        if (!(value >= low && value <= high)) {
            throw new UserFault(Texts.say("green.range." + name, Words.of("%.0f", low), Words.of("%.0f", high), unit));
        }
        return value;
    }

    private void page(Context ctx) {
        Optional<Asked> asked = asked(ctx);
        List<DomContent> content = new ArrayList<>();
        content.add(h1(Texts.say("green.title")));
        if (asked.isEmpty()) {
            content.add(p(Texts.say("green.noPlayer")));
        } else {
            content.add(div(
                            div(form(asked.get()), rawHtml(pad(asked.get()))).withClass("words"),
                            div(answer(asked.get())).withId("answer").attr("aria-live", "polite"))
                    .withClass("hole green"));
            Asked a = asked.get();
            if (a.slopePercent() > 0) {
                content.add(ApproachSides.of(
                        a.player(),
                        GreenSpeed.ofRollMetres(Distance.ofFeet(a.speedFeet()).metres()),
                        a.slopePercent(),
                        a.falls(),
                        Units.of(room)));
            }
        }
        new Page("green", Texts.say("green.title")).with("green").answer(ctx, content.toArray(DomContent[]::new));
    }

    private DomContent form(Asked a) {
        return j2html.TagCreator.form(
                        div(
                                        PlanForm.field(
                                                "plan.player",
                                                select(each(
                                                                room.store()
                                                                        .players()
                                                                        .list(),
                                                                e -> option(e.name())
                                                                        .withValue(e.id())
                                                                        .withCondSelected(e.id().equals(a.entry()
                                                                                .id()))))
                                                        .withName("player")),
                                        field("speed", Words.of("%.1f", a.speedFeet())),
                                        field("slope", a.slopePercent() < 0 ? "" : Words.of("%.1f", a.slopePercent())),
                                        PlanForm.field("green.falls", clock(a.falls())),
                                        field("right", told(a.rightFeet())),
                                        field("below", told(a.belowFeet())),
                                        input().withType("hidden")
                                                .withName("units")
                                                .withValue(Units.of(room).code()))
                                .withClass("fields"),
                        button(Texts.say("green.ask")).withType("submit"))
                .withMethod("get")
                .withAction("/green")
                .withClass("sheet")
                .withId("putt");
    }

    /** A distance on the green as a bare number: to a tenth of a foot or some centimetres. */
    private String told(double feet) {
        Units units = Units.of(room);
        return Words.of(
                units.metricGreens() ? "%.2f" : "%.1f",
                units.greenNumber(Distance.ofFeet(feet).metres()));
    }

    private DomContent field(String name, String value) {
        return PlanForm.labelled(
                Texts.say("green." + name, Texts.say("unit." + Units.of(room).greenUnit())),
                input().withType("text").withName(name).withValue(value).attr("inputmode", "decimal"));
    }

    private static DomContent clock(int now) {
        return select(each(
                        List.of(12, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11),
                        h -> option(Texts.say("green.hour", h))
                                .withValue(h.toString())
                                .withCondSelected(h == now)))
                .withName("falls");
    }

    /** The pad, four units of the picture to a foot: hole in the middle, rings about it, the ball to be moved. */
    private String pad(Asked a) {
        boolean metric = Units.of(room).metricGreens();
        double unit = metric ? PAD_PER_FOOT / Distance.METRES_PER_FOOT : PAD_PER_FOOT;
        double ring = metric ? 2 * unit : 5 * unit;
        StringBuilder out = new StringBuilder("<svg class=\"pad\" viewBox=\"-130 -130 260 260\" data-unit=\""
                + Words.of("%.4f", unit) + "\" data-step=\"" + (metric ? "0.25" : "1")
                + "\" data-digits=\"" + (metric ? 2 : 1) + "\" role=\"group\""
                + " aria-label=\"" + Texts.say("green.pad", metric ? "2 m" : "5 ft")
                + "\"><rect class=\"turf\" x=\"-130\" y=\"-130\" width=\"260\" height=\"260\"/>");
        for (double r = ring; r <= 30 * PAD_PER_FOOT; r += ring) {
            out.append("<circle class=\"ring\" r=\"")
                    .append(Words.of("%.1f", r))
                    .append("\"/>");
        }
        if (a.slopePercent() > 0) {
            out.append("<path class=\"fall\" transform=\"rotate(")
                    .append(30 * (a.falls() % 12))
                    .append(")\" d=\"M0 -96V-122M-5 -114L0 -122L5 -114\"/>");
        }
        double distance = Math.hypot(a.rightFeet(), a.belowFeet());
        return out.append("<circle class=\"cup\" r=\"3\"/>")
                .append("<g class=\"handle ball\" tabindex=\"0\" role=\"slider\" aria-label=\"")
                .append(Texts.say("handle.ball"))
                .append("\" aria-valuemin=\"0\" aria-valuemax=\"90\" aria-valuenow=\"")
                .append(told(distance))
                .append("\" transform=\"translate(")
                .append(Words.of("%.1f", PAD_PER_FOOT * a.rightFeet()))
                .append(' ')
                .append(Words.of("%.1f", PAD_PER_FOOT * a.belowFeet()))
                .append(")\"><circle r=\"14\"/><path d=\"M-3 0A3 3 0 1 0 3 0A3 3 0 1 0 -3 0\"/></g></svg>")
                .toString();
    }

    private DomContent answer(Asked a) {
        double feet = Math.hypot(a.rightFeet(), a.belowFeet());
        if (!(feet >= SHORTEST_FEET && feet <= LONGEST_FEET)) {
            Units units = Units.of(room);
            throw new UserFault(Texts.say(
                    "green.range.distance",
                    Words.of(
                            "%.1f",
                            units.greenNumber(Distance.ofFeet(SHORTEST_FEET).metres())),
                    Words.of(
                            "%.0f",
                            units.greenNumber(Distance.ofFeet(LONGEST_FEET).metres())),
                    Texts.say("unit." + units.greenUnit())));
        }
        PuttQuestion putt = question(a, feet);
        PuttAnswer answer = adviser.answer(putt);
        PuttText words = new PuttText(answer, Units.of(room));
        List<DomContent> rows = new ArrayList<>();
        words.rows().forEach((name, value) -> rows.add(tr(th(name).attr("scope", "row"), td(value))));
        return div(
                h2(words.heading()),
                answer.slopeMeasured()
                        ? text("")
                        : p(strong(Texts.say("green.unmeasured")), text(" " + Texts.say("green.unmeasuredMeans")))
                                .withClass("beware"),
                table(
                        caption(Texts.say(
                                "green.caption",
                                a.player().name(),
                                answer.skill().from())),
                        tbody(rows.toArray(DomContent[]::new))),
                rawHtml(drawn(putt, words.heading())),
                p(answer.note()).withClass("note"));
    }

    /** The putt as the adviser wants it: played north, the slope turned with it. */
    private static PuttQuestion question(Asked a, double feet) {
        Optional<PlaneGreen> slope = Optional.empty();
        if (a.slopePercent() >= 0) {
            double play = Math.atan2(-a.rightFeet(), a.belowFeet());
            double fall = Math.toRadians(30.0 * (a.falls() % 12));
            double rise = -a.slopePercent() / 100;
            slope = Optional.of(new PlaneGreen(rise * Math.sin(fall - play), rise * Math.cos(fall - play)));
        }
        return new PuttQuestion(
                Distance.ofFeet(feet).metres(),
                GreenSpeed.ofRollMetres(Distance.ofFeet(a.speedFeet()).metres()),
                slope,
                a.player().putting(),
                a.player().putting().evidence() > 0
                        ? Texts.say("green.skillMeasured")
                        : Texts.say("green.skillAssumed"));
    }

    private String drawn(PuttQuestion putt, String heading) {
        return room.withFile(new byte[0], ".svg", file -> {
            adviser.draw(putt, List.of(heading), file);
            try {
                return Files.readString(file, StandardCharsets.UTF_8)
                        .replaceFirst("^<\\?xml[^>]*>", "")
                        .replaceFirst(
                                "<svg ", "<svg class=\"picture\" aria-label=\"" + HoleSvg.escaped(heading) + "\" ");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
