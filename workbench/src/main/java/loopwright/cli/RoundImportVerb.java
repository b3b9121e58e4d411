package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.KeepRounds;
import loopwright.action.ResultFile;
import loopwright.action.RoundFile;
import loopwright.action.RoundImport;
import loopwright.action.RoundReviews;
import loopwright.action.RowProblem;
import loopwright.scoring.CourseCard;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright round import}: takes a table of rounds into the store. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description =
                "Keeps the rounds of a table (docs/rounds.md) in the store, all or none; a round that is kept already,"
                        + " word for word, is left out.")
public final class RoundImportVerb implements Runnable {
    private final RoundReviews reviews;
    private final RoundFile files;
    private final StoreWork stores;
    private final ResultFile results;

    @Parameters(paramLabel = "FILE", description = "Rounds as CSV.")
    private Path file = Path.of("");

    @Mixin
    private PlayerInStore of = new PlayerInStore();

    @Mixin
    private CardOptions card = new CardOptions();

    @Option(names = "--keep-good-rows", description = "Use the good rows although others cannot be read.")
    private boolean keepGoodRows;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write what was kept as JSON (docs/schema/rounds.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public RoundImportVerb(RoundReviews reviews, RoundFile files, StoreWork stores, ResultFile results) {
        this.reviews = reviews;
        this.files = files;
        this.stores = stores;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        RoundImport read = reviews.read(file);
        for (RowProblem problem : read.problems()) {
            out.println(file + ", " + problem.sentence());
        }
        Optional<CourseCard> holes = card.find(reviews);
        KeepRounds.TakenIn taken = stores.of(
                of.where,
                of.player,
                (store, id) -> new KeepRounds(store, files).takeIn(id, file.toString(), read, holes, keepGoodRows));
        if (!read.ignored().isEmpty()) {
            out.println("Columns not understood and left out: " + String.join(", ", read.ignored()) + ".");
        }
        out.println("Kept " + count(taken.kept().size()) + " of " + of.player
                + (taken.known() == 0 ? "." : "; " + taken.known() + " were there already."));
        out.flush();
        if (json != null) {
            results.write(json, Map.of("player", of.player, "rounds", RoundListVerb.rows(List.copyOf(taken.kept()))));
        }
    }

    private static String count(int rounds) {
        return rounds == 1 ? "one round" : rounds + " rounds";
    }
}
