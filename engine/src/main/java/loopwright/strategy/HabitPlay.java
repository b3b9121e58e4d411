package loopwright.strategy;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.StrikeModel;
import loopwright.player.TouchShot;

/**
 * The player as he plays without a plan: his longest club off the tee unless the hole is a par 3, else the club whose
 * length on the day fits the distance best, aimed at the hole, or along the hole where it bends, with what the wind
 * takes held against (assumed: he feels the day as it is). Out of the woods, and where none
 * of this can be played, he does what the plan does.
 */
public final class HabitPlay {
    /** Within this of the hole a touch shot is played where one reaches. */
    private static final double PITCH_MARGIN_METRES = 3;

    private final MeanSolution plan;
    private final HoleProblem problem;
    private final StrikeModel strikes;

    public HabitPlay(MeanSolution plan) {
        this.plan = plan;
        problem = plan.problem;
        strikes = problem.ability.strikes();
    }

    /** What playing by habit is worth on this hole. */
    public PolicyEvaluation evaluate(Watch watch) {
        NodePolicy habit = new NodePolicy(plan.nodes.states);
        for (int s = 0; s < plan.nodes.states; s++) {
            Spot spot = plan.spots[s];
            habit.set(s, choose(spot, plan.choices.option(s)));
        }
        return plan.evaluate(habit, watch);
    }

    /** The habitual choice from a place. */
    public Choice.Stroke from(Place ball, Surface surface, Situation situation) {
        int state = plan.state(ball, surface, situation);
        Spot near = plan.spots[state];
        Spot here = new Spot(
                problem.raster.column(ball), problem.raster.row(ball), surface, situation, near.onTee(), near.trees());
        Option o = choose(here, plan.choices.option(state));
        return new Choice.Stroke(o.shot(), problem.raster.place(o.column(), o.row()));
    }

    private Option choose(Spot spot, Option planned) {
        Place ball = problem.raster.place(spot.column(), spot.row());
        double toHole = ball.distanceTo(problem.hole());
        if (spot.surface() == Surface.WOODS) {
            return planned;
        }
        int touch = touchFor(spot, toHole);
        if (touch >= 0) {
            return Option.stroke(touch, problem.raster.column(problem.hole()), problem.raster.row(problem.hole()));
        }
        List<Integer> swings = IntStream.range(0, strikes.shots())
                .filter(s -> !strikes.isTouch(s) && strikes.allows(s, spot.surface(), spot.situation()))
                .boxed()
                .toList();
        if (swings.isEmpty()) {
            return planned;
        }
        boolean longest = spot.onTee() && problem.map.hole().par() > 3;
        int shot = longest
                ? swings.stream()
                        .max(Comparator.comparingDouble(strikes::lengthMetres))
                        .orElseThrow()
                : swings.stream()
                        .min(Comparator.comparingDouble(s -> Math.abs(length(s, ball) - toHole)))
                        .orElseThrow();
        return aimed(spot, ball, shot, toHole);
    }

    private int touchFor(Spot spot, double toHole) {
        for (TouchShot.Kind kind : List.of(TouchShot.Kind.BUNKER_SHOT, TouchShot.Kind.CHIP, TouchShot.Kind.PITCH)) {
            for (int s = 0; s < strikes.shots(); s++) {
                if (strikes.isTouch(s)
                        && strikes.touch(s).kind() == kind
                        && strikes.allows(s, spot.surface(), spot.situation())
                        && toHole <= strikes.touch(s).maxMetres() + PITCH_MARGIN_METRES) {
                    return s;
                }
            }
        }
        return -1;
    }

    private Option aimed(Spot spot, Place ball, int shot, double toHole) {
        double length = length(shot, ball);
        Place ahead = length >= toHole - 20 ? problem.hole() : problem.line.placeAt(problem.line.along(ball) + length);
        double east = ahead.x() - ball.x();
        double north = ahead.y() - ball.y();
        OptionSpace space = new OptionSpace(problem);
        return space.swing(shot, spot, space.held(shot, Math.atan2(east, north)));
    }

    /** Of the usual swing towards the hole on the day; a yard less for every yard uphill (common practice, no source). */
    private double length(int shot, Place ball) {
        double rise = problem.map.course().riseMetres(ball, problem.hole());
        return problem.ability.reach().metres(shot, ball.bearingTo(problem.hole())) - rise;
    }
}
