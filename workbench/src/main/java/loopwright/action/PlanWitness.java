package loopwright.action;

import loopwright.numerics.Watch;
import loopwright.scoring.GreenPlay;
import loopwright.strategy.Advice;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.PolicyEvaluation;

/** Looks on while a round is planned, and may ask of a solved hole what only then can be answered cheaply. */
interface PlanWitness {
    PlanWitness NONE = new PlanWitness() {};

    /** What all holes share, before the first is solved. */
    default void round(RoundSetup setup) {}

    /** One hole as it is solved; holes come in any order, from several threads. */
    default void hole(Solved solved, Watch watch) {}

    /** A solved hole with everything about it still in memory. */
    record Solved(
            PlannedShots shots,
            MeanSolution solution,
            PolicyEvaluation evaluation,
            Advice advice,
            GreenPlay green,
            RoundPlan.HolePlan plan) {}
}
