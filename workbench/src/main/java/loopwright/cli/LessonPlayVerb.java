package loopwright.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.IntStream;
import loopwright.action.BenchStore;
import loopwright.action.CarryStore;
import loopwright.action.KeepRounds;
import loopwright.action.PlanRound;
import loopwright.action.PlayingLesson;
import loopwright.action.RoundFile;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.numerics.Watch;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.RoundRecord;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright lesson play}: three to nine holes as a lesson. */
@Command(
        name = "play",
        mixinStandardHelpOptions = true,
        description = {
            "A playing lesson of 3 to 9 holes: club, aim and finish are asked before each stroke, then the options are shown.",
            "This is advice: allowed in a lesson, never in a round (Rule 4.3). What is typed is kept as a round that is no"
                    + " score, and is where decisions can be told from strikes."
        })
public final class LessonPlayVerb implements Runnable {
    private final StoreWork stores;
    private final Function<BenchStore, Workroom> rooms;
    private final PlanRound planning;
    private final RoundFile files;
    private final Reader keyboard;
    private final Clock clock;

    @Mixin
    private PlayerInStore of = new PlayerInStore();

    @Option(names = "--course", paramLabel = "NAME", required = true, description = "Course of the store.")
    private String course = "";

    @Option(names = "--tees", paramLabel = "NAME", defaultValue = "middle", description = "Set of tees.")
    private String tees = "middle";

    @Option(names = "--holes", paramLabel = "FROM-TO", defaultValue = "1-3", description = "Three to nine, as 4-9.")
    private String holes = "1-3";

    @Option(names = "--date", paramLabel = "DAY", description = "As 2026-05-31; today if left out.")
    private @Nullable LocalDate date;

    @Option(names = "--out", paramLabel = "FILE", description = "Also write the strokes as CSV (docs/rounds.md).")
    private @Nullable Path csv;

    @Spec
    private @Nullable CommandSpec spec;

    public LessonPlayVerb(
            StoreWork stores,
            Function<BenchStore, Workroom> rooms,
            PlanRound planning,
            RoundFile files,
            Reader keyboard,
            Clock clock) {
        this.stores = stores;
        this.rooms = rooms;
        this.planning = planning;
        this.files = files;
        this.keyboard = keyboard;
        this.clock = clock;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        List<Integer> numbers = numbers();
        Asked asked = new Asked(new BufferedReader(keyboard), out);
        RoundRecord played = stores.of(of.where, of.player, (store, id) -> {
            Shelf.Entry entry = CarryStore.course(store, course);
            LocalDate day = date == null ? LocalDate.now(clock) : date;
            PlayingLesson lesson = new PlayingLesson(rooms.apply(store), planning, id, entry, tees, day);
            lesson.checkHoles(numbers);
            RoundRecord record = lesson.record(holes(lesson, numbers, asked));
            new KeepRounds(store, files).add(id, record);
            return record;
        });
        if (csv != null) {
            files.write(List.of(played), csv);
        }
        out.println("Kept " + played.holes().size() + (played.holes().size() == 1 ? " hole" : " holes")
                + " as a lesson; see what they say with: loopwright report --causes --player \"" + of.player + "\"");
        out.flush();
    }

    private static List<HoleRecord> holes(PlayingLesson lesson, List<Integer> numbers, Asked asked) {
        List<HoleRecord> done = new ArrayList<>();
        for (int number : numbers) {
            LessonDialog.Played played = new LessonDialog(asked).play(lesson.solve(number, Watch.NONE));
            played.hole().ifPresent(done::add);
            if (played.ended()) {
                break;
            }
        }
        if (done.isEmpty()) {
            throw new UserFault("No stroke was typed; nothing was kept.");
        }
        return done;
    }

    private List<Integer> numbers() {
        if (!holes.matches("\\d{1,2}-\\d{1,2}")) {
            throw new UserFault("\"" + holes + "\" are no holes in a row, such as 4-9.");
        }
        String[] ends = holes.split("-", -1);
        return IntStream.rangeClosed(Integer.parseInt(ends[0]), Integer.parseInt(ends[1]))
                .boxed()
                .toList();
    }
}
