package loopwright.practice;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.numerics.Watch;
import loopwright.player.Habit;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.ScoreTable;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What all skills of execution are worth on one hole of the demo: the fixed plan with only the changed shots played again,
 * against two new plans for each skill, one either side of today. Run from the project's folder.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
@Fork(1)
public class SkillGradientBenchmark {
    private static final Player PLAYER = PlayerPrior.of(88, Player.Hand.RIGHT).player("benchmark");
    private static final GreenSpeed SPEED = GreenSpeed.ofRollMetres(3.048);
    private static final Ability TODAY =
            new Ability(new StrikeModel(PLAYER), new LevelGreenOdds(PLAYER.putting(), SPEED), 1);

    private final MeanSolution plan = solved(PLAYER, TODAY);

    private static MeanSolution solved(Player player, Ability ability) {
        Course course =
                new OsmCourseFiles().read(Path.of("demo", "course.geojson")).course();
        Hole first = course.holes().get(0);
        return MeanSolver.solve(
                new HoleProblem(
                        new CourseMap(course, first),
                        course.teeSets().get(0).getPlace(first.number()).place(),
                        ability,
                        SolverSettings.FOR_COMPARISON,
                        ShotRules.FREE),
                Watch.NONE);
    }

    @Benchmark
    public double fixedPlan() {
        PracticeHole hole = new PracticeHole(
                plan.evaluate(Watch.NONE),
                new HabitPlay(plan, Habit.USUAL).evaluate(Watch.NONE),
                ScoreTable.strokes(),
                TODAY,
                Watch.NONE);
        PracticeRound round = new PracticeRound(List.of(hole), PLAYER, TODAY, SPEED, 1, 4);
        double sum = 0;
        for (Skill skill : Skill.ofExecution()) {
            sum += SkillGradient.change(round, skill, Skill.STEP, Watch.NONE).expected();
        }
        return sum;
    }

    @Benchmark
    public double newPlans() {
        double sum = 0;
        for (Skill skill : Skill.ofExecution()) {
            for (double left : new double[] {Skill.STEP, 2 - Skill.STEP}) {
                Player player = skill.of(PLAYER, left);
                Ability ability = new Ability(new StrikeModel(player), new LevelGreenOdds(player.putting(), SPEED), 1);
                sum += solved(player, ability).evaluate(Watch.NONE).expected();
            }
        }
        return sum;
    }
}
