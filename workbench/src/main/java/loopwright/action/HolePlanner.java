package loopwright.action;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.LocalRule;
import loopwright.course.TeePlace;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Habit;
import loopwright.player.PlayingLength;
import loopwright.player.SituationTable;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenOdds;
import loopwright.scoring.GreenPlay;
import loopwright.scoring.PlayOut;
import loopwright.strategy.Ability;
import loopwright.strategy.Advice;
import loopwright.strategy.Choice;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;

/** Plans one hole: solves it, evaluates plan and habit, words the shots, and lets the referee play it. */
final class HolePlanner {
    private static final int MOST_SHOTS = 4;
    private static final int ALTERNATIVES = 2;
    /** Shots that aim nearer to the hole than this are approaches: the room that counts is the green. */
    private static final double APPROACH_METRES = 25;

    private final Hole hole;
    private final TeePlace tee;
    private final Ability ability;
    private final ShotRules rules;
    private final RoundGreens greens;
    private final Habit habits;
    private final StrikeModel strikes;
    private final CourseMap map;

    HolePlanner(
            Course course,
            Hole hole,
            TeePlace tee,
            Ability ability,
            ShotRules rules,
            RoundGreens greens,
            Habit habits) {
        this.greens = greens;
        this.habits = habits;
        this.hole = hole;
        this.tee = tee;
        this.ability = ability;
        this.rules = rules;
        this.strikes = ability.strikes();
        this.map = new CourseMap(course, hole);
    }

    /** A planned hole and the scores of the referee's rounds on it, in round order. */
    record Planned(RoundPlan.HolePlan plan, List<Integer> simulated) {}

    Planned plan(int rounds, long seed, Optional<AuditFiles> audit, Watch watch) {
        RoundGreens.Green green = greens.of(hole);
        MeanSolution solution = solve(rules, green.odds(), watch);
        PolicyEvaluation evaluation = solution.evaluate(watch);
        Advice advice = new Advice(solution, evaluation);
        RoundPlan.HolePlan plan = describe(solution, evaluation, advice, new HabitPlay(solution, habits), green, watch);
        audit.ifPresent(a -> a.write(solution, evaluation, seed));
        return new Planned(plan, referee(solution, evaluation, green.play(), rounds, seed));
    }

    /** The hole solved and kept to answer questions; the referee does not play it. */
    SolvedHole solved(String tees, Watch watch) {
        RoundGreens.Green green = greens.of(hole);
        MeanSolution solution = solve(rules, green.odds(), watch);
        PolicyEvaluation evaluation = solution.evaluate(watch);
        HabitPlay habit = new HabitPlay(solution, habits);
        Advice advice = new Advice(solution, evaluation);
        RoundPlan.HolePlan plan = describe(solution, evaluation, advice, habit, green, watch);
        return new SolvedHole(map.course(), tees, this, evaluation, advice, habit, plan);
    }

    private RoundPlan.HolePlan describe(
            MeanSolution solution,
            PolicyEvaluation evaluation,
            Advice advice,
            HabitPlay habit,
            RoundGreens.Green green,
            Watch watch) {
        double[] scores = evaluation.scores();
        OptionalDouble lockCost = rules.equals(ShotRules.FREE)
                ? OptionalDouble.empty()
                : OptionalDouble.of(evaluation.expected()
                        - solve(ShotRules.FREE, green.odds(), watch)
                                .evaluate(watch)
                                .expected());
        return new RoundPlan.HolePlan(
                hole.number(),
                hole.par(),
                hole.lineFrom(tee.place()).lengthMetres(),
                tee.place(),
                tee.standsIn().orElse(""),
                hole.survey().complete(),
                hole.greenAssumed(),
                green.measured(),
                evaluation.expected(),
                Arrays.stream(scores).boxed().toList(),
                1 - evaluation.withoutPenalty(),
                shots(advice, habit),
                lockCost,
                habit.evaluate(watch).expected(),
                evaluation.expected() - solution.expectedWhenChosen(),
                solution.searchLoss());
    }

    private MeanSolution solve(ShotRules under, GreenOdds green, Watch watch) {
        return MeanSolver.solve(
                new HoleProblem(map, tee.place(), ability, SolverSettings.STANDARD, under, green), watch);
    }

    private List<Integer> referee(
            MeanSolution solution, PolicyEvaluation evaluation, GreenPlay green, int rounds, long seed) {
        PlayOut playOut = new PlayOut(map, tee.place(), strikes, green, solution.policy(evaluation));
        SplittableRandom random = new SplittableRandom(seed * 1_000_003 + hole.number());
        List<Integer> out = new ArrayList<>(rounds);
        for (int i = 0; i < rounds; i++) {
            out.add(playOut.play(random).strokes());
        }
        return out;
    }

