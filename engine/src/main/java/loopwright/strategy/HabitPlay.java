package loopwright.strategy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Habit;
import loopwright.player.StrikeModel;
import loopwright.player.TouchShot;

/**
 * The player as he plays without a plan, by his {@link Habit}: his usual tee club, else the club whose length on the day
 * fits the distance best, aimed at the flag or the middle of the green, or along the hole while the green is out of reach,
 * with what the wind takes held against (assumed: he feels the day as it is). Out of the woods, and where none of this can
 * be played, he does what the plan does.
 */
public final class HabitPlay {
    /** Within this of the hole a touch shot is played where one reaches. */
    private static final double PITCH_MARGIN_METRES = 3;
    /** A club that ends so near the target is played at it. */
    private static final double IN_REACH_METRES = 20;

    private static final double LOOK_METRES = 1;
    /** A chip is meant to land on the green, or no further short of it than this on the fairway (common practice, no source). */
    private static final double FRINGE_METRES = 3;

    private final MeanSolution plan;
    private final HoleProblem problem;
    private final StrikeModel strikes;
    private final Habit habit;
    private final Place target;

    public HabitPlay(MeanSolution plan, Habit habit) {
        this.plan = plan;
        this.habit = habit;
        problem = plan.problem;
        strikes = problem.ability.strikes();
        target = habit.aim() == Habit.Aim.FLAG
                ? problem.hole()
                : problem.map.hole().green().centre();
    }

    /** The hole as it is played by habit, in place of the plan's choices. */
    public MeanSolution played() {
        NodePolicy choices = new NodePolicy(plan.nodes.states);
        for (int s = 0; s < plan.nodes.states; s++) {
            choices.set(s, choose(plan.spots[s], plan.choices.option(s)));
        }
        return plan.withChoices(choices);
    }

    /** What playing by habit is worth on this hole. */
    public PolicyEvaluation evaluate(Watch watch) {
        return played().evaluate(watch);
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
        if (spot.surface() == Surface.WOODS) {
            return planned;
        }
        Place ball = problem.raster.place(spot.column(), spot.row());
        int touch = touchFor(spot, ball);
        if (touch >= 0) {
            return Option.stroke(touch, problem.raster.column(target), problem.raster.row(target));
        }
        List<Integer> swings = IntStream.range(0, strikes.shots())
                .filter(s -> !strikes.isTouch(s) && strikes.allows(s, spot.surface(), spot.situation()))
                .boxed()
                .toList();
        return swings.isEmpty() ? planned : aimed(spot, ball, club(spot, ball, swings));
    }

    private int club(Spot spot, Place ball, List<Integer> swings) {
        int longest = swings.stream()
                .max(Comparator.comparingDouble(strikes::lengthMetres))
                .orElseThrow();
        Optional<Habit.HoleKind> kind = Habit.HoleKind.of(problem.map.hole().par(), problem.line.lengthMetres());
        if (spot.onTee() && kind.isPresent()) {
            String usual = habit.teeClubs().getOrDefault(kind.get(), "");
            return swings.stream()
                    .filter(s -> strikes.swing(s).isFull()
                            && strikes.swing(s).club().name().equals(usual))
                    .findFirst()
                    .orElse(longest);
        }
        double toTarget = ball.distanceTo(target);
        boolean reaches = length(longest, ball) >= toTarget - IN_REACH_METRES;
        double wanted = reaches ? toTarget : toTarget - habit.layUpMetres();
        return swings.stream()
                .min(Comparator.comparingDouble(s -> Math.abs(length(s, ball) - wanted)))
                .orElseThrow();
    }

    private int touchFor(Spot spot, Place ball) {
        double toTarget = ball.distanceTo(target);
        for (TouchShot.Kind kind : inOrder()) {
            for (int s = 0; s < strikes.shots(); s++) {
                if (strikes.isTouch(s)
                        && strikes.touch(s).kind() == kind
                        && strikes.allows(s, spot.surface(), spot.situation())
                        && toTarget <= strikes.touch(s).maxMetres() + PITCH_MARGIN_METRES
                        && isPlayed(strikes.touch(s), ball, toTarget)) {
                    return s;
                }
            }
        }
        return -1;
    }

    private List<TouchShot.Kind> inOrder() {
        return habit.chip() == Habit.ChipChoice.ALWAYS_PITCH
                ? List.of(TouchShot.Kind.BUNKER_SHOT, TouchShot.Kind.PITCH, TouchShot.Kind.CHIP)
                : List.of(TouchShot.Kind.BUNKER_SHOT, TouchShot.Kind.CHIP, TouchShot.Kind.PITCH);
    }

    /** A chip over rough only by those who always chip, or where a pitch would be too short to play. */
    private boolean isPlayed(TouchShot shot, Place ball, double toTarget) {
        return shot.kind() != TouchShot.Kind.CHIP
                || habit.chip() != Habit.ChipChoice.GROUND_WHERE_CLEAR
                || isClear(ball, toTarget, shot.runShare())
                || toTarget < shortestPitch();
    }

    private double shortestPitch() {
        return IntStream.range(0, strikes.shots())
                .filter(s -> strikes.isTouch(s) && strikes.touch(s).kind() == TouchShot.Kind.PITCH)
                .mapToDouble(s -> strikes.touch(s).minMetres())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** True if a ball that runs the last {@code runShare} of the way runs on the green, but for its first steps on fairway. */
    private boolean isClear(Place ball, double toTarget, double runShare) {
        double bearing = ball.bearingTo(target);
        double landing = toTarget * (1 - runShare);
        for (double s = landing; s < toTarget; s += LOOK_METRES) {
            Surface there = problem.raster.surface(problem.raster.cell(ball.along(bearing, s)));
            boolean fringe = there == Surface.FAIRWAY && s - landing < FRINGE_METRES;
            if (there != Surface.GREEN && !fringe) {
                return false;
            }
        }
        return true;
    }

    private Option aimed(Spot spot, Place ball, int shot) {
        double length = length(shot, ball);
        boolean atTarget = length >= ball.distanceTo(target) - IN_REACH_METRES;
        Place ahead = atTarget ? target : problem.line.placeAt(problem.line.along(ball) + length);
        OptionSpace space = new OptionSpace(problem);
        return space.swing(shot, spot, space.held(shot, ball.bearingTo(ahead)));
    }

    /** Of the usual swing towards the hole on the day; a yard less for every yard uphill (common practice, no source). */
    private double length(int shot, Place ball) {
        double rise = problem.map.course().riseMetres(ball, target);
        return problem.ability.reach().metres(shot, ball.bearingTo(target)) - rise;
    }
}
