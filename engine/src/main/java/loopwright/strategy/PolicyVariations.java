package loopwright.strategy;

import java.util.function.IntPredicate;
import loopwright.numerics.Watch;
import loopwright.putting.PuttingOdds;

/**
 * A fixed policy played by players who differ from one of them in some of their shots. What all other shots lead to is worked
 * out once, and everybody is looked at with the same draws: the difference between two of them is much surer than either
 * number.
 */
public final class PolicyVariations {
    private final PolicyEvaluation policy;
    private final int part;
    private final OutcomeRows usual;
    private final PuttingOdds putting;
    private final GreenCells green;
    private final double[] scores;

    PolicyVariations(PolicyEvaluation policy, Ability ability, int part, Watch watch) {
        this.policy = policy;
        this.part = part;
        usual = policy.rowsWith(ability, part, watch);
        putting = ability.putting();
        green = policy.greenWith(ability);
        scores = policy.scoresToCompare(usual, green);
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
        GreenCells putted = other.putting() == putting ? green : policy.greenWith(other);
        return policy.scoresToCompare(policy.rowsWith(other, part, usual, changed, watch), putted);
    }
}
