package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.Counting;
import loopwright.action.ExpectRound;
import loopwright.action.Expectation;
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

/** {@code loopwright expect}: what a round is made of, on average and when it beats the target. */
@Command(
        name = "expect",
        mixinStandardHelpOptions = true,
        description = "Says what to expect: pars, greens, putts and penalties, usually and when the target is beaten.")
public final class ExpectVerb implements Runnable {
    private final ExpectRound action;
    private final ResultFile results;

    @Mixin
    private RoundOptions round = new RoundOptions();

    @Mixin
    private TeesOption tees = new TeesOption();

    @Mixin
    private DayOptions day = new DayOptions();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private TodayOptions today = new TodayOptions();

    @Option(names = "--json", paramLabel = "FILE", description = "Write it as JSON (docs/schema/expect.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public ExpectVerb(ExpectRound action, ResultFile results) {
        this.action = action;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        PlanDay of = day();
        Expectation expectation = action.expect(request(of), new ProgressLine(err, "hole"));
        new ExpectPage(out, units.lengths()).print(expectation, of);
        if (json != null) {
            results.write(json, ExpectJson.of(expectation));
            out.println("Written to " + json + ".");
        }
    }

    private PlanDay day() {
        List<PlanDay> days = day.days();
        if (days.size() > 1) {
            throw new UserFault("What to expect is said for one day; give --wind once.");
        }
        return days.get(0);
    }

    private PlanRequest request(PlanDay of) {
        return new PlanRequest(
                round.course(),
                round.player(),
                tees.name,
                round.target,
                Counting.STROKES,
                false,
                false,
                round.holes,
                0,
                List.of(),
                List.of(),
                List.of(),
                List.of(of),
                today.request(units.unit()),
                round.seed,
                Optional.empty(),
                Optional.empty());
    }
}
