package loopwright.strategy;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.flight.Air;
import loopwright.flight.DayConditions;
import loopwright.flight.Wind;
import loopwright.geo.Place;
import loopwright.ground.Firmness;
import loopwright.ground.HeightField;
import loopwright.numerics.Watch;
import loopwright.player.DayFlight;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import org.openjdk.jmh.annotations.AuxCounters;
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
 * What the day costs a solve: four or all holes of the demo solved and evaluated without a day, in a gusty wind, and in the
 * wind over hills, the bag flown anew each time. The share of the physics is the excess over "none"; the bag is
 * flown once however many holes there are. {@code cpuMillis} is the thread's own time, which a
 * busy machine disturbs less than the clock.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class DayBenchmark {
    private static final DayConditions WINDY = new DayConditions(
            Air.STANDARD, Wind.gusting(7, 1, 10), Firmness.ORDINARY, DayConditions.ORDINARY_GREEN_RESISTANCE);

    /** Processor time of the solving thread. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Processor {
        public long cpuMillis;
    }

    @Param({"4", "18"})
    public int holes = 4;

    @Param({"none", "wind", "wind and hills"})
    public String day = "none";

    private final Player player = PlayerPrior.of(85, Player.Hand.RIGHT).player("bench");
    private final LevelGreenOdds odds = new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3.048));
    private Course course = read();

    private static Course read() {
        return new OsmCourseFiles()
                .read(Path.of(System.getProperty("demo", "demo"), "course.geojson"))
                .course();
    }

    @Setup
    public void build() {
        course = day.equals("wind and hills") ? read().withHeights(hills()) : read();
    }

    /** Waves of five metres, a kilometre and a half each way. */
    private static HeightField hills() {
        float[] heights = new float[300 * 300];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = (float) (5 * Math.sin(i % 300 / 12.0) * Math.cos(i / 300 / 9.0));
        }
        return new HeightField(300, 300, heights, HeightField.Grid.square(new Place(-1500, -1500), 10));
    }

    @Benchmark
    public double solve(Processor processor) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long start = threads.getCurrentThreadCpuTime();
        StrikeModel strikes = day.equals("none")
                ? new StrikeModel(player)
                : new StrikeModel(player, new DayFlight(player.swings(), WINDY, Watch.NONE));
        Ability ability = new Ability(strikes, odds, 1);
        double sum = 0;
        for (Hole hole : course.holes().subList(0, holes)) {
            Place tee = course.teeSets().get(0).getPlace(hole.number()).place();
            HoleProblem problem =
                    new HoleProblem(new CourseMap(course, hole), tee, ability, SolverSettings.STANDARD, ShotRules.FREE);
            sum += MeanSolver.solve(problem, Watch.NONE).evaluate(Watch.NONE).expected();
        }
        processor.cpuMillis += (threads.getCurrentThreadCpuTime() - start) / 1_000_000;
        return sum;
    }
}
