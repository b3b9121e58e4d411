package loopwright.action;

import java.util.List;
import java.util.stream.IntStream;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.numerics.Watch;
import loopwright.practice.PracticeHole;
import loopwright.practice.PracticeRound;
import loopwright.practice.RoundOdds;
import loopwright.putting.GreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.DayAbility;
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

    PracticeRounds(RoundSetup setup) {
        this.setup = setup;
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
        ScoreDistribution overDays = ScoreDistribution.mixtureOf(
                IntStream.range(0, setup.round().days().size())
                        .mapToObj(day -> ScoreDistribution.sumOf(
                                holes.stream().map(h -> h.byDay().get(day)).toList()))
                        .toList(),
                setup.round().weights());
        return round.over(new RoundOdds(overDays.mean(), overDays.probabilityAtMost(limit)));
    }

    private Solved hole(int i, Watch watch) {
        Hole hole = setup.holes().get(i);
        Ability ability = setup.round().ordinary();
        GreenOdds green = GreenOdds.level(
                ability.putting(), hole.holeLocation().x(), hole.holeLocation().y());
        HoleProblem problem = new HoleProblem(
                new CourseMap(setup.course(), hole),
                setup.tees().getPlace(hole.number()).place(),
                ability,
                SolverSettings.FOR_COMPARISON,
                ShotRules.FREE,
                green);
        MeanSolution solution = MeanSolver.solve(problem, watch);
        PolicyEvaluation plan = solution.evaluate(watch);
        PolicyEvaluation habit = new HabitPlay(solution, setup.profile().habit()).evaluate(watch);
        plan.forgetRows();
        habit.forgetRows();
        PracticeHole practised = new PracticeHole(plan, habit, setup.tables().get(i), ability, watch);
        List<ScoreDistribution> byDay = setup.round().days().stream()
                .map(DayAbility::ability)
                .map(a -> ScoreDistribution.of(0, a == ability ? plan.scores() : plan.scoresWith(a, watch))
                        .countedBy(setup.tables().get(i)))
                .toList();
        return new Solved(practised, byDay);
    }
}
