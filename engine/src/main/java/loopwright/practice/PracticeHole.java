package loopwright.practice;

import java.util.Optional;
import java.util.function.IntPredicate;
import loopwright.numerics.Watch;
import loopwright.strategy.Ability;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.PolicyVariations;
import loopwright.strategy.ScoreDistribution;
import loopwright.strategy.ScoreTable;

/**
 * One hole with its plan and the player's habit, both fixed, ready to be valued for other skills; where a plan does without a
 * weak shot, with the plan for the player who has mended it as well, which is played as soon as it is the better one.
 */
public final class PracticeHole {
    private final ScoreTable table;
    private final PolicyVariations planned;
    private final PolicyVariations habitual;
    private final Optional<PolicyVariations> mended;

    /** A hole for a player of this ability. */
    public PracticeHole(PolicyEvaluation plan, PolicyEvaluation habit, ScoreTable table, Ability today, Watch watch) {
        this(table, plan.variations(today, watch), habit.variations(today, watch), Optional.empty());
    }

    private PracticeHole(
            ScoreTable table, PolicyVariations planned, PolicyVariations habitual, Optional<PolicyVariations> mended) {
        this.mended = mended;
        this.table = table;
        this.planned = planned;
        this.habitual = habitual;
    }

    /** The same with the plan for the player who has mended his weaknesses, which is played once it is better. */
    public PracticeHole withMended(PolicyEvaluation other, Ability today, Watch watch) {
        return new PracticeHole(table, planned, habitual, Optional.of(other.variations(today, watch)));
    }

    /** The same hole, plan and habit for another player, on fewer points: one of many that are looked at together. */
    PracticeHole of(Ability other, Watch watch) {
        return new PracticeHole(
                table,
                planned.rough(other, watch),
                habitual.rough(other, watch),
                mended.map(m -> m.rough(other, watch)));
    }

    /** What the hole counts if {@code habitShare} of the time it is played by habit. */
    ScoreDistribution usual(double habitShare) {
        return mixed(planned.usual(), habitual.usual(), habitShare);
    }

    /** The same for another ability, of which only some shots have changed; {@code mending}: weak ones among them. */
    ScoreDistribution with(Ability other, IntPredicate changed, double habitShare, boolean mending, Watch watch) {
        double[] byPlan = habitShare < 1 ? planned.with(other, changed, watch) : planned.usual();
        if (mending && habitShare < 1 && mended.isPresent()) {
            double[] afresh = mended.get().with(other, changed, watch);
            byPlan = mean(afresh) < mean(byPlan) ? afresh : byPlan;
        }
        double[] byHabit = habitShare > 0 ? habitual.with(other, changed, watch) : habitual.usual();
        return mixed(byPlan, byHabit, habitShare);
    }

    private double mean(double[] scores) {
        return ScoreDistribution.of(0, scores).countedBy(table).mean();
    }

    private ScoreDistribution mixed(double[] plan, double[] habit, double habitShare) {
        double[] out = new double[plan.length];
        for (int k = 0; k < out.length; k++) {
            out[k] = (1 - habitShare) * plan[k] + habitShare * habit[k];
        }
        return ScoreDistribution.of(0, out).countedBy(table);
    }
}
