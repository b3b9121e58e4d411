package loopwright.putting;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
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
 * What a putt costs: the full error model of one putt on a slope (limit 2 ms), a green's whole table (limit 1 s), the
 * level table, one look-up; and as baseline the same putt by rolling 10,000 balls with fresh draws.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PuttingBenchmark {
    private static final int BALLS = 10_000;

    @Param({"plane", "grid"})
    public String green = "plane";

    private final PuttingSkill skill = PuttingSkillPrior.ofLevel(90);
    private final GreenSpeed speed = GreenSpeed.ofRollMetres(3.048);
    private GreenSurface surface = PlaneGreen.LEVEL;
    private SlopedGreenOdds odds = new SlopedGreenOdds(surface, speed, skill, 0, 0);
    private LevelGreenOdds level = new LevelGreenOdds(skill, speed);
    private double metres;

    @Setup
    public void build() {
        surface = green.equals("plane") ? new PlaneGreen(0.02, 0.01) : bumpy();
        odds = new SlopedGreenOdds(surface, speed, skill, 0, 0);
        level = new LevelGreenOdds(skill, speed);
    }

    private static GreenSurface bumpy() {
        double[][] heights = new double[41][41];
        for (int r = 0; r < 41; r++) {
            for (int c = 0; c < 41; c++) {
                heights[r][c] = 0.02 * c + 0.1 * Math.sin(c / 7.0) * Math.cos(r / 9.0);
            }
        }
        return SlopeGrid.ofHeights(-20, -20, 1, heights);
    }

    @Benchmark
    public double onePutt() {
        return odds.advice(0, -3.66).expectedPutts();
    }

    @Benchmark
    public double onePuttByRolling() {
        RandomGenerator random = new SplittableRandom(1);
        SlopedPutt putt = new SlopedPutt(surface, speed, skill, 0, 0);
        int holed = 0;
        for (int i = 0; i < BALLS; i++) {
            holed += putt.play(0, -3.66, 0.1, 2, random.nextGaussian(), random.nextGaussian())
                            .holed()
                    ? 1
                    : 0;
        }
        return (double) holed / BALLS;
    }

    @Benchmark
    public SlopedGreenOdds wholeGreen() {
        return new SlopedGreenOdds(surface, speed, skill, 0, 0);
    }

    @Benchmark
    public LevelGreenOdds levelTable() {
        return new LevelGreenOdds(skill, speed);
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public double levelLookUp() {
        metres = metres > 30 ? 0.1 : metres + 0.37;
        return level.expectedPutts(metres);
    }
}
