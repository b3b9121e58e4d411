package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.BookPrinter;
import loopwright.action.BookRequest;
import loopwright.action.Counting;
import loopwright.action.HoleAlbum;
import loopwright.action.MakeBook;
import loopwright.action.PlanDay;
import loopwright.action.PlanRequest;
import loopwright.action.ResultFile;
import loopwright.action.WholeFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright book}: what the player carries, on paper. */
@Command(
        name = "book",
        mixinStandardHelpOptions = true,
        description = "Plans a round and prints it as a pocket book to cut and fold.")
public final class BookVerb implements Runnable {
    private final MakeBook action;
    private final BookPrinter printer;
    private final HoleAlbum charts;
    private final ResultFile results;

    @Mixin
    private RoundOptions round = new RoundOptions();

    @Mixin
    private TeesOption tees = new TeesOption();

    @Mixin
    private HoleOptions holes = new HoleOptions();

    @Mixin
    private DayOptions day = new DayOptions();

    @Mixin
    private TodayOptions today = new TodayOptions();

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The book as PDF.")
    private @Nullable Path out;

    @Option(
            names = "--paper",
            defaultValue = "a4",
            paramLabel = "NAME",
            description = "Sheets to print on: a4 or letter. Default: ${DEFAULT-VALUE}.")
    private String paper = "a4";

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Option(
            names = "--state-of-play",
            description =
                    "Add the slip with the chances on the last three tees; the round is then solved for the target.")
    private boolean stateOfPlay;

    @Option(
            names = "--coach",
            paramLabel = "FILE",
            description = "The coach's copy as PDF: every hole large, with contours, alternatives and what they cost.")
    private @Nullable Path coach;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write text and plan as JSON (docs/schema/book.schema.json).")
    private @Nullable Path json;

    @Option(names = "--pages", paramLabel = "DIR", description = "Draw every page into this folder, as SVG and PNG.")
    private @Nullable Path pages;

    @Spec
    private @Nullable CommandSpec spec;

    public BookVerb(MakeBook action, BookPrinter printer, HoleAlbum charts, ResultFile results) {
        this.action = action;
        this.printer = printer;
        this.charts = charts;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter page = Objects.requireNonNull(spec).commandLine().getOut();
        BookPrinter.Paper sheet = BookPrinter.Paper.named(paper);
        WholeFile.checkPlace(Objects.requireNonNull(out));
        if (coach != null) {
            WholeFile.checkPlace(coach);
        }
        MakeBook.Made made =
                action.make(request(), new ProgressLine(spec.commandLine().getErr(), "hole"));
        printer.print(made.book(), sheet, out);
        page.println("Book of " + made.book().pages().size() + " pages written to " + out
                + ". Print it at 100 % on both sides, turned over the short edge.");
        if (coach != null) {
            charts.drawHoles("Coach's copy of " + made.plan().course().name(), made.charts(), coach);
            page.println("Coach's copy written to " + coach + ".");
        }
        if (pages != null) {
            printer.draw(made.book(), pages);
            page.println("Pages written to " + pages + ".");
        }
        if (json != null) {
            results.write(json, BookJson.of(made));
            page.println("Written to " + json + ".");
        }
    }

    private BookRequest request() {
        List<PlanDay> days = day.days();
        PlanRequest plan = new PlanRequest(
                round.course(),
                round.player(),
                tees.name,
                round.target,
                Counting.STROKES,
                stateOfPlay,
                false,
                round.holes,
                holes.startHole,
                holes.holeLocations,
                holes.forbid,
                holes.require,
                days,
                today.request(units.unit()),
                round.seed,
                Optional.empty(),
                Optional.empty());
        return new BookRequest(plan, DayWords.of(days.get(0)), units.unit(), stateOfPlay);
    }
}
