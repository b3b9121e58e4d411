package loopwright.strategy;

import java.util.Comparator;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.rules.Relief;

/** A solved hole as a policy for any place: the choice of the node that counts most there. */
final class SolvedPolicy implements Policy {
    private final MeanSolution solution;
    private final PolicyEvaluation evaluation;
    private final HoleProblem problem;

    SolvedPolicy(MeanSolution solution, PolicyEvaluation evaluation) {
        this.solution = solution;
        this.evaluation = evaluation;
        this.problem = solution.problem;
    }

    @Override
    public Choice choose(Place ball, Surface surface, Situation situation) {
        Option o = solution.choices.option(solution.state(ball, surface, situation));
        return o.isDrop()
                ? new Choice.Unplayable(bestDrop(ball, surface))
                : new Choice.Stroke(o.shot(), problem.raster.place(o.column(), o.row()));
    }

    private Relief.Option bestDrop(Place ball, Surface surface) {
        return Relief.unplayable(problem.map, ball, surface).stream()
                .min(Comparator.comparingDouble(
                        o -> o.penaltyStrokes() + valueOfDrop(o.place(), problem.map.surfaceAt(o.place()))))
                .orElseThrow(() -> new IllegalStateException("no drop from " + ball + " on " + surface));
    }

    @Override
    public double value(Place ball, Surface surface, Situation situation) {
        return evaluation.value[solution.state(ball, surface, situation)];
    }

    @Override
    public double valueOfDrop(Place place, Surface surface) {
        return evaluation.field.ofCell(problem.raster.cell(place));
    }
}
