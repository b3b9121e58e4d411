package loopwright.strategy;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Choosing for the target on one hole of the demo: all allowances in one rising pass, against every allowance solved for
 * itself from the fewest strokes up; and how both grow with the number of allowances. Run from the project's folder.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class TargetBenchmark {
    /** Numbers of strokes in hand after the hole that leave the target open. */
    @Param({"8", "16", "32"})
    public int allowances = 8;

    private HandOver after = HandOver.END;
    private TargetHole hole = solved();
    private TargetOptions options =
            new TargetOptions(hole.mean(), hole.evaluation(), hole.evaluation().rows(), Watch.NONE);
    private ChanceRows rows =
            new ChanceRows(LaneChooser.rows(hole.mean(), options, Watch.NONE), hole.evaluation().field.replay);

    private static TargetHole solved() {
        Course course =
                new OsmCourseFiles().read(Path.of("demo", "course.geojson")).course();
        Hole first = course.holes().get(0);
        Player player = PlayerPrior.of(82, Player.Hand.RIGHT).player("benchmark");
        LevelGreenOdds odds = new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3.048));
        HoleProblem problem = new HoleProblem(
                new CourseMap(course, first),
                course.teeSets().get(0).getPlace(first.number()).place(),
                new Ability(new StrikeModel(player), odds, 1),
                SolverSettings.STANDARD,
                ShotRules.FREE);
        MeanSolution mean = MeanSolver.solve(problem, Watch.NONE);
        return new TargetHole(mean, mean.evaluate(Watch.NONE), ScoreTable.strokes());
    }

    @Setup
    public void spread() {
        double[] chance = new double[allowances];
        for (int i = 0; i < allowances; i++) {
            chance[i] = (i + 1.0) / (allowances + 1);
        }
        after = new HandOver(0, chance);
    }

    @Benchmark
    public double together() {
        LaneTable table = new LaneTable(after.lowest(), after.secured(), ScoreTable.strokes());
        double sum = 0;
        for (double chance : LaneRange.solve(table, chooser(), 1e-6, Watch.NONE)) {
            sum += chance;
        }
        return sum;
    }

    @Benchmark
    public double eachForItself() {
        double sum = 0;
        LaneTable range = new LaneTable(after.lowest(), after.secured(), ScoreTable.strokes());
        for (int inHand = range.lowestInHand(); inHand < range.securedInHand(8); inHand++) {
            LaneTable table = new LaneTable(after.lowest(), after.secured(), ScoreTable.strokes());
            LaneChooser chooser = chooser();
            Lane start = table.start(inHand);
            for (Lane lane : table.from(0)) {
                if (lane != start) {
                    chooser.whole(lane);
                }
            }
            sum += chooser.tee(start);
        }
        return sum;
    }

    private LaneChooser chooser() {
        HoleProblem problem = hole.mean().problem;
        GreenLanes green = GreenLanes.chosen(hole.evaluation().green, problem.green, after, new PaceChoice());
        LaneField field =
                new LaneField(hole.mean().nodes, problem.relief, hole.evaluation().field.replay, after, green);
        return new LaneChooser(options, rows, field, 1e-3);
    }
}
