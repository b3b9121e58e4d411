package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.TeePlace;
import loopwright.numerics.Watch;
import loopwright.player.Habit;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenOdds;
import loopwright.scoring.GreenPlay;
import loopwright.scoring.PlayOut;
import loopwright.strategy.Ability;
import loopwright.strategy.Advice;
import loopwright.strategy.DayAbility;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.Policy;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ScoreDistribution;
import loopwright.strategy.ScoreTable;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import loopwright.strategy.TargetHole;

/** Plans one hole: solves it, evaluates plan and habit, and lets the referee play it. */
final class HolePlanner {
    /** Coarse enough to be there while the hand is still on the flag. */
    private static final SolverSettings FIRST_ANSWER = new SolverSettings(24, 24, 24, 16, 32, 64);

    private final Hole hole;
    private final TeePlace tee;
    private final Ability ability;
    private final ShotRules rules;
    private final RoundGreens greens;
    private final Habit habits;
    private final ScoreTable table;
    private final CourseMap map;
    private final PlannedShots shots;

    /** @param todaysBiasRadians what is known of today's bias: it is held against, also where the usual target is kept */
    HolePlanner(
            Course course,
            Hole hole,
            TeePlace tee,
            Ability ability,
            ShotRules rules,
            RoundGreens greens,
            Habit habits,
            ScoreTable table,
            double todaysBiasRadians) {
        this.greens = greens;
        this.habits = habits;
        this.table = table;
        this.hole = hole;
        this.tee = tee;
        this.ability = ability;
        this.rules = rules;
        this.map = new CourseMap(course, hole);
        this.shots = new PlannedShots(map, tee.place(), ability.strikes(), rules, todaysBiasRadians);
    }

    /**
     * A planned hole.
     *
     * @param scores by day
     * @param simulated the scores of the referee's rounds, in round order
     * @param solved what target play and doubt need, if either is wanted
     */
    record Planned(
            RoundPlan.HolePlan plan,
            List<ScoreDistribution> scores,
            List<Integer> simulated,
            Optional<TargetHole> solved) {}

    /** The hole's shots in the coach's terms. */
    PlannedShots shots() {
        return shots;
    }

    int number() {
        return hole.number();
    }

    Planned plan(PlannedRound round, Optional<AuditFiles> audit, PlanWitness witness, Watch watch) {
        RoundGreens.Green green = greens.of(hole);
        MeanSolution solution = solve(SolverSettings.STANDARD, rules, green.odds(), watch);
        PolicyEvaluation evaluation = solution.evaluate(watch);
        List<ScoreDistribution> byDay = evaluation.scoresOn(round.days(), watch);
        Advice advice = new Advice(solution, evaluation);
        HabitPlay habit = new HabitPlay(solution, habits);
        RoundPlan.HolePlan plan = describe(
                solution,
                evaluation,
                round,
                averaged(byDay, round),
                byDay.get(0).mean(),
                advice,
                habit,
                habit.played().evaluateRoughly(watch).expected(),
                green,
                watch);
        audit.ifPresent(a -> a.write(solution, evaluation, round.seed()));
        witness.hole(new PlanWitness.Solved(shots, solution, evaluation, advice, green.play(), plan), watch);
        List<Integer> simulated = referee(solution, evaluation, green.play(), round);
        evaluation.forgetRows();
        solution.forgetTrees();
        Optional<TargetHole> solved =
                round.keepsSolutions() ? Optional.of(new TargetHole(solution, evaluation, table)) : Optional.empty();
        return new Planned(plan, byDay, simulated, solved);
    }

