package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.action.Counting;
import loopwright.action.PinSheetFile;
import loopwright.action.PlanRequest;
import loopwright.action.PlanRound;
import loopwright.action.ReadLengths;
import loopwright.action.ResultFile;
import loopwright.action.RoundPlan;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright plan}: the game plan of a round. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "Solves every hole for this player and prints the game plan of the round.")
public final class PlanVerb implements Runnable {
    private final PlanRound action;
    private final PinSheetFile sheets;
    private final ResultFile results;

    @Mixin
    private RoundOptions round = new RoundOptions();

    @Mixin
    private TeesOption tees = new TeesOption();

    @Mixin
    private HoleOptions holes = new HoleOptions();

    @Option(
            names = "--objective",
            defaultValue = "mean",
            paramLabel = "WHAT",
            description = "mean: the fewest strokes on average; target: solve the round for the target as well.")
    private String objective = "mean";

    @Option(
            names = "--counting",
            defaultValue = "strokes",
            paramLabel = "FORM",
            description = "strokes, net, stableford (the target is in points) or maximum.")
    private String counting = "strokes";

    @Option(
            names = "--handicap",
            paramLabel = "N",
            description = "Playing handicap, 18 holes; +2 is a plus handicap. --counting net needs it.")
    private @Nullable String handicap;

    @Option(
            names = "--maximum",
            paramLabel = "N",
            description = "Most strokes a hole counts; default: net double bogey.")
    private @Nullable Integer maximum;

    @Option(
            names = "--how-sure",
            description = "Carry what is not known of your skill through to the expected score and the chance.")
    private boolean howSure;

    @Option(
            names = "--state-of-play",
            description = "With --objective target: the chances on the last three tees, by strokes in hand.")
    private boolean stateOfPlay;

    @Option(
            names = "--pin-sheet",
            paramLabel = "FILE",
            description = "Hole locations of the day (CSV: hole, front, left or right, in paces).")
    private @Nullable Path pinSheet;

    @Mixin
    private DayOptions day = new DayOptions();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private TodayOptions today = new TodayOptions();

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write the plan as JSON (docs/schema/plan.schema.json).")
    private @Nullable Path json;

    @Option(names = "--picture", paramLabel = "DIR", description = "Draw every hole into this folder.")
    private @Nullable Path pictures;

    @Option(names = "--audit", paramLabel = "DIR", description = "Write all outcomes for checking (docs/audit.md).")
    private @Nullable Path audit;

    @Spec
    private @Nullable CommandSpec spec;

    public PlanVerb(PlanRound action, PinSheetFile sheets, ResultFile results) {
        this.action = action;
        this.sheets = sheets;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        ReadLengths lengths = units.lengths();
        RoundPlan plan = action.plan(request(), new ProgressLine(err, howSure ? "step" : "hole"));
        new PlanPage(out, lengths, day.remark()).print(plan, stateOfPlay);
        if (json != null) {
            results.write(json, PlanJson.of(plan));
            out.println("Plan written to " + json + ".");
        }
        if (pictures != null) {
            out.println("Pictures written to " + pictures + ".");
        }
        if (audit != null) {
            out.println("Audit written to " + audit + ".");
        }
    }

    private boolean forTarget() {
        if (!objective.equals("target") && !objective.equals("mean")) {
            throw new UserFault("--objective " + objective + " is not known; it is mean or target.");
        }
        return objective.equals("target");
    }

    private Counting counting() {
        OptionalInt most = maximum == null ? OptionalInt.empty() : OptionalInt.of(maximum);
        OptionalInt playing = handicap == null
                ? OptionalInt.empty()
                : OptionalInt.of(DecimalList.parseHandicap("--handicap", handicap));
        try {
            return new Counting(Counting.Form.valueOf(counting.toUpperCase(Locale.ROOT)), playing, most);
        } catch (IllegalArgumentException e) {
            throw new UserFault(
                    "--counting " + counting + " is not known; it is strokes, net, stableford or maximum.", e);
        }
    }

    private List<String> locations() {
        List<String> out = new ArrayList<>(pinSheet == null ? List.of() : sheets.read(pinSheet));
        out.addAll(holes.holeLocations);
        return out;
    }

    private PlanRequest request() {
        return new PlanRequest(
                round.course(),
                round.player(),
                tees.name,
                round.target,
                counting(),
                forTarget(),
                howSure,
                round.holes,
                holes.startHole,
                locations(),
                holes.forbid,
                holes.require,
                day.days(),
                today.request(units.unit()),
                round.seed,
                Optional.ofNullable(pictures),
                Optional.ofNullable(audit));
    }
}
