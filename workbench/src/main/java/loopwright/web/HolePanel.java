package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.fieldset;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.legend;
import static j2html.TagCreator.li;
import static j2html.TagCreator.ol;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.action.HolePicture;
import loopwright.action.HoleScreens.Screen;
import loopwright.action.RoundPlan;
import loopwright.action.SolvedHole;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.player.PlayingLength;

/** The words beside the chart of a hole. */
final class HolePanel {
    /** Across a green that the map lacks: 12 yd. */
    private static final double ASSUMED_GREEN_METRES = 10.97;

    private final SolvedHole hole;
    private final Units units;

    HolePanel(SolvedHole hole, Units units) {
        this.hole = hole;
        this.units = units;
    }

    DomContent summary() {
        RoundPlan.HolePlan h = hole.plan();
        List<DomContent> out = new ArrayList<>();
        if (hole.isFirst()) {
            out.add(p(Texts.say("hole.first")).withClass("first").attr("role", "status"));
        }
        out.add(p(
                        strong(Texts.say("hole.what", h.par(), units.length(h.lengthMetres()), hole.tees())),
                        text(" " + Texts.say("hole.expect")),
                        strong(Words.of(hole.isFirst() ? "%.1f" : "%.2f", h.expected()))
                                .withId(hole.isFirst() ? "about" : "expected"),
                        text(Texts.say(
                                "hole.chances",
                                Words.percent(h.probability(0, h.par())),
                                Words.percent(h.probability(h.par() + 1, h.par() + 1)),
                                Words.percent(
                                        h.probability(h.par() + 2, h.scores().size())),
                                Words.percent(h.penalty()))))
                .withClass("lead"));
        if (!h.surveyed()) {
            out.add(p(strong(Texts.say("plan.unsurveyed")), text(" " + Texts.say("hole.unsurveyedMeans")))
                    .withClass("beware"));
        }
        if (h.greenAssumed()) {
            out.add(p(Texts.say("hole.greenAssumed", units.length(ASSUMED_GREEN_METRES)))
                    .withClass("beware"));
        }
        if (!h.standIn().isEmpty()) {
            out.add(p(Texts.say("hole.standIn", h.standIn())).withClass("note"));
        }
        h.lockCost().ifPresent(c -> out.add(p(Texts.say("hole.locks", Words.of("%+.2f", c)))));
        out.add(p(Texts.say("hole.drag", units.lengths().words())).withClass("note"));
        out.add(lines());
        return div(out.toArray(DomContent[]::new));
    }

    /** Which lines lie over the chart. */
    private static DomContent lines() {
        return fieldset(
                        legend(Texts.say("lines.title")),
                        each(
                                List.of("no-lines", "contours", "aims"),
                                id -> label(
                                                input().withType("radio")
                                                        .withName("lines")
                                                        .withId(id)
                                                        .withCondChecked(id.equals("no-lines")),
                                                span(Texts.say("lines." + id)))
                                        .withClass("tick")))
                .withClass("plain");
    }

    /** The plan from the tee on, shot by shot; from each spot it can be asked what else could be played. */
    DomContent walk(Screen screen) {
        return div(
                h2(Texts.say("hole.walk")),
                ol(each(hole.plan().shots(), s -> li(shot(s), options(screen.at(s.from())))))
                        .withClass("walk"));
    }

    private static DomContent options(double[] from) {
        return button(Texts.say("spot.options"))
                .withType("button")
                .withClasses("quiet", "small")
                .attr("data-from", Words.of("%.2f ", from[0]) + Words.of("%.2f", from[1]));
    }

    /** What can be done from where the ball was put. */
    DomContent spot(SolvedHole.Spot spot, Screen screen) {
        return div(
                h2(Texts.say("spot.title", units.length(spot.toHoleMetres()), Words.lie(spot.lie()))),
                shot(spot.best()),
                new WaysTable(spot, units).onChart(screen, Optional.empty()),
                back());
    }

    /** What an aim of the coach's is worth beside the best. */
    DomContent aimed(SolvedHole.Spot spot, String club, SolvedHole.Aimed aimed, Screen screen) {
        return div(
                yours(spot, club, aimed),
                new WaysTable(spot, units).onChart(screen, Optional.of(new WaysTable.Yours(club, aimed))),
                back());
    }

