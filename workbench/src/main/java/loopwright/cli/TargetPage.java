package loopwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import loopwright.action.Counting;
import loopwright.action.ReadLengths;
import loopwright.action.RoundPlan;
import loopwright.action.StateOfPlay;
import loopwright.action.TargetChanges;

/** Prints what playing for the target is worth, where it changes a tee shot, and the chances on the last tees. */
final class TargetPage {
    private static final int LAST_HOLES = 3;
    private final PrintWriter out;
    private final ReadLengths lengths;

    TargetPage(PrintWriter out, ReadLengths lengths) {
        this.out = out;
        this.lengths = lengths;
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
        List<TargetChanges.Change> changes = TargetChanges.list(plan, state);
        if (changes.isEmpty()) {
            line(
                    "No tee shot changes for it by more than %.1f in 100; it shows later in the hole, and on the"
                            + " green.",
                    100 * TargetChanges.WORTH_TELLING);
            return;
        }
        line(
                "Tee shots that change for it (%s before the hole; gain in rounds of 100):",
                plan.counting().form() == Counting.Form.STABLEFORD ? "points to make" : "strokes in hand");
        for (TargetChanges.Change c : changes) {
            line(
                    "  hole %d with %s: %s %s%s, instead of %s %s%s: +%.1f",
                    c.hole(),
                    inHand(c.inHand(), plan.counting()),
                    c.shot().club(),
                    lengths.told(RoundPlan.toward(c.shot().landmark())),
                    lengths.bracketed(c.shot().offsetMetres()),
                    c.planned().club(),
                    lengths.told(RoundPlan.toward(c.planned().landmark())),
                    lengths.bracketed(c.planned().offsetMetres()),
                    100 * c.shot().gain());
        }
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
                                .map(o -> "; " + o.club() + " " + lengths.told(RoundPlan.toward(o.landmark()))
                                        + lengths.bracketed(o.offsetMetres()))
                                .orElse(""));
            }
        }
    }

    private static String inHand(int inHand, Counting counting) {
        boolean points = counting.form() == Counting.Form.STABLEFORD;
        int count = points ? -inHand : inHand;
        return count + (points ? " point" : " stroke") + (count == 1 ? "" : "s") + (points ? " to make" : " in hand");
    }

    private void line(String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values));
    }
}