    /** The hole solved and kept to answer questions; the referee does not play it. {@code drawn} are the players he may be as well. */
    SolvedHole solved(String tees, PlannedRound round, Supplier<List<Ability>> drawn, Watch watch) {
        RoundGreens.Green green = greens.of(hole);
        MeanSolution solution = solve(SolverSettings.STANDARD, rules, green.odds(), watch);
        PolicyEvaluation evaluation = solution.evaluate(watch);
        HabitPlay habit = new HabitPlay(solution, habits);
        Advice advice = new Advice(solution, evaluation);
        List<ScoreDistribution> byDay = evaluation.scoresOn(round.days(), watch);
        double byHabit = habit.played().evaluateRoughly(watch).expected();
        double usual = byDay.get(0).mean();
        RoundPlan.HolePlan plan = describe(
                solution, evaluation, round, averaged(byDay, round), usual, advice, habit, byHabit, green, watch);
        evaluation.forgetRows();
        return new SolvedHole(map.course(), tees, shots, solution, evaluation, habit, plan, drawn, false);
    }

    /**
     * A first answer in a fraction of the time: coarser nodes and clouds, an ordinary day for the player instead of good
     * and bad ones, no other start lines, no value of the habit (NaN) and none of the locks.
     */
    SolvedHole first(String tees, PlannedRound round, Supplier<List<Ability>> drawn, Watch watch) {
        RoundGreens.Green green = greens.of(hole);
        MeanSolution solution = solve(FIRST_ANSWER, rules, green.odds(), watch);
        PolicyEvaluation evaluation = solution.evaluate(watch);
        HabitPlay habit = new HabitPlay(solution, habits);
        Advice advice = new Advice(solution, evaluation);
        ScoreDistribution scores = ScoreDistribution.of(0, evaluation.scores());
        RoundPlan.HolePlan plan =
                describe(solution, evaluation, round, scores, scores.mean(), advice, habit, Double.NaN, green, watch);
        evaluation.forgetRows();
        return new SolvedHole(map.course(), tees, shots, solution, evaluation, habit, plan, drawn, true);
    }

    /** {@code scores} over good and bad days, {@code usual} the mean score of an ordinary one. */
    private RoundPlan.HolePlan describe(
            MeanSolution solution,
            PolicyEvaluation evaluation,
            PlannedRound round,
            ScoreDistribution scores,
            double usual,
            Advice advice,
            HabitPlay habit,
            double byHabit,
            RoundGreens.Green green,
            Watch watch) {
        double badDays = scores.mean() - usual;
        List<RoundPlan.ShotPlan> planned = shots.fromTee(advice, habit);
        boolean first = Double.isNaN(byHabit);
        OptionalDouble lockCost = rules.equals(ShotRules.FREE) || first
                ? OptionalDouble.empty()
                : OptionalDouble.of(evaluation.expected()
                        - solve(SolverSettings.STANDARD, ShotRules.FREE, green.odds(), watch)
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
                evaluation.expected() + badDays,
                IntStream.rangeClosed(0, PolicyEvaluation.MOST_STROKES)
                        .mapToObj(scores::probability)
                        .toList(),
                1 - evaluation.withoutPenalty(),
                planned,
                first ? List.of() : shots.startLines(planned.get(0), solution, evaluation, round),
                lockCost,
                byHabit + badDays,
                evaluation.expected() - solution.expectedWhenChosen(),
                solution.searchLoss());
    }

    private static ScoreDistribution averaged(List<ScoreDistribution> byDay, PlannedRound round) {
        double[] weights = round.days().stream().mapToDouble(DayAbility::weight).toArray();
        return ScoreDistribution.mixtureOf(byDay, weights);
    }

    private MeanSolution solve(SolverSettings settings, ShotRules under, GreenOdds green, Watch watch) {
        return MeanSolver.solve(new HoleProblem(map, tee.place(), ability, settings, under, green), watch);
    }

    /** Every round on the day that all its holes share. */
    private List<Integer> referee(
            MeanSolution solution, PolicyEvaluation evaluation, GreenPlay green, PlannedRound round) {
        Policy policy = solution.policy(evaluation);
        SplittableRandom random = new SplittableRandom(round.seed() * 1_000_003 + hole.number());
        List<Integer> out = new ArrayList<>();
        for (StrikeModel today : round.simulatedDays()) {
            out.add(new PlayOut(map, tee.place(), today, green, policy)
                    .play(random)
                    .strokes());
        }
        return out;
    }
}
