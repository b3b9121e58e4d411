package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.action.ApproachAdviser;
import loopwright.action.ApproachAnswer;
import loopwright.action.ApproachRequest;
import loopwright.action.Counting;
import loopwright.action.PlanDay;
import loopwright.action.PlanRequest;
import loopwright.action.ResultFile;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright approach}: how to approach the greens. */
@Command(
        name = "approach",
        mixinStandardHelpOptions = true,
        description = "Target, favoured miss, short side and the cost of attacking, for a pin sheet or the nine zones.")
public final class ApproachVerb implements Runnable {
    /** Any total will do: nothing is counted. */
    private static final int NO_TARGET = 72;

    private final ApproachAdviser action;
    private final ResultFile results;

    @Option(names = "--course", required = true, paramLabel = "FILE", description = "The course (any map format).")
    private @Nullable Path course;

    @Option(names = "--player", required = true, paramLabel = "FILE", description = "The player file.")
    private @Nullable Path player;

    @Mixin
    private TeesOption tees = new TeesOption();

    @Option(names = "--holes", defaultValue = "", paramLabel = "LIST", description = "Holes, e.g. 1-9. Default: all.")
    private String holes = "";

    @Option(names = "--seed", defaultValue = "1", paramLabel = "N", description = "Seed of every draw.")
    private long seed;

    @Option(
            names = "--pin-sheet",
            paramLabel = "FILE",
            description =
                    "Hole locations (CSV: hole, front, left or right, in paces); holes without one get nine zones.")
    private @Nullable Path pinSheet;

    @Option(
            names = "--hole-location",
            paramLabel = "H:FRONT,LEFT",
            description = "Paces from the front and from the left edge of green H, e.g. 7:12,5 (or 7:12,right 4).")
    private List<String> holeLocations = new ArrayList<>();

    @Option(
            names = "--from",
            paramLabel = "LENGTH",
            description = "Approach from so far along the line of play, in --units. Default: where the plan leads.")
    private @Nullable Double from;

    @Mixin
    private DayOptions day = new DayOptions();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private TodayOptions today = new TodayOptions();

    @Option(names = "--json", paramLabel = "FILE", description = "Write it as JSON (docs/schema/approach.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public ApproachVerb(ApproachAdviser action, ResultFile results) {
        this.action = action;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        List<PlanDay> days = day.days();
        if (days.size() > 1) {
            throw new UserFault("Approaches are worked out for one day; give --wind once.");
        }
        ApproachAnswer answer = action.approach(
                new ApproachRequest(request(days), Optional.ofNullable(pinSheet), from()),
                new ProgressLine(spec.commandLine().getErr(), "green"));
        new ApproachPage(out, units.lengths()).print(answer, days.get(0));
        if (json != null) {
            results.write(json, ApproachJson.of(answer));
            out.println("Written to " + json + ".");
        }
    }

    private OptionalDouble from() {
        return from == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(units.metres("--from", from, "is no approach", 20, 300));
    }

    private PlanRequest request(List<PlanDay> days) {
        return new PlanRequest(
                Objects.requireNonNull(course),
                Objects.requireNonNull(player),
                tees.name,
                NO_TARGET,
                Counting.STROKES,
                false,
                false,
                holes,
                0,
                holeLocations,
                List.of(),
                List.of(),
                days,
                today.request(units.unit()),
                seed,
                Optional.empty(),
                Optional.empty());
    }
}
