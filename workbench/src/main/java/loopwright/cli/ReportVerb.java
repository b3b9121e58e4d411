package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import loopwright.action.BenchStore;
import loopwright.action.BookPrinter;
import loopwright.action.PlayerReport;
import loopwright.action.ReadLengths;
import loopwright.action.ReportPlayer;
import loopwright.action.ReportSheets;
import loopwright.action.ResultFile;
import loopwright.action.WholeFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright report}: what a player's kept rounds say. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description = {
            "Reviews a kept round of a player: one thing done well, one decision, one practice item; then strokes gained"
                    + " against tour, benchmark and own past, what stands between the player and the target, misses by"
                    + " club, and whether the model knows the player.",
            "The benchmark is a player of the target score with this player's length, solved on the round's course; the"
                    + " first time that takes as long as a plan."
        })
public final class ReportVerb implements Runnable {
    private final StoreWork stores;
    private final Function<BenchStore, ReportPlayer> reports;
    private final BookPrinter printer;
    private final ResultFile results;

    @Mixin
    private PlayerInStore of = new PlayerInStore();

    @Option(names = "--round", paramLabel = "ID", description = "The round, as round list shows it; else the latest.")
    private @Nullable String round;

    @Option(names = "--target", paramLabel = "SCORE", description = "Over 18 holes; else the goal of the player file.")
    private @Nullable Integer target;

    @Option(names = "--no-solve", description = "Use a benchmark only if it was solved before.")
    private boolean noSolve;

    @Option(
            names = "--causes",
            description = "Divide the strokes of holes with places into decision, execution and luck.")
    private boolean causes;

    @Option(names = "--two-parts", description = "Do not infer aims that were not noted: divide into two parts only.")
    private boolean twoParts;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Also print the whole report as PDF, for the coach.")
    private @Nullable Path pdf;

    @Option(names = "--page", paramLabel = "FILE", description = "Also print the player's page as PDF, to take home.")
    private @Nullable Path page;

    @Option(
            names = "--paper",
            defaultValue = "a4",
            paramLabel = "NAME",
            description = "Sheets to print on: a4 or letter. Default: ${DEFAULT-VALUE}.")
    private String paper = "a4";

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write it as JSON (docs/schema/report.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public ReportVerb(
            StoreWork stores, Function<BenchStore, ReportPlayer> reports, BookPrinter printer, ResultFile results) {
        this.stores = stores;
        this.reports = reports;
        this.printer = printer;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        ReadLengths lengths = units.lengths();
        BookPrinter.Paper sheets = BookPrinter.Paper.named(paper);
        Stream.of(pdf, page).filter(Objects::nonNull).forEach(WholeFile::checkPlace);
        PlayerReport report = stores.of(
                of.where,
                of.player,
                (store, id) -> reports.apply(store)
                        .report(
                                new ReportPlayer.Request(
                                        id,
                                        Optional.ofNullable(round),
                                        Optional.ofNullable(target),
                                        !noSolve,
                                        causes,
                                        !twoParts),
                                new ProgressLine(err, "hole")));
        new ReportPage(out, lengths).print(report);
        if (pdf != null) {
            printer.printReport(ReportSheets.full(report, lengths), sheets, pdf);
            out.println("The whole report was written to " + pdf + ".");
        }
        if (page != null) {
            printer.printReport(ReportSheets.page(report, lengths), sheets, page);
            out.println("The player's page was written to " + page + ".");
        }
        out.flush();
        if (json != null) {
            results.write(json, ReportJson.of(report));
        }
    }
}