    private DomContent yours(SolvedHole.Spot spot, String club, SolvedHole.Aimed aimed) {
        RoundPlan.ShotPlan best = spot.best();
        double error = Math.hypot(aimed.standardError(), spot.bestError());
        double cost = aimed.expected() - best.expected();
        String words = Math.abs(cost) < 2 * error
                ? Texts.say("aim.same")
                : cost < 0
                        ? Texts.say("aim.better", Words.of("%.2f", -cost), Words.of("%.2f", 2 * error))
                        : Texts.say("aim.costs", Words.of("%.2f", cost), Words.of("%.2f", 2 * error));
        return div(
                h2(Texts.say("aim.title", Words.club(club, aimed.offsetMetres(), units))),
                p(text(Texts.say("aim.expect")), strong(Words.of("%.2f", aimed.expected())), text(": " + words))
                        .withId("aim-cost"),
                p(Texts.say("shot.finishes", Words.finish(aimed.finish().share()))),
                p(Texts.say(
                        "aim.best",
                        Words.aimed(best.club(), best.landmark(), best.offsetMetres(), units),
                        Words.of("%.2f", best.expected()))));
    }

    /** What was meant beside the options, as in {@link #aimed}, without the way back to a plan. */
    DomContent meant(SolvedHole.Spot spot, String club, SolvedHole.Aimed aimed) {
        return div(yours(spot, club, aimed), new WaysTable(spot, units).plain());
    }

    DomContent unplayable(Place ball, Surface lie) {
        String key = lie == Surface.GREEN ? "spot.green" : "spot.unplayable";
        return div(
                h2(Texts.say(
                        "spot.title", units.length(ball.distanceTo(hole.hole().holeLocation())), Words.lie(lie))),
                p(Texts.say(key)),
                back());
    }

    private static DomContent back() {
        return button(Texts.say("spot.back"))
                .withType("button")
                .withClass("quiet")
                .attr("data-back", "");
    }

    private DomContent shot(RoundPlan.ShotPlan s) {
        List<DomContent> out = new ArrayList<>();
        out.add(h3(Words.aimed(s.club(), s.landmark(), s.offsetMetres(), units)));
        out.add(p(Texts.say(
                "shot.from",
                units.length(s.toHoleMetres()),
                Words.lie(s.lie()),
                units.length(s.aimMetres()),
                Words.of("%.2f", s.expected()))));
        out.add(p(Texts.say("shot.finishes", Words.finish(s.finish()))));
        if (!s.hazards().isEmpty()) {
            out.add(p(Texts.say(
                    "shot.carry",
                    s.hazards().stream()
                            .map(c -> units.length(c.metres()) + " over the " + c.hazard())
                            .collect(Collectors.joining(", ")))));
        }
        s.playing().ifPresent(l -> out.add(p(playing(l))));
        s.room().ifPresent(r -> out.add(room(r)));
        out.add(p(Texts.say(
                "shot.else",
                s.alternatives().stream()
                        .map(a -> Words.club(a.club(), a.offsetMetres(), units) + " " + a.costInWords())
                        .collect(Collectors.joining("; ")))));
        if (!s.habit().same()) {
            out.add(p(Texts.say(
                    "shot.habit",
                    Words.club(s.habit().club(), s.habit().offsetMetres(), units),
                    s.habit().costInWords())));
        }
        String risks = s.risks().stream()
                .filter(RoundPlan.Risk::isFlagged)
                .map(r -> r.where() + " " + Words.percent(r.chance()))
                .collect(Collectors.joining(", "));
        if (!risks.isEmpty()) {
            out.add(p(strong(Texts.say("shot.beware")), text(" " + Texts.say("shot.risk", risks)))
                    .withClass("beware"));
        }
        return div(out.toArray(DomContent[]::new)).withClass("shot");
    }

    /** "Plays 182 yd: wind +8 yd, height -2 yd; drifts 4 yd left": parts under half a unit are left out. */
    private String playing(PlayingLength l) {
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put("air", l.airMetres());
        parts.put("wind", l.windMetres());
        parts.put("height", l.heightMetres());
        parts.put("ground", l.groundMetres());
        String told = parts.entrySet().stream()
                .filter(e -> Math.abs(e.getValue()) >= 0.5)
                .map(e -> Texts.say("plays." + e.getKey()) + " " + Words.of("%+.0f ", units.number(e.getValue()))
                        + units.unit())
                .collect(Collectors.joining(", "));
        String drift = units.side(l.finishMetres() * Math.sin(l.driftRadians()));
        return Texts.say("shot.plays", units.length(l.playsMetres()), told.isEmpty() ? "" : " (" + told + ")")
                + (drift.isEmpty() ? "" : " " + Texts.say("shot.drift", drift));
    }

    private DomContent room(HolePicture.Room r) {
        return p(Texts.say(
                "shot.room",
                units.length(r.left().distanceTo(r.right())),
                r.leftName(),
                r.rightName(),
                units.length(r.eightInTenMetres()),
                units.length(r.nineteenInTwentyMetres())));
    }
}
