package loopwright.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import loopwright.action.ResultFile;
import loopwright.action.RoundImport;
import loopwright.action.RoundResults;
import loopwright.action.RoundReviews;
import loopwright.action.RowProblem;
import loopwright.action.UserFault;
import loopwright.scoring.CourseCard;
import loopwright.scoring.HoleRecord;
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
    private final Reader keyboard;

    @Spec
    private @Nullable CommandSpec spec;

    public RoundVerb(RoundReviews reviews, ResultFile results, Reader keyboard) {
        this.reviews = reviews;
        this.results = results;
        this.keyboard = keyboard;
    }

    @Override
    public void run() {
        throw new ParameterException(spec().commandLine(), "Say what to do with a round: add or review.");
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "Strokes gained by part of the game, the counts, and what looks odd, from a table of holes"
                    + " or strokes (docs/rounds.md).")
    void review(
            @Parameters(paramLabel = "FILE", description = "Rounds as CSV.") Path file,
            @Option(
                            names = "--course",
                            paramLabel = "FILE",
                            description = "Course file: par and length of holes where the rounds do not say.")
                    @Nullable
                    Path course,
            @Option(names = "--tees", paramLabel = "NAME", defaultValue = "middle", description = "With --course.")
                    String tees,
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
        List<RoundReview> reviewed = reviews.review(file, rounds, card(course, tees), keepGoodRows);
        if (json != null) {
            results.write(json, RoundResults.of(reviewed, rounds.problems()));
        }
        if (!rounds.ignored().isEmpty()) {
            out().println("Columns not understood and left out: " + String.join(", ", rounds.ignored()) + ".");
        }
        reviewed.forEach(review -> new RoundPage(out()).print(review));
        out().flush();
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "Asks for a round hole by hole, one short line each, and writes it as CSV.")
    void add(
            @Parameters(paramLabel = "FILE", description = "New CSV file.") Path file,
            @Option(
                            names = "--strokes",
                            description = "Lie and distance of every stroke; without it, counts of each hole.")
                    boolean strokes,
            @Option(names = "--course", paramLabel = "FILE", description = "Course file: par and length of holes.")
                    @Nullable
                    Path course,
            @Option(names = "--tees", paramLabel = "NAME", defaultValue = "middle", description = "With --course.")
                    String tees,
            @Option(
                            names = "--pars",
                            paramLabel = "443545344",
                            description = "Pars in the order of play, where there is no course file.")
                    @Nullable
                    String pars,
            @Option(names = "--start-hole", paramLabel = "N", defaultValue = "1", description = "First hole played.")
                    int startHole,
            @Option(names = "--holes", paramLabel = "N", defaultValue = "18", description = "How many.") int holes,
            @Option(names = "--date", paramLabel = "DAY", description = "As 2026-05-31; today if left out.") @Nullable
                    LocalDate date,
            @Option(names = "--format", paramLabel = "WORDS", description = "Stroke play, match play, scramble ...")
                    @Nullable
                    String format) {
        reviews.requireNew(file);
        LocalDate day = date == null ? LocalDate.now(ZoneId.systemDefault()) : date;
        RoundRequest request = new RoundRequest(startHole, holes, pars, card(course, tees));
        BufferedReader in = new BufferedReader(keyboard);
        List<HoleRecord> played = new RoundDialog(in, out(), strokes, request.card()).holes(request.numbers());
        if (played.isEmpty()) {
            throw new UserFault("No hole was typed; nothing was written.");
        }
        reviews.save(request.round(day, format, played), file);
        out().println("Wrote " + played.size() + (played.size() == 1 ? " hole" : " holes") + " to " + file
                + "; see it with: loopwright round review " + file);
        out().flush();
    }

    private Optional<CourseCard> card(@Nullable Path course, String tees) {
        return course == null ? Optional.empty() : Optional.of(reviews.card(course, tees));
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
