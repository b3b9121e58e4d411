package loopwright.player;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import loopwright.action.ShotImport;
import loopwright.adapter.table.ShotCsv;
import loopwright.numerics.Watch;
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
 * A shot list read and fitted: the demo's, and any other by {@code -p file=PATH}. The first measured run is cold, as a
 * person who types {@code fit} has it, the later ones are warm. {@code cpuMillis} is the thread's own time, which a busy
 * machine disturbs less than the clock.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 5)
@Fork(1)
public class FitBenchmark {
    /** Processor time of the fitting thread. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Processor {
        public long cpuMillis;
    }

    @Param("demo/shots.csv")
    public String file = "";

    @Setup
    public void find() {
        if (!Files.exists(Path.of(file))) {
            throw new IllegalStateException(file + " is not here; run it from the project's folder");
        }
    }

    @Benchmark
    public FittedPlayer fit(Processor processor) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        ShotImport shots = new ShotCsv().read(List.of(Path.of(file)), Map.of(), Setting.RANGE);
        FittedPlayer fitted = PatternFit.fit(
                "bench", PlayerPrior.of(90, Player.Hand.RIGHT), shots.log(), FitOptions.DEFAULT, 1, Watch.NONE);
        processor.cpuMillis += (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1_000_000;
        return fitted;
    }
}
