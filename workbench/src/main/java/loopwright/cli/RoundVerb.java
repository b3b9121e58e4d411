package loopwright.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import loopwright.action.KeepRounds;
import loopwright.action.ReadLengths;
import loopwright.action.ResultFile;
import loopwright.action.RoundFile;
import loopwright.action.RoundImport;
import loopwright.action.RoundResults;
import loopwright.action.RoundReviews;
import loopwright.action.RowProblem;
import loopwright.action.UserFault;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.RoundReview;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
    private final RoundFile files;
    private final StoreWork stores;
    private final Clock clock;

    @Spec
    private @Nullable CommandSpec spec;

    public RoundVerb(
            RoundReviews reviews, RoundFile files, StoreWork stores, ResultFile results, Reader keyboard, Clock clock) {
        this.reviews = reviews;
        this.files = files;
        this.stores = stores;
        this.results = results;
        this.keyboard = keyboard;
        this.clock = clock;
    }

    @Override
    public void run() {
        throw new ParameterException(spec().commandLine(), "Say what to do with a round: add, import, list or review.");
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "Strokes gained by part of the game, the counts, and what looks odd, from a table of holes"
                    + " or strokes (docs/rounds.md).")
    void review(
            @Parameters(paramLabel = "FILE", description = "Rounds as CSV.") Path file,
            @Mixin CardOptions card,
            @Mixin UnitsOption units,
            @Option(names = "--keep-good-rows", description = "Use the good rows although others cannot be read.")
                    boolean keepGoodRows,
            @Option(
                            names = "--json",
                            paramLabel = "FILE",
                            description = "Also write the numbers as JSON (docs/schema/round-review.schema.json).")
                    @Nullable
                    Path json) {
        ReadLengths lengths = units.lengths();
        RoundImport rounds = reviews.read(file);
        for (RowProblem problem : rounds.problems()) {
            out().println(file + ", " + problem.sentence());
        }
        List<RoundReview> reviewed = reviews.review(file, rounds, card.find(reviews), keepGoodRows);
        if (json != null) {
            results.write(json, RoundResults.of(reviewed, rounds.problems()));
        }
        if (!rounds.ignored().isEmpty()) {
            out().println("Columns not understood and left out: " + String.join(", ", rounds.ignored()) + ".");
        }
        reviewed.forEach(review -> new RoundPage(out(), lengths).print(review));
        out().flush();
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "Asks for a round hole by hole, one short line each, and writes it as CSV.")
    void add(
            @Parameters(
                            paramLabel = "FILE",
                            arity = "0..1",
                            description = "New CSV file; may be left out with --player.")
                    @Nullable
                    Path file,
            @Option(
                            names = "--strokes",
                            description = "Lie and distance of every stroke; without it, counts of each hole.")
                    boolean strokes,
            @Mixin CardOptions card,
            @Option(
                            names = "--player",
                            paramLabel = "NAME",
                            description = "Keep the round in the store, as one of this player's.")
                    @Nullable
                    String player,
            @Mixin StoreOptions where,
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
        if (file == null && player == null) {
            throw new UserFault("Say where the round goes: a new file, --player NAME, or both.");
        }
        if (file != null) {
            reviews.requireNew(file);
        }
        if (player != null) {
            stores.of(where, player, (store, id) -> id); // a wrong name is told before anything is typed
        }
        LocalDate day = date == null ? LocalDate.now(clock) : date;
        RoundRequest request = new RoundRequest(startHole, holes, pars, card.find(reviews));
        BufferedReader in = new BufferedReader(keyboard);
        List<HoleRecord> played = new RoundDialog(in, out(), strokes, request.card()).holes(request.numbers());
        if (played.isEmpty()) {
            throw new UserFault("No hole was typed; nothing was written.");
        }
        RoundRecord round = request.round(day, format, played);
        String wrote = "Wrote " + played.size() + (played.size() == 1 ? " hole" : " holes") + " to ";
        if (file != null) {
            reviews.save(round, file);
            out().println(wrote + file + "; see it with: loopwright round review " + file);
        }
        if (player != null) {
            stores.of(where, player, (store, id) -> new KeepRounds(store, files).add(id, round));
            out().println(wrote + "the rounds of " + player + "; see them with: loopwright round list --player \""
                    + player + "\"");
        }
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
