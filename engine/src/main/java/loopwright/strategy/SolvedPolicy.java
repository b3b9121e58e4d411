package loopwright.strategy;

import java.util.Comparator;
import java.util.stream.IntStream;
import loopwright.course.BunkerFace;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.StrikeModel;
import loopwright.rules.Relief;

/** A solved hole as a policy for any place: the choice of the node that counts most there. */
class SolvedPolicy implements Policy {
    private static final double FACE_AIM_CELLS = 8;
    private static final int FACE_POINTS = 64;

    private final MeanSolution solution;
    private final PolicyEvaluation evaluation;
    private final HoleProblem problem;
    private final OptionSpace space;
    private final Evaluator evaluator;

    SolvedPolicy(MeanSolution solution, PolicyEvaluation evaluation) {
        this.solution = solution;
        this.evaluation = evaluation;
        this.problem = solution.problem;
        space = new OptionSpace(problem);
        evaluator = new Evaluator(problem);
    }

    @Override
    public Choice choose(Place ball, Surface surface, Situation situation) {
        if (!problem.raster.covers(problem.raster.column(ball), problem.raster.row(ball))) {
            return towardsTheHole(ball, surface, situation);
        }
        if (surface == Surface.BUNKER && BunkerFace.find(problem.map, ball).isPresent()) {
            return underAFace(ball, situation);
        }
        int state = solution.state(ball, surface, situation);
        Option o = option(state);
        return o.isDrop()
                ? new Choice.Unplayable(bestDrop(ball, surface))
                : new Choice.Stroke(o.shot(), target(o, solution.spots[state], ball));
    }

    /** What is played from a state. */
    Option option(int state) {
        return solution.choices.option(state);
    }

    /** A yard nearer the face can close a way out that the node has: here the player looks at the ball itself. */
    private Choice underAFace(Place ball, Situation situation) {
        Place sand = sandUnder(ball);
        double column = problem.raster.column(sand);
        double row = problem.raster.row(sand);
        TreeFan around = problem.treesFrom(column, row, Surface.BUNKER, situation);
        Spot spot = new Spot(column, row, Surface.BUNKER, situation, false, around);
        Option best = space.all(spot, FACE_AIM_CELLS).stream()
                .min(Comparator.comparingDouble(o -> worth(spot, o)))
                .orElseThrow(() -> new IllegalStateException("no way out of the bunker at " + ball));
        return best.isDrop()
                ? new Choice.Unplayable(bestDrop(ball, Surface.BUNKER))
                : new Choice.Stroke(best.shot(), problem.raster.place(best.column(), best.row()));
    }

    /** The ball, or the nearest centre of a cell of sand where the ball's own cell counts as something else. */
    private Place sandUnder(Place ball) {
        HoleRaster raster = problem.raster;
        return raster.surface(raster.cell(ball)) == Surface.BUNKER
                ? ball
                : IntStream.rangeClosed(-1, 1)
                        .boxed()
                        .flatMap(c -> IntStream.rangeClosed(-1, 1)
                                .mapToObj(r -> raster.cell(raster.column(ball) + c, raster.row(ball) + r)))
                        .filter(cell -> raster.surface(cell) == Surface.BUNKER)
                        .map(raster::centre)
                        .min(Comparator.comparingDouble(ball::distanceTo))
                        .orElse(ball);
    }

    private double worth(Spot spot, Option o) {
        if (o.isDrop()) {
            return o.penalty() + evaluation.field.ofCell(problem.raster.cell(o.column(), o.row()));
        }
        evaluator.play(spot, o, FACE_POINTS);
        return evaluator.value(evaluation.field, 4);
    }

    /** Far off the hole, where nothing was solved: the shot that fits the distance best, at the hole. */
    private Choice towardsTheHole(Place ball, Surface surface, Situation situation) {
        StrikeModel strikes = problem.ability.strikes();
        double toHole = ball.distanceTo(problem.hole());
        double bearing = ball.bearingTo(problem.hole());
        Reach reach = problem.ability.reach();
        int shot = IntStream.range(0, strikes.shots())
                .filter(s -> strikes.allows(s, surface, situation))
                .boxed()
                .min(Comparator.comparingDouble(s -> Math.abs(reach.metres(s, bearing) - toHole)))
                .orElseThrow(() -> new IllegalStateException("no shot from " + surface + " " + situation));
        return new Choice.Stroke(shot, ball.along(bearing, Math.min(toHole, reach.metres(shot, bearing))));
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
                .min(Comparator.comparingDouble(o -> costOfDrop(o, problem.map.surfaceAt(o.place()))))
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
