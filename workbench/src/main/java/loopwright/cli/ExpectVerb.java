package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import loopwright.action.ExpectRound;
import loopwright.action.Expectation;
import loopwright.action.PlanRequest;
import loopwright.action.ResultFile;
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
        PlanRequest request = PlanRequest.usual(
                round.course(),
                round.player(),
                round.tees,
                round.target,
                round.holes,
                List.of(),
                List.of(),
                List.of(),
                round.seed);
        Expectation expectation = action.expect(request, new ProgressLine(err, "hole"));
        new ExpectPage(out).print(expectation);
        if (json != null) {
            results.write(json, ExpectJson.of(expectation));
            out.println("Written to " + json + ".");
        }
    }
}
