package loopwright.strategy;

import java.nio.file.Path;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.geo.Place;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The solve of the demo on one core: all eighteen holes; how a par 3, 4 and 5 grow with nodes, samples and clubs; the par
 * 3 against every option at every node; and, in the same run, what the machine's memory gives: reads of a grid as large
 * as a hole's in no order. {@code microStrokes} is a millionth of the strokes expected, so that what a cheaper search
 * loses can be told. Run from the project's folder.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 2)
@Fork(1)
public class SolveBenchmark {
    private static final int READS = 10_000_000;
    private static final int PAR_3 = 3;

    /** Strokes expected on the holes solved. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Worth {
        public long microStrokes;

        @Setup(Level.Iteration)
        public void reset() {
            microStrokes = 0;
        }

        void add(double strokes) {
            microStrokes += Math.round(strokes * 1e6);
        }
    }

    /** The demo and a player from his level alone. */
    @State(Scope.Thread)
    public static class Round {
        final Course course =
                new OsmCourseFiles().read(Path.of("demo", "course.geojson")).course();
        final Player player = PlayerPrior.of(82, Player.Hand.RIGHT).player("benchmark");
        final StrikeModel strikes = new StrikeModel(player);
        final Ability ability =
                new Ability(strikes, new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3.048)), 1);

        HoleProblem hole(int number, SolverSettings settings, ShotRules rules) {
            Hole hole = course.holes().get(number - 1);
            Place tee = course.teeSets().get(0).getPlace(number).place();
            return new HoleProblem(new CourseMap(course, hole), tee, ability, settings, rules);
        }

        double solve(int number, SolverSettings settings, ShotRules rules) {
            return MeanSolver.solve(hole(number, settings, rules), Watch.NONE)
                    .evaluate(Watch.NONE)
                    .expected();
        }

        /** Every second swing is left at home. */
        ShotRules halfTheSwings() {
            Set<Integer> left = IntStream.range(0, strikes.shots())
                    .filter(s -> !strikes.isTouch(s) && s % 2 == 1)
                    .boxed()
                    .collect(Collectors.toSet());
            return new ShotRules(left, Set.of());
        }
    }

    /** How finely holes 3, 4 and 1 (par 3, 5 and 4) are solved, and with what. */
    @State(Scope.Thread)
    public static class Size {
        @Param({"standard", "twice the spacing", "half the samples", "twice the samples", "half the swings"})
        public String size = "standard";

        SolverSettings settings() {
            SolverSettings s = SolverSettings.STANDARD;
            return switch (size) {
                case "twice the spacing" -> s.withFineCells(2 * s.fineCells());
                case "half the samples" -> s.withFinePoints(s.finePoints() / 2);
                case "twice the samples" -> s.withFinePoints(2 * s.finePoints());
                default -> s;
            };
        }
    }

    @Benchmark
    public double eighteenHoles(Round round, Worth worth) {
        double sum = 0;
        for (int number = 1; number <= round.course.holes().size(); number++) {
            sum += round.solve(number, SolverSettings.STANDARD, ShotRules.FREE);
        }
        worth.add(sum);
        return sum;
    }

    @Benchmark
    public double threeHoles(Round round, Size size, Worth worth) {
        ShotRules rules = size.size.equals("half the swings") ? round.halfTheSwings() : ShotRules.FREE;
        double sum = 0;
        for (int number : new int[] {1, PAR_3, 4}) {
            sum += round.solve(number, size.settings(), rules);
        }
        worth.add(sum);
        return sum;
    }

    @Benchmark
    public double parThree(Round round, Worth worth) {
        double expected = round.solve(PAR_3, SolverSettings.STANDARD, ShotRules.FREE);
        worth.add(expected);
        return expected;
    }

    @Benchmark
    public double parThreeTryingEverythingEverywhere(Round round, Worth worth) {
        HoleProblem hole = round.hole(PAR_3, SolverSettings.STANDARD, ShotRules.FREE);
        double expected = MeanSolver.solveExhaustively(hole, Watch.NONE)
                .evaluate(Watch.NONE)
                .expected();
        worth.add(expected);
        return expected;
    }

    /** Ten million reads of a grid of a hole's size, each place drawn anew. */
    @Benchmark
    public double gridReads(Round round) {
        double[] grid = new double
                [round.hole(1, SolverSettings.STANDARD, ShotRules.FREE).raster.restCells()];
        SplittableRandom random = new SplittableRandom(1);
        double sum = 0;
        for (int i = 0; i < READS; i++) {
            sum += grid[random.nextInt(grid.length)];
        }
        return sum;
    }
}
