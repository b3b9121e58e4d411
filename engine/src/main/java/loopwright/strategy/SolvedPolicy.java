package loopwright.strategy;

import java.util.Comparator;
import java.util.stream.IntStream;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.StrikeModel;
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
        if (!problem.raster.covers(problem.raster.column(ball), problem.raster.row(ball))) {
            return towardsTheHole(ball, surface, situation);
        }
        int state = solution.state(ball, surface, situation);
        Option o = solution.choices.option(state);
        return o.isDrop()
                ? new Choice.Unplayable(bestDrop(ball, surface))
                : new Choice.Stroke(o.shot(), target(o, solution.spots[state], ball));
    }

    /** Far off the hole, where nothing was solved: the shot that fits the distance best, at the hole. */
    private Choice towardsTheHole(Place ball, Surface surface, Situation situation) {
        StrikeModel strikes = problem.ability.strikes();
        double toHole = ball.distanceTo(problem.hole());
        int shot = IntStream.range(0, strikes.shots())
                .filter(s -> strikes.allows(s, surface, situation))
                .boxed()
                .min(Comparator.comparingDouble(s -> Math.abs(strikes.lengthMetres(s) - toHole)))
                .orElseThrow(() -> new IllegalStateException("no shot from " + surface + " " + situation));
        double length = Math.min(toHole, strikes.lengthMetres(shot));
        return new Choice.Stroke(shot, ball.along(ball.bearingTo(problem.hole()), length));
    }

    /** The node's target; or, where the ball lies close to it, the place as far away as the node means to play. */
    private Place target(Option o, Spot node, Place ball) {
        Place target = problem.raster.place(o.column(), o.row());
        Place nodePlace = problem.raster.place(node.column(), node.row());
        if (ball.distanceTo(target) >= 0.5 * nodePlace.distanceTo(target)) {
            return target;
        }
        return new Place(target.x() + ball.x() - nodePlace.x(), target.y() + ball.y() - nodePlace.y());
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
        return problem.raster.isDrop(place)
                ? evaluation.field.ofCell(problem.raster.cell(place))
                : Double.POSITIVE_INFINITY;
    }
}
