package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where play for the target takes another tee shot than the plan, with about as many strokes in hand as are to be expected. */
public final class TargetChanges {
    /** Strokes in hand this far from what is to be expected are told; beyond, hardly anybody comes. */
    private static final int NEAR = 3;
    /** Changes that are worth less than this are not told, probability. */
    public static final double WORTH_TELLING = 0.002;

    private static final double SAME_AIM_METRES = 2;

    private TargetChanges() {}

    /** Another tee shot on a hole with so many strokes in hand (Stableford: points to make, below zero). */
    public record Change(int hole, int inHand, StateOfPlay.TeeShot shot, RoundPlan.ShotPlan planned) {}

    public static List<Change> list(RoundPlan plan, StateOfPlay state) {
        List<Change> out = new ArrayList<>();
        double before = 0;
        for (RoundPlan.HolePlan hole : plan.holes()) {
            double usual = plan.counting().limit(plan.target()) - before;
            RoundPlan.ShotPlan planned = hole.shots().get(0);
            for (StateOfPlay.OnTee tee : state.onTee(hole.number())) {
                Optional<StateOfPlay.TeeShot> other =
                        tee.other().filter(o -> o.gain() >= WORTH_TELLING && differs(o, planned));
                if (Math.abs(tee.inHand() - usual) <= NEAR && other.isPresent()) {
                    out.add(new Change(hole.number(), tee.inHand(), other.get(), planned));
                }
            }
            before += countedMean(hole, plan);
        }
        return out;
    }

    /** What a hole is expected to count; the distribution of the round's other holes does not matter here. */
    private static double countedMean(RoundPlan.HolePlan hole, RoundPlan plan) {
        return plan.counting().form() == Counting.Form.STROKES
                ? hole.expected()
                : plan.total().mean() / plan.holes().size();
    }

    /** The plan may prefer the usual club, and target play the same. */
    private static boolean differs(StateOfPlay.TeeShot shot, RoundPlan.ShotPlan planned) {
        return !shot.club().equals(planned.club())
                || Math.abs(shot.offsetMetres() - planned.offsetMetres()) > SAME_AIM_METRES;
    }
}
