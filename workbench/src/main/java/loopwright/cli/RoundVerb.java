package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import loopwright.action.ResultFile;
import loopwright.action.RoundImport;
import loopwright.action.RoundResults;
import loopwright.action.RoundReviews;
import loopwright.action.RowProblem;
import loopwright.scoring.RoundReview;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright round}: rounds as they were written down. */
@Command(
        name = "round",
        mixinStandardHelpOptions = true,
        description = "Rounds as they were written down, and what they say.",
        synopsisSubcommandLabel = "WHAT")
public final class RoundVerb implements Runnable {
    private final RoundReviews reviews;
    private final ResultFile results;

    @Spec
    private @Nullable CommandSpec spec;

    public RoundVerb(RoundReviews reviews, ResultFile results) {
        this.reviews = reviews;
        this.results = results;
    }

    @Override
    public void run() {
        throw new ParameterException(spec().commandLine(), "Say what to do with a round: review.");
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "Strokes gained by part of the game, the counts, and what looks odd, from a table of holes"
                    + " or strokes (docs/rounds.md).")
    void review(
            @Parameters(paramLabel = "FILE", description = "Rounds as CSV.") Path file,
            @Option(names = "--keep-good-rows", description = "Use the good rows although others cannot be read.")
                    boolean keepGoodRows,
            @Option(
                            names = "--json",
                            paramLabel = "FILE",
                            description = "Also write the numbers as JSON (docs/schema/round-review.schema.json).")
                    @Nullable
                    Path json) {
        RoundImport rounds = reviews.read(file);
        for (RowProblem problem : rounds.problems()) {
            out().println(file + ", " + problem.sentence());
        }
        List<RoundReview> reviewed = reviews.review(file, rounds, keepGoodRows);
        if (json != null) {
            results.write(json, RoundResults.of(reviewed, rounds.problems()));
        }
        if (!rounds.ignored().isEmpty()) {
            out().println("Columns not understood and left out: " + String.join(", ", rounds.ignored()) + ".");
        }
        reviewed.forEach(review -> new RoundPage(out()).print(review));
        out().flush();
    }

    private PrintWriter out() {
        return spec().commandLine().getOut();
    }

    private CommandSpec spec() {
        if (spec == null) {
            throw new IllegalStateException("the verb is run by the command line");
        }
        return spec;
    }
}
