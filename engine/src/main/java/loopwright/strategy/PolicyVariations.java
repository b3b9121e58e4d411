package loopwright.strategy;

import java.util.function.IntPredicate;
import loopwright.numerics.Watch;

/**
 * A fixed policy played by players who differ from one of them in some of their shots. What all other shots lead to is worked
 * out once, and everybody is looked at with the same draws: the difference between two of them is much surer than either
 * number.
 */
public final class PolicyVariations {
    private final PolicyEvaluation policy;
    private final boolean rough;
    private final OutcomeRows usual;
    private final double[][] arrivals;
    private final double[] scores;

    PolicyVariations(PolicyEvaluation policy, Ability ability, Watch watch) {
        this(policy, ability, false, policy.rowsToCompare(ability, watch));
    }

    private PolicyVariations(PolicyEvaluation policy, Ability ability, boolean rough, OutcomeRows usual) {
        this.policy = policy;
        this.rough = rough;
        this.usual = usual;
        GreenCount green = policy.greenToCompare(ability);
        arrivals = policy.arrivalsToCompare(usual, green, rough);
        scores = ForwardPlay.puttedOut(arrivals, green);
    }

    /**
     * The same policy, worked out only where play comes by: to see how much differs between many players, where no single
     * number counts.
     */
    public PolicyVariations rough(Ability ability, Watch watch) {
        return new PolicyVariations(
                policy, ability, true, policy.rowsToCompare(ability, usual, shot -> true, false, watch));
    }

    /** Probability of each score of the one they differ from. */
    public double[] usual() {
        return scores.clone();
    }

    /**
     * The same with another ability of the same seed.
     *
     * @param changed true for the shots that differ; putting may differ as well
     */
    public double[] with(Ability other, IntPredicate changed, Watch watch) {
        OutcomeRows rows = policy.rowsToCompare(other, usual, changed, !rough, watch);
        GreenCount green = policy.greenToCompare(other);
        return ForwardPlay.puttedOut(rows == usual ? arrivals : policy.arrivalsToCompare(rows, green, rough), green);
    }
}