    private List<RoundPlan.ShotPlan> shots(Advice advice, HabitPlay habit) {
        List<RoundPlan.ShotPlan> out = new ArrayList<>();
        Place ball = tee.place();
        Surface lie = Surface.TEE;
        while (out.size() < MOST_SHOTS && lie != Surface.GREEN) {
            Situation situation = SituationTable.of(lie, map.hasLocalRule(LocalRule.PREFERRED_LIES))
                    .get(0)
                    .situation();
            Advice.Rated chosen = advice.chosen(ball, lie, situation);
            Advice.Finish finish = advice.finish(ball, lie, situation, chosen);
            out.add(shot(advice, habit, ball, lie, situation, chosen, finish));
            if (ball.distanceTo(finish.typical()) < 1) {
                break;
            }
            ball = finish.typical();
            lie = map.surfaceAt(ball);
            if (!lie.isPlayable()) {
                break;
            }
        }
        return out;
    }

    RoundPlan.ShotPlan shot(
            Advice advice,
            HabitPlay habit,
            Place ball,
            Surface lie,
            Situation situation,
            Advice.Rated chosen,
            Advice.Finish finish) {
        double bearing = ball.bearingTo(chosen.target());
        Optional<PlayingLength> playing = strikes.findPlayingLength(
                chosen.shot(),
                strikes.lie(chosen.shot(), lie, situation),
                bearing,
                (forward, right) -> map.course().riseMetres(ball, ball.offset(bearing, forward, right)));
        // a swing has one length; where the day was flown it is known to the yard, hill and lie included
        Place aim = playing.map(p -> ball.along(bearing, p.finishMetres())).orElse(chosen.target());
        double length = ball.distanceTo(aim);
        boolean approach = aim.distanceTo(hole.holeLocation()) < APPROACH_METRES;
        Rooms rooms = new Rooms(map);
        double offset = offset(ball, aim);
        Landmarks.Line line = new Landmarks(map).line(ball, aim, offset);
        return new RoundPlan.ShotPlan(
                ball,
                lie,
                ball.distanceTo(hole.holeLocation()),
                strikes.label(chosen.shot()),
                aim,
                length,
                offset,
                line.words(),
                line.blind(),
                playing,
                chosen.expected(),
                finish.share(),
                finish.sample(),
                rooms.across(ball, bearing, length),
                approach ? Optional.empty() : rooms.at(ball, bearing, length, finish.sample()),
                alternatives(advice, ball, lie, situation, chosen),
                habitual(advice, habit, ball, lie, situation, chosen));
    }

    private List<RoundPlan.Alternative> alternatives(
            Advice advice, Place ball, Surface lie, Situation situation, Advice.Rated chosen) {
        List<RoundPlan.Alternative> out = new ArrayList<>();
        for (Advice.Rated r : advice.byShot(ball, lie, situation)) {
            if (r.shot() != chosen.shot() && out.size() < ALTERNATIVES) {
                out.add(alternative(ball, r, chosen));
            }
        }
        return out;
    }

    private RoundPlan.Alternative habitual(
            Advice advice, HabitPlay habit, Place ball, Surface lie, Situation situation, Advice.Rated chosen) {
        Choice.Stroke s = habit.from(ball, lie, situation);
        return alternative(ball, advice.rate(ball, lie, situation, s.shot(), s.target()), chosen);
    }

    RoundPlan.Alternative alternative(Place ball, Advice.Rated r, Advice.Rated chosen) {
        return new RoundPlan.Alternative(
                strikes.label(r.shot()),
                r.target(),
                offset(ball, r.target()),
                r.costBeside(chosen),
                r.costError(chosen));
    }

    /** How far beside the line of play a target lies, seen from the ball: + right. */
    double offset(Place ball, Place target) {
        double length = ball.distanceTo(target);
        var line = hole.lineFrom(tee.place());
        Place ahead = length >= ball.distanceTo(hole.holeLocation()) - APPROACH_METRES
                ? hole.holeLocation()
                : line.placeAt(line.along(ball) + length);
        double turn = ball.bearingTo(target) - ball.bearingTo(ahead);
        return length * Math.sin(turn);
    }

    Surface surfaceAt(Place ball) {
        return map.surfaceAt(ball);
    }

    /** The number of a shot by its label; see {@code StrikeModel}. */
    int shotNamed(String label) {
        for (int s = 0; s < strikes.shots(); s++) {
            if (strikes.label(s).equals(label)) {
                return s;
            }
        }
        throw new UserFault("\"" + label + "\" is no shot of this player.");
    }

    /** Where a shot towards an aim is meant to end: a swing at its own length, a touch shot as near as it may. */
    Place reach(Place ball, int shot, Place aim) {
        double wanted = ball.distanceTo(aim);
        double metres = strikes.isTouch(shot) ? strikes.touch(shot).possibleMetres(wanted) : strikes.lengthMetres(shot);
        return ball.along(ball.bearingTo(aim), metres);
    }
}
