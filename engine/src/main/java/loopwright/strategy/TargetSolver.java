package loopwright.strategy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.stream.IntStream;
import loopwright.numerics.Watch;

/**
 * Finds the play that most often beats a target, for every target at once: U(s, k), the chance with k strokes still
 * allowed from state s, backward from the last hole. Every stroke lowers k and stroke and distance reads U(s, k - 2), so
 * that nothing is iterated: on each hole the lanes are solved in rising order, each from the ones below it.
 *
 * <p>Choices are made on one family of clouds, on the ordinary day; chances are reported from the other, on every day
 * that counts. While one hole is solved the outcomes of the hole before it are worked out.
 */
public final class TargetSolver {
    private final List<TargetHole> holes;
    private final List<DayAbility> days;
    private final TargetSettings settings;
    private final Watch watch;

    private TargetSolver(List<TargetHole> holes, List<DayAbility> days, TargetSettings settings, Watch watch) {
        this.holes = holes;
        this.days = days;
        this.settings = settings;
        this.watch = watch;
    }

    /**
     * Solves a round.
     *
     * @param holes in playing order
     * @param days the first is the ordinary one, with the ability that the holes were solved for
     */
    public static TargetSolution solve(List<TargetHole> holes, List<DayAbility> days, Watch watch) {
        return solve(holes, days, TargetSettings.STANDARD, watch);
    }

    /**
     * The same where nothing is played out: chances and tee shots are kept, the play of a ball on its way is not. A table
     * with a ceiling has hundreds of lanes on every hole, too many to keep those of a whole round.
     */
    public static TargetSolution chances(List<TargetHole> holes, List<DayAbility> days, Watch watch) {
        return solve(holes, days, TargetSettings.STANDARD.withoutPlay(), watch);
    }

    static TargetSolution solve(List<TargetHole> holes, List<DayAbility> days, TargetSettings settings, Watch watch) {
        return new TargetSolver(holes, days, settings, watch).solve();
    }

    /** A hole's options with their outcomes on the clouds for choosing. */
    private record Prepared(TargetOptions options, OutcomeRows usual, ChanceRows rows) {}

    private TargetSolution solve() {
        List<HoleTarget> solved = new ArrayList<>();
        List<HandOver> after = Collections.nCopies(days.size(), HandOver.END);
        CompletableFuture<Prepared> ready = prepare(holes.size() - 1);
        for (int i = holes.size() - 1; i >= 0; i--) {
            Prepared prepared = await(ready);
            if (i > 0) {
                ready = prepare(i - 1);
            }
            HoleTarget hole = solveHole(holes.get(i), prepared, after);
            solved.add(hole);
            after = hole.before();
            watch.at(holes.size() - (long) i, holes.size());
        }
        Collections.reverse(solved);
        return new TargetSolution(solved, days.stream().map(DayAbility::day).toList());
    }

    private static <T> T await(CompletableFuture<T> ready) {
        try {
            return ready.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            throw e;
        }
    }

    private CompletableFuture<Prepared> prepare(int i) {
        return CompletableFuture.supplyAsync(() -> {
            TargetHole hole = holes.get(i);
            OutcomeRows usual = hole.evaluation().rowsWith(hole.mean().problem.ability, 1, watch);
            TargetOptions options = new TargetOptions(hole.mean(), hole.evaluation(), usual, watch);
            OutcomeRows rows = LaneChooser.rows(hole.mean(), options, watch);
            return new Prepared(options, usual, new ChanceRows(rows, hole.evaluation().field.replay));
        });
    }

    private HoleTarget solveHole(TargetHole hole, Prepared prepared, List<HandOver> after) {
        int lowest = after.stream().mapToInt(HandOver::lowest).min().orElseThrow();
        int secured = after.stream().mapToInt(HandOver::secured).max().orElseThrow();
        LaneTable table = new LaneTable(lowest, secured, hole.table());
        PaceChoice paces = new PaceChoice();
        LaneChooser chooser =
                new LaneChooser(prepared.options, prepared.rows, field(hole, after.get(0), paces), settings.margin());
        List<Double> whenChosen = LaneRange.solve(table, chooser, settings.clip(), watch);
        List<LaneField> fields = after.stream().map(a -> field(hole, a, paces)).toList();
        LaneEvaluation evaluation = new LaneEvaluation(hole, prepared.options, chooser.choice, fields);
        List<Day> outcomes = IntStream.range(0, days.size())
                .parallel()
                .mapToObj(day -> day(hole, prepared, evaluation, day))
                .toList();
        outcomes.forEach(d -> evaluation.add(d.usual, d.other));
        List<double[]> meanScores = outcomes.stream().map(Day::meanScores).toList();
        LaneTable again = new LaneTable(lowest, secured, hole.table());
        LaneRange.solve(again, evaluation, settings.clip(), watch);
        evaluation.fields.forEach(LaneField::forgetCells);
        hole.mean().forgetTrees();
        List<HandOver> before = evaluation.onTee.stream()
                .map(c -> LaneRange.handOver(again, c, settings.clip()))
                .toList();
        return new HoleTarget(
                hole,
                prepared.options,
                again,
                chooser.choice,
                paces,
                evaluation,
                before,
                whenChosen,
                meanScores,
                settings.keepsPlay());
    }

    /** Outcomes of one day, and the scores of mean play. */
    private record Day(ChanceRows usual, ChanceRows other, List<Double> scores) {
        double[] meanScores() {
            return scores.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    private Day day(TargetHole hole, Prepared prepared, LaneEvaluation evaluation, int day) {
        HoleProblem problem = hole.mean().problem;
        PolicyEvaluation mean = hole.evaluation();
        Ability ability = days.get(day).ability();
        int part = day == 0 ? 1 : PolicyEvaluation.DAY_PART;
        OutcomeRows usual = day == 0 ? prepared.usual : mean.rowsOn(ability, prepared.usual, watch);
        OutcomeRows other =
                evaluation.others(hole, prepared.options, day == 0 ? problem : problem.with(ability), part, watch);
        double[] scores = day == 0 ? mean.scores() : mean.scoresOf(usual);
        return new Day(
                new ChanceRows(usual, mean.field.replay),
                new ChanceRows(other, mean.field.replay),
                Arrays.stream(scores).boxed().toList());
    }

    private static LaneField field(TargetHole hole, HandOver after, PaceChoice paces) {
        HoleProblem problem = hole.mean().problem;
        GreenLanes green = GreenLanes.chosen(hole.evaluation().green, problem.green, after, paces);
        return new LaneField(hole.mean().nodes, problem.relief, hole.evaluation().field.replay, after, green);
    }
}
