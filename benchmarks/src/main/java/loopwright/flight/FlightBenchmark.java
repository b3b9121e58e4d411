package loopwright.flight;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Flights per second on two threads: a cloud at once, the same one by one, and a general adaptive integrator whose
 * tolerance gives the same error ({@link #main} prints the errors). The cloud is a bag's: drives to wedges about their
 * usual launches.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
@Threads(2)
public class FlightBenchmark {
    static final int BALLS = 1024;

    /** Chosen so that the root mean square error is that of the fixed step, see {@link #main}. */
    static final double EQUAL_ERROR_TOLERANCE = 1e-3;

    @Param({"0", "6"})
    public double wind = 6;

    private final Launch[] launches = cloud();
    private FlightWorkspace balls = new FlightWorkspace(BALLS);
    private BallFlight flight = new BallFlight(FlightSetting.standard());
    private AdaptiveFlight adaptive = new AdaptiveFlight(FlightSetting.standard(), EQUAL_ERROR_TOLERANCE);

    @Setup
    public void build() {
        FlightSetting setting = setting(wind);
        flight = new BallFlight(setting);
        adaptive = new AdaptiveFlight(setting, EQUAL_ERROR_TOLERANCE);
        balls = new FlightWorkspace(BALLS);
        for (int i = 0; i < BALLS; i++) {
            balls.put(i, launches[i]);
        }
    }

    private static FlightSetting setting(double wind) {
        return FlightSetting.standard().withBreeze(new Breeze(-0.8 * wind, 0.6 * wind));
    }

    static Launch[] cloud() {
        SplittableRandom random = new SplittableRandom(1);
        Launch[] out = new Launch[BALLS];
        for (int i = 0; i < BALLS; i++) {
            double loft = 10 + 46 * random.nextDouble();
            double speed = (75 - 0.75 * (loft - 10)) * (0.9 + 0.2 * random.nextDouble());
            double spin = speed * loft * (3 + 0.02 * loft) * Math.PI / 30;
            out[i] = new Launch(
                    speed,
                    Math.toRadians(5 + 0.45 * loft + 4 * random.nextDouble()),
                    0.2 * random.nextDouble() - 0.1,
                    spin,
                    0.5 * random.nextDouble() - 0.25);
        }
        return out;
    }

    @Benchmark
    @OperationsPerInvocation(BALLS)
    public FlightWorkspace cloudAtOnce() {
        flight.fly(balls, BALLS, 0);
        return balls;
    }

    @Benchmark
    @OperationsPerInvocation(BALLS)
    public double oneByOne() {
        double sum = 0;
        for (Launch launch : launches) {
            sum += flight.fly(launch, 0).forwardMetres();
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(BALLS)
    public double generalAdaptive() {
        double sum = 0;
        for (Launch launch : launches) {
            sum += adaptive.land(launch)[0];
        }
        return sum;
    }

    /**
     * Prints root mean square and largest error against a step of 2 ms: the fixed step's, and the baseline's by
     * tolerance.
     */
    public static void main(String[] args) {
        Launch[] launches = cloud();
        for (double wind : new double[] {0, 6}) {
            BallFlight exact = new BallFlight(setting(wind), 0.002);
            BallFlight fixed = new BallFlight(setting(wind));
            Flight[] truth = Arrays.stream(launches).map(l -> exact.fly(l, 0)).toArray(Flight[]::new);
            double[] errors = new double[BALLS];
            for (int i = 0; i < BALLS; i++) {
                Flight f = fixed.fly(launches[i], 0);
                errors[i] = miss(truth[i], f.forwardMetres(), f.rightMetres());
            }
            report(wind, "fixed step", errors);
            for (double tolerance : new double[] {1e-3, 3e-3, 1e-2, 3e-2, 1e-1, 3e-1, 1}) {
                AdaptiveFlight adaptive = new AdaptiveFlight(setting(wind), tolerance);
                for (int i = 0; i < BALLS; i++) {
                    double[] y = adaptive.land(launches[i]);
                    errors[i] = miss(truth[i], y[0], y[1]);
                }
                report(wind, "adaptive " + tolerance, errors);
            }
        }
    }

    private static double miss(Flight truth, double forward, double right) {
        return Math.hypot(truth.forwardMetres() - forward, truth.rightMetres() - right);
    }

    private static void report(double wind, String what, double[] errors) {
        double rms = Math.sqrt(Arrays.stream(errors).map(e -> e * e).average().orElse(0));
        System.out.printf(
                "wind %.0f m/s, %s: rms %.4f m, largest %.4f m%n",
                wind, what, rms, Arrays.stream(errors).max().orElse(0));
    }
}
