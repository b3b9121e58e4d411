package loopwright.action;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.practice.LearningTable;
import loopwright.practice.PracticeHole;
import loopwright.practice.PracticeRound;
import loopwright.practice.RoundOdds;
import loopwright.putting.GreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ScoreDistribution;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;

/** Solves a round and makes it ready to be valued for other skills. Greens count as level: putting is what is practised. */
final class PracticeRounds {
    private final RoundSetup setup;
    /** The player without his weaknesses, if he has any. */
    private final Optional<Ability> mended;

    PracticeRounds(RoundSetup setup) {
        this.setup = setup;
        Player player = setup.profile().player();
        Ability today = setup.round().ordinary();
        mended = LearningTable.weaknesses(player).isEmpty()
                ? Optional.empty()
                : Optional.of(new Ability(
                        today.strikes().of(LearningTable.mended(player)),
                        today.putting(),
                        setup.round().seed()));
    }

    /** A hole with what its plan comes to on every day that counts. */
    private record Solved(PracticeHole hole, List<ScoreDistribution> byDay) {}

    PracticeRound solve(int limit, Watch watch) {
        List<Solved> holes = Cores.all(
                IntStream.range(0, setup.holes().size()).boxed().toList(),
                i -> hole(i, watch.withoutProgress()),
                watch);
        PracticeRound round = new PracticeRound(
                holes.stream().map(Solved::hole).toList(),
                setup.profile().player(),
                setup.round().ordinary(),
                setup.day().greens(),
                setup.round().seed(),
                limit);
        ScoreDistribution overDays =
                setup.round().total(holes.stream().map(Solved::byDay).toList());
        return round.over(new RoundOdds(overDays.mean(), overDays.probabilityAtMost(limit)));
    }

    private Solved hole(int i, Watch watch) {
        Ability ability = setup.round().ordinary();
        MeanSolution solution = MeanSolver.solve(problem(i, ability), watch);
        PolicyEvaluation plan = solution.evaluate(watch);
        PolicyEvaluation habit = new HabitPlay(solution, setup.profile().habit()).evaluate(watch);
        plan.forgetRows();
        habit.forgetRows();
        PracticeHole practised =
                withMended(i, new PracticeHole(plan, habit, setup.tables().get(i), ability, watch), watch);
        List<ScoreDistribution> byDay = plan.scoresOn(setup.round().days(), watch).stream()
                .map(s -> s.countedBy(setup.tables().get(i)))
                .toList();
        return new Solved(practised, byDay);
    }

    private HoleProblem problem(int i, Ability ability) {
        Hole hole = setup.holes().get(i);
        GreenOdds green = GreenOdds.level(
                ability.putting(), hole.holeLocation().x(), hole.holeLocation().y());
        return new HoleProblem(
                new CourseMap(setup.course(), hole),
                setup.tees().getPlace(hole.number()).place(),
                ability,
                SolverSettings.FOR_COMPARISON,
                ShotRules.FREE,
                green);
    }

    /** A player with weaknesses gets a second plan, as if he had mended them. */
    private PracticeHole withMended(int i, PracticeHole hole, Watch watch) {
        if (mended.isEmpty()) {
            return hole;
        }
        PolicyEvaluation plan =
                MeanSolver.solve(problem(i, mended.get()), watch).evaluate(watch);
        plan.forgetRows();
        return hole.withMended(plan, setup.round().ordinary(), watch);
    }
}
