package loopwright.action;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.store.Database;
import loopwright.adapter.table.BenchmarkJson;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.adapter.table.RoundCsv;
import loopwright.numerics.Watch;
import loopwright.scoring.HoleCounts;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Lie;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.ShotRecord;
import loopwright.scoring.TourBaseline;
import loopwright.units.Distance;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Opening a player with the full report: {@code players} in one store, each with {@code rounds} rounds of about 80 strokes, the
 * benchmark already solved. How it grows with a player's own rounds, and whether other players cost anything.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ReportBenchmark {
    private static final int TARGET = 84;

    @Param({"1", "100"})
    public int players;

    @Param({"10", "30", "100"})
    public int rounds;

    private Path folder;
    private BenchStore store;
    private ReportPlayer reports;
    private ReportPlayer.Request request;

    @Setup(Level.Trial)
    public void fill() throws IOException {
        folder = Files.createTempDirectory("report-benchmark");
        store = Database.open(folder, Optional.empty());
        Workroom room = new Workroom(store, new OsmCourseFiles(), new JsonPlayerFiles());
        Path demo = Path.of(System.getProperty("loopwright.home", ".")).resolve("demo");
        Shelf.Document course = room.addCourse(
                new OsmCourseFiles().read(demo.resolve("course.geojson")).course(), "");
        KeepRounds keep = new KeepRounds(store, new RoundCsv());
        SplittableRandom random = new SplittableRandom(1);
        String first = "";
        for (int p = 0; p < players; p++) {
            String id = room.addPlayer(new JsonPlayerFiles().read(demo.resolve("player.json")), "")
                    .id();
            first = first.isEmpty() ? id : first;
            List<KeptRound> entries = new ArrayList<>();
            List<String> texts = new ArrayList<>();
            for (int r = 0; r < rounds; r++) {
                RoundRecord round =
                        round(course.name(), LocalDate.of(2026, 1, 1).plusDays(r), random);
                entries.add(new KeptRound(
                        "",
                        LocalDate.parse(round.date().orElseThrow()),
                        course.name(),
                        "middle",
                        18,
                        round.score(),
                        round.tier().name(),
                        false,
                        Instant.EPOCH));
                texts.add(new RoundCsv().text(List.of(round)));
            }
            store.records().addRounds(id, entries, texts);
        }
        reports = new ReportPlayer(
                room,
                keep,
                new Benchmarks(room, new OsmCourseFiles(), new JsonPlayerFiles(), new BenchmarkJson()),
                new SplitRound(room, new OsmCourseFiles(), new JsonPlayerFiles()),
                new TourBaseline());
        request = new ReportPlayer.Request(first, Optional.empty(), Optional.of(TARGET), true, false, false);
        reports.report(request, Watch.NONE); // solves the benchmark
    }

    /** Four or five strokes a hole: tee, rough or fairway, around the green, two or three putts. */
    private static RoundRecord round(String course, LocalDate day, SplittableRandom random) {
        List<HoleRecord> holes = new ArrayList<>();
        for (int number = 1; number <= 18; number++) {
            List<ShotRecord> shots = new ArrayList<>();
            shots.add(shot("driver", Lie.TEE, 340 + 60 * random.nextDouble()));
            shots.add(shot("7-iron", random.nextBoolean() ? Lie.FAIRWAY : Lie.ROUGH, 150 + 20 * random.nextGaussian()));
            if (random.nextBoolean()) {
                shots.add(shot("pitch", Lie.ROUGH, 10 + 20 * random.nextDouble()));
            }
            shots.add(shot("putter", Lie.GREEN, 3 + 7 * random.nextDouble()));
            shots.add(shot("putter", Lie.GREEN, 1));
            holes.add(new HoleRecord(
                    number,
                    OptionalInt.of(4),
                    Optional.empty(),
                    OptionalInt.empty(),
                    HoleEnd.HOLED,
                    Set.of(),
                    HoleCounts.NONE,
                    shots,
                    Optional.empty()));
        }
        return new RoundRecord(
                day.toString(),
                Optional.of(day.toString()),
                Optional.of(course),
                Optional.of("middle"),
                Optional.empty(),
                false,
                false,
                holes);
    }

    private static ShotRecord shot(String club, Lie lie, double yards) {
        return new ShotRecord(Optional.of(club), lie, Distance.ofYards(yards), Optional.empty(), 0);
    }

    @Benchmark
    public PlayerReport open() {
        return reports.report(request, Watch.NONE);
    }

    @TearDown(Level.Trial)
    public void erase() throws IOException {
        store.close();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
