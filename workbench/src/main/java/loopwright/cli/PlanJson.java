package loopwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import loopwright.action.HowSure;
import loopwright.action.LocalRuleWords;
import loopwright.action.RoundPlan;
import loopwright.action.StateOfPlay;
import loopwright.course.Course;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.units.Distance;

/** A plan as the JSON of {@code docs/schema/plan.schema.json}: yards and degrees, the keys saying so. */
final class PlanJson {
    private static final double NEVER = 1e-9;

    private final Course course;
    private final LocalFrame frame;

    private PlanJson(Course course) {
        this.course = course;
        frame = new LocalFrame(course.origin());
    }

    static Map<String, Object> of(RoundPlan plan) {
        return new PlanJson(plan.course()).round(plan);
    }

    private Map<String, Object> round(RoundPlan plan) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put(
                "course",
                map(
                        "name",
                        plan.course().name(),
                        "par",
                        plan.par(),
                        "holes",
                        plan.holes().size()));
        out.put("tees", map("name", plan.tees().name(), "lengthYards", yards(plan.lengthMetres())));
        out.put("day", DayWords.json(plan.day()));
        out.put("target", plan.target());
        out.put("counting", plan.counting().form().name().toLowerCase(Locale.ROOT));
        out.put("goodAndBadDays", goodAndBadDays(plan));
        out.put("unsurveyedHoles", plan.unsurveyed());
        out.put("today", TodayJson.of(plan.today()));
        out.put("score", score(plan));
        out.put("decisions", plan.decisions().stream().map(this::decision).toList());
        out.put("holes", plan.holes().stream().map(this::hole).toList());
        plan.howSure().ifPresent(sure -> out.put("howSure", howSure(sure)));
        plan.stateOfPlay().ifPresent(state -> putTarget(out, state));
        out.put(
                "solver",
                map(
                        "bias", plan.bias(),
                        "loss", plan.searchLoss().strokes(),
                        "lossStandardError", plan.searchLoss().standardError()));
        out.put(
                "check",
                map(
                        "simulatedMean",
                        plan.simulated().mean(),
                        "simulatedStandardError",
                        plan.simulated().standardError(),
                        "rounds",
                        plan.simulated().rounds()));
        if (!plan.otherDays().isEmpty()) {
            out.put("otherDays", plan.otherDays().stream().map(this::otherDay).toList());
        }
        return out;
    }

    private Map<String, Object> otherDay(RoundPlan plan) {
        return map(
                "day", DayWords.json(plan.day()),
                "score", score(plan),
                "holes", plan.holes().stream().map(this::hole).toList());
    }

    private static Map<String, Object> score(RoundPlan plan) {
        List<Map<String, Object>> distribution = new ArrayList<>();
        for (int s = plan.total().lowest(); s <= plan.total().highest(); s++) {
            if (plan.total().probability(s) > NEVER) {
                distribution.add(map("score", s, "p", plan.total().probability(s)));
            }
        }
        return map(
                "mean",
                plan.total().mean(),
                "sd",
                plan.total().standardDeviation(),
                "distribution",
                distribution,
                "pTarget",
                chances(plan),
                "habitMean",
                plan.habitExpected());
    }

    private static Map<String, Object> chances(RoundPlan plan) {
        return plan.stateOfPlay()
                .map(s -> map("meanPlay", s.meanPlay(), "targetPlay", s.targetPlay()))
                .orElseGet(() -> map("meanPlay", plan.targetProbability()));
    }

    private static Map<String, Object> goodAndBadDays(RoundPlan plan) {
        return map(
                "directionSdDegrees",
                Math.toDegrees(plan.dayEffect().directionSdRadians()),
                "spreadLogSd",
                plan.dayEffect().logSpreadSd());
    }

    private static Map<String, Object> howSure(HowSure sure) {
        Map<String, Object> out = map(
                "draws", sure.draws(),
                "expected", map("low", sure.expectedLow(), "high", sure.expectedHigh()),
                "pTarget", map("low", sure.targetLow(), "high", sure.targetHigh()),
                "assumed", sure.assumed());
        out.put(
                "beats",
                sure.beats().stream()
                        .map(b -> map("hole", b.hole(), "club", b.club(), "next", b.next(), "p", b.probability()))
                        .toList());
        sure.measureNext().ifPresent(m -> out.put("measureNext", map("swing", m.swing(), "strokes", m.strokes())));
        return out;
    }

    private void putTarget(Map<String, Object> out, StateOfPlay state) {
        out.put(
                "totals",
                state.byTotal().stream()
                        .map(t -> map("total", t.total(), "meanPlay", t.meanPlay(), "targetPlay", t.targetPlay()))
                        .toList());
        out.put("stateOfPlay", state.onTee().stream().map(this::onTee).toList());
    }

    private Map<String, Object> onTee(StateOfPlay.OnTee tee) {
        Map<String, Object> out = map(
                "hole", tee.hole(),
                "inHand", tee.inHand(),
                "meanPlay", tee.meanPlay(),
                "targetPlay", tee.targetPlay());
        tee.other()
                .ifPresent(o -> out.put(
                        "teeShot",
                        map(
                                "club", o.club(),
                                "offsetYards", yards(o.offsetMetres()),
                                "landmark", o.landmark(),
                                "gain", o.gain())));
        return out;
    }

    private Map<String, Object> decision(RoundPlan.Decision d) {
        return map(
                "hole", d.hole(),
                "shot", d.shot(),
                "habit", d.plan().habit().club(),
                "plan", d.plan().club(),
                "landmark", d.plan().landmark(),
                "gain", d.cost());
    }

    private Map<String, Object> hole(RoundPlan.HolePlan h) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("number", h.number());
        out.put("par", h.par());
        out.put("lengthYards", yards(h.lengthMetres()));
        if (!h.standIn().isEmpty()) {
            out.put("teeStandIn", h.standIn());
        }
        out.put("unsurveyed", !h.surveyed());
        out.put("greenAssumed", h.greenAssumed());
        out.put("greenMeasured", h.greenMeasured());
        out.put("localRules", LocalRuleWords.of(course.getHole(h.number())));
        out.put("expected", h.expected());
        out.put("habitExpected", h.habitExpected());
        out.put("pParOrBetter", h.probability(0, h.par()));
        out.put("pBogey", h.probability(h.par() + 1, h.par() + 1));
        out.put("pDoubleOrWorse", h.probability(h.par() + 2, h.scores().size()));
        out.put("pPenalty", h.penalty());
        h.lockCost().ifPresent(c -> out.put("lockCost", c));
        out.put("scores", h.scores());
        out.put("shots", h.shots().stream().map(this::shot).toList());
        out.put("startLines", h.startLines().stream().map(this::startLine).toList());
        return out;
    }

    private Map<String, Object> startLine(RoundPlan.StartLine s) {
        Map<String, Object> out = point(s.aim());
        out.put("ballsGo", s.balls().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        out.put("beyondYards", yards(s.beyondMetres()));
        out.put("offsetYards", yards(s.offsetMetres()));
        out.put("landmark", s.landmark());
        out.put("gain", s.gain());
        out.put("standardError", s.standardError());
        return out;
    }

    private Map<String, Object> start(RoundPlan.Start s) {
        return map(
                "finish", point(s.finish()),
                "spot", point(s.spot()),
                "spotOffsetInches", s.spotOffsetMetres() / Distance.METRES_PER_INCH,
                "moreClubs", s.moreClubs());
    }

    private Map<String, Object> shot(RoundPlan.ShotPlan s) {
        Map<String, Object> out = new LinkedHashMap<>();
        Map<String, Object> from = point(s.from());
        from.put("lie", word(s.lie()));
        from.put("toHoleYards", yards(s.toHoleMetres()));
        out.put("from", from);
        out.put("club", s.club());
        Map<String, Object> aim = point(s.aim());
        aim.put("distanceYards", yards(s.aimMetres()));
        aim.put("offsetYards", yards(s.offsetMetres()));
        aim.put("landmark", s.landmark());
        aim.put("blind", s.blind());
        out.put("aim", aim);
        out.put("start", start(s.start()));
        out.put("assumedSkill", s.assumedSkill());
        s.playing().ifPresent(p -> out.put("plays", PlayingWords.json(p)));
        out.put("expected", s.expected());
        Map<String, Object> finish = new TreeMap<>();
        s.finish().forEach((surface, p) -> finish.put(word(surface), p));
        out.put("finish", finish);
        out.put(
                "carries",
                s.hazards().stream()
                        .map(c -> map("hazard", c.hazard(), "carryYards", yards(c.metres())))
                        .toList());
        s.room()
                .ifPresent(r -> out.put(
                        "room",
                        map(
                                "widthYards", yards(r.left().distanceTo(r.right())),
                                "left", r.leftName(),
                                "right", r.rightName(),
                                "eightInTenYards", yards(r.eightInTenMetres()),
                                "nineteenInTwentyYards", yards(r.nineteenInTwentyMetres()))));
        out.put("alternatives", s.alternatives().stream().map(this::alternative).toList());
        out.put("habit", alternative(s.habit()));
        out.put(
                "risks",
                s.risks().stream()
                        .map(r -> map("where", r.where(), "p", r.chance(), "flagged", r.isFlagged()))
                        .toList());
        return out;
    }

    private Map<String, Object> alternative(RoundPlan.Alternative a) {
        return map(
                "club", a.club(),
                "offsetYards", yards(a.offsetMetres()),
                "cost", a.cost(),
                "standardError", a.standardError(),
                "same", a.same());
    }

    private Map<String, Object> point(Place place) {
        var p = frame.toLatLon(place);
        return map("lat", p.latitudeDegrees(), "lon", p.longitudeDegrees());
    }

    private static String word(Surface surface) {
        return surface.name().toLowerCase(Locale.ROOT);
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }

    private static Map<String, Object> map(Object... keysAndValues) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            out.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return out;
    }
}
