package loopwright.action;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.numerics.Watch;
import loopwright.player.Club;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayerProfile;
import loopwright.player.Swing;
import loopwright.scoring.BenchmarkMaker;
import loopwright.scoring.BenchmarkTable;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolver;
import loopwright.units.Distance;

/**
 * Benchmark players: of the target score, as long as a player of the store, on a course of the store. Each is solved once
 * and kept as a disposable file beside the store.
 */
public final class Benchmarks {
    /** Changes whenever the same inputs would give another table. */
    private static final int EDITION = 1;

    private static final long SEED = 1;

    private final Workroom room;
    private final CourseFiles courses;
    private final PlayerFiles players;
    private final BenchmarkFile files;

    public Benchmarks(Workroom room, CourseFiles courses, PlayerFiles players, BenchmarkFile files) {
        this.room = room;
        this.courses = courses;
        this.players = players;
        this.files = files;
    }

    /** Which benchmark: a version of a course, its tees, a player's length, and the score of 18 holes. */
    public record Wanted(Shelf.Entry course, String tees, PlayerProfile player, int target) {
        String name() {
            return "a player of " + target + " with this player's length, on " + course.name() + " from the " + tees
                    + " tees";
        }

        private String file() {
            String length = player.player().swings().stream()
                    .filter(Swing::isFull)
                    .map(s -> String.format(
                            Locale.ROOT, "%s %.1f", s.club().name(), s.pattern().carryMetres()))
                    .toList()
                    .toString();
            return String.format(
                    Locale.ROOT,
                    "benchmark-%s-v%d-%08x-%d.json",
                    course.id(),
                    course.version(),
                    Objects.hash(EDITION, tees, length, player.player().hand().name()),
                    target);
        }
    }

    /** The benchmark if it was solved before. */
    public Optional<BenchmarkTable> find(Wanted wanted) {
        Path file = file(wanted);
        try {
            return Files.exists(file) ? files.read(Files.readString(file, StandardCharsets.UTF_8)) : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The benchmark, solved now if it was not before: about as long as a plan takes. */
    public BenchmarkTable get(Wanted wanted, Watch watch) {
        return find(wanted).orElseGet(() -> {
            BenchmarkTable solved = solve(wanted, watch);
            WholeFile.write(file(wanted), files.text(solved));
            return solved;
        });
    }

    private Path file(Wanted wanted) {
        try {
            return Files.createDirectories(room.store().folder().resolve("work"))
                    .resolve(wanted.file());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private BenchmarkTable solve(Wanted wanted, Watch watch) {
        PlayerProfile benchmark = new PlayerProfile(
                player(wanted.player().player(), wanted.target()),
                wanted.player().day());
        return room.withFile(new byte[0], ".json", file -> {
            players.write(benchmark, file);
            PlanRequest request = PlanRequest.usual(
                    room.courseFile(wanted.course().id(), wanted.course().version()),
                    file,
                    wanted.tees(),
                    wanted.target(),
                    "",
                    List.of(),
                    List.of(),
                    List.of(),
                    SEED);
            RoundSetup setup = RoundSetup.read(request, PlanDay.USUAL, courses, players);
            return solve(setup, wanted.name(), watch);
        });
    }

    private static BenchmarkTable solve(RoundSetup setup, String name, Watch watch) {
        BenchmarkMaker maker = new BenchmarkMaker();
        List<RoundGreens.Green> greens = setup.everyGreen();
        Cores.all(
                IntStream.range(0, greens.size()).boxed().toList(),
                i -> {
                    HoleProblem problem = setup.problem(i, greens.get(i));
                    var evaluation =
                            MeanSolver.solve(problem, watch.withoutProgress()).evaluate(watch.withoutProgress());
                    synchronized (maker) {
                        maker.add(problem, evaluation);
                    }
                    return i;
                },
                watch);
        return maker.table(name, setup.greens().level());
    }

    /** A player of a level with somebody's length, hand and bag. */
    static Player player(Player like, int level) {
        PlayerPrior prior = PlayerPrior.of(level, like.hand());
        for (Swing swing : like.swings()) {
            Distance carry = Distance.ofMetres(swing.pattern().carryMetres());
            if (swing.isFull() && swing.club().family() == Club.Family.DRIVER) {
                prior = prior.withDriverCarry(carry);
            }
            if (swing.isFull() && swing.club().name().equals("7-iron")) {
                prior = prior.withSevenIronCarry(carry);
            }
        }
        return prior.withBag(like.clubs()).player("benchmark of " + level);
    }
}
