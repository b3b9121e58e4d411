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
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
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

    @Option(names = "--course", required = true, paramLabel = "FILE", description = "The course (any map format).")
    private @Nullable Path course;

    @Option(names = "--player", required = true, paramLabel = "FILE", description = "The player file.")
    private @Nullable Path player;

    @Option(names = "--tees", defaultValue = "middle", paramLabel = "NAME", description = "Set of tees.")
    private String tees = "middle";

    @Option(names = "--target", required = true, paramLabel = "SCORE", description = "The total to stay at or below.")
    private int target;

    @Option(names = "--holes", defaultValue = "", paramLabel = "LIST", description = "Holes to play, e.g. 1-9.")
    private String holes = "";

    @Option(names = "--seed", defaultValue = "1", paramLabel = "N", description = "Seed of every draw.")
    private long seed;

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
        PlanRequest request = new PlanRequest(
                Objects.requireNonNull(course),
                Objects.requireNonNull(player),
                tees,
                target,
                Counting.STROKES,
                false,
                false,
                holes,
                0,
                List.of(),
                List.of(),
                List.of(),
                List.of(PlanDay.USUAL),
                seed,
                Optional.empty(),
                Optional.empty());
        Expectation expectation = action.expect(request, new ProgressLine(err, "hole"));
        new ExpectPage(out).print(expectation);
        if (json != null) {
            results.write(json, ExpectJson.of(expectation));
            out.println("Written to " + json + ".");
        }
    }
}
