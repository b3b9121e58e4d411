package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.CompareTees;
import loopwright.action.Counting;
import loopwright.action.PlanDay;
import loopwright.action.PlanRequest;
import loopwright.action.ResultFile;
import loopwright.action.TeesAnswer;
import loopwright.action.TeesRequest;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright tees}: which tees to play. */
@Command(
        name = "tees",
        mixinStandardHelpOptions = true,
        description = "Sets every set of tees side by side for this player: score, chance, clubs left; recommends one.")
public final class TeesVerb implements Runnable {
    private final CompareTees action;
    private final ResultFile results;

    @Mixin
    private RoundOptions round = new RoundOptions();

    @Mixin
    private DayOptions day = new DayOptions();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private TodayOptions today = new TodayOptions();

    @Option(
            names = "--mixed",
            paramLabel = "\"NAME=SET, SET HOLES\"",
            description = "A set made hole by hole, e.g. \"blend=white, blue 1 4 7\"; repeat it for more.")
    private List<String> mixed = new ArrayList<>();

    @Option(
            names = "--markers",
            defaultValue = "0",
            paramLabel = "LENGTH",
            description = "Also look at today's markers so far back and forward, in --units (up to 40 yd).")
    private double markers;

    @Option(names = "--winter", description = "Also look at every set on a winter's day: 8 C and soft ground.")
    private boolean winter;

    @Option(
            names = "--partner",
            paramLabel = "FILE",
            description = "Another player: also say which two sets give both like clubs into the par 4s.")
    private @Nullable Path partner;

    @Option(
            names = "--driving-distance-only",
            description = "Go by the published table alone; nothing is solved, so it answers at once.")
    private boolean byDistance;

    @Option(names = "--json", paramLabel = "FILE", description = "Write it as JSON (docs/schema/tees.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public TeesVerb(CompareTees action, ResultFile results) {
        this.action = action;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        TeesAnswer answer =
                action.compare(request(), new ProgressLine(spec.commandLine().getErr(), "hole and tee"));
        new TeesPage(out, units.lengths()).print(answer, day());
        if (json != null) {
            results.write(json, TeesJson.of(answer));
            out.println("Written to " + json + ".");
        }
    }

    private PlanDay day() {
        List<PlanDay> days = day.days();
        if (days.size() > 1) {
            throw new UserFault("Tees are compared for one day; give --wind once.");
        }
        return days.get(0);
    }

    private TeesRequest request() {
        double moved = units.metres("--markers", markers, "is too far", 0, 40);
        PlanRequest asked = new PlanRequest(
                round.course(),
                round.player(),
                "back",
                round.target,
                Counting.STROKES,
                false,
                false,
                round.holes,
                0,
                List.of(),
                List.of(),
                List.of(),
                List.of(day()),
                today.request(units.unit()),
                round.seed,
                Optional.empty(),
                Optional.empty());
        return new TeesRequest(asked, mixed, moved, winter, Optional.ofNullable(partner), byDistance);
    }
}
