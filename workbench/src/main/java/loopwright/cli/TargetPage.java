package loopwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.action.Counting;
import loopwright.action.RoundPlan;
import loopwright.action.StateOfPlay;
import loopwright.units.Distance;

/** Prints what playing for the target is worth, where it changes a tee shot, and the chances on the last tees. */
final class TargetPage {
    private static final int LAST_HOLES = 3;
    /** Strokes in hand this far from what is to be expected are told; beyond, hardly anybody comes. */
    private static final int NEAR = 3;
    /** Changes that are worth less than this are not told, probability. */
    private static final double WORTH_TELLING = 0.002;

    private static final double SAME_AIM_METRES = 2;

    private final PrintWriter out;

    TargetPage(PrintWriter out) {
        this.out = out;
    }

    void print(RoundPlan plan, StateOfPlay state, boolean lastHoles) {
        out.println();
        line(
                "Playing for the target: %s in %.1f of 100 rounds; playing for the average, in %.1f.",
                plan.counting().words(plan.target()), 100 * state.targetPlay(), 100 * state.meanPlay());
        changes(plan, state);
        if (lastHoles) {
            lastHoles(plan, state);
        }
    }

    private void changes(RoundPlan plan, StateOfPlay state) {
        List<String> told = new ArrayList<>();
        double before = 0;
        for (RoundPlan.HolePlan hole : plan.holes()) {
            double usual = plan.counting().limit(plan.target()) - before;
            told.addAll(changes(hole, state.onTee(hole.number()), usual, plan.counting()));
            before += countedMean(hole, plan);
        }
        if (told.isEmpty()) {
            line(
                    "No tee shot changes for it by more than %.1f in 100; it shows later in the hole, and on the green.",
                    100 * WORTH_TELLING);
            return;
        }
        line("Tee shots that change for it (strokes in hand before the hole; gain in rounds of 100):");
        told.forEach(out::println);
    }

    /** What a hole is expected to count; the distribution of the round's other holes does not matter here. */
    private static double countedMean(RoundPlan.HolePlan hole, RoundPlan plan) {
        return plan.counting().form() == Counting.Form.STROKES
                ? hole.expected()
                : plan.total().mean() / plan.holes().size();
    }

    private static List<String> changes(
            RoundPlan.HolePlan hole, List<StateOfPlay.OnTee> tees, double usual, Counting counting) {
        List<String> out = new ArrayList<>();
        RoundPlan.ShotPlan planned = hole.shots().get(0);
        for (StateOfPlay.OnTee tee : tees) {
            Optional<StateOfPlay.TeeShot> other =
                    tee.other().filter(o -> o.gain() >= WORTH_TELLING && differs(o, planned));
            if (Math.abs(tee.inHand() - usual) <= NEAR && other.isPresent()) {
                StateOfPlay.TeeShot shot = other.get();
                out.add(String.format(
                        Locale.ROOT,
                        "  hole %d with %s: %s at %s%s, instead of %s%s: +%.1f",
                        hole.number(),
                        inHand(tee.inHand(), counting),
                        shot.club(),
                        shot.landmark(),
                        side(shot.offsetMetres()),
                        planned.club(),
                        side(planned.offsetMetres()),
                        100 * shot.gain()));
            }
        }
        return out;
    }

    /** The plan may prefer the usual club, and target play the same. */
    private static boolean differs(StateOfPlay.TeeShot shot, RoundPlan.ShotPlan planned) {
        return !shot.club().equals(planned.club())
                || Math.abs(shot.offsetMetres() - planned.offsetMetres()) > SAME_AIM_METRES;
    }

    private void lastHoles(RoundPlan plan, StateOfPlay state) {
        List<RoundPlan.HolePlan> holes = plan.holes();
        for (RoundPlan.HolePlan hole : holes.subList(Math.max(0, holes.size() - LAST_HOLES), holes.size())) {
            line("On the tee of hole %d:", hole.number());
            for (StateOfPlay.OnTee tee : state.onTee(hole.number())) {
                line(
                        "  %s: %.1f in 100 (for the average %.1f)%s",
                        inHand(tee.inHand(), plan.counting()),
                        100 * tee.targetPlay(),
                        100 * tee.meanPlay(),
                        tee.other()
                                .map(o -> "; " + o.club() + " at " + o.landmark() + side(o.offsetMetres()))
                                .orElse(""));
            }
        }
    }

    private static String inHand(int inHand, Counting counting) {
        return counting.form() == Counting.Form.STABLEFORD ? -inHand + " points to make" : inHand + " strokes in hand";
    }

    private static String side(double offsetMetres) {
        double yards = Distance.ofMetres(offsetMetres).yards();
        return Math.abs(yards) < 1
                ? ""
                : String.format(Locale.ROOT, " (%.0f yd %s)", Math.abs(yards), yards < 0 ? "left" : "right");
    }

    private void line(String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values));
    }
}
