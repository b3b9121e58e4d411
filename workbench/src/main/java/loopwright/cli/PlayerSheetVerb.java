package loopwright.cli;

import java.nio.file.Path;
import loopwright.action.BookPrinter;
import loopwright.action.MeasuringSheet;
import loopwright.action.ReadLengths;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright player sheet}: a measuring session to take to the range, and the list to write it into. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        description = "Describes a measuring session of about 40 minutes and writes the list to fill in.")
public final class PlayerSheetVerb implements Runnable {
    private final MeasuringSheet sheet;
    private final BookPrinter printer;

    @Option(names = "--out", paramLabel = "FILE", description = "List to fill in (CSV); \"fit --shots\" reads it back.")
    private @Nullable Path out;

    @Option(names = "--print", paramLabel = "FILE", description = "Session and list as PDF, to print and write on.")
    private @Nullable Path print;

    @Option(
            names = "--paper",
            defaultValue = "a4",
            paramLabel = "NAME",
            description = "a4 or letter. Default: ${DEFAULT-VALUE}.")
    private String paper = "a4";

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Spec
    private @Nullable CommandSpec spec;

    public PlayerSheetVerb(MeasuringSheet sheet, BookPrinter printer) {
        this.sheet = sheet;
        this.printer = printer;
    }

    @Override
    public void run() {
        if (spec == null) {
            throw new IllegalStateException("the verb is run by the command line");
        }
        var page = spec.commandLine().getOut();
        ReadLengths lengths = units.lengths();
        sheet.description(lengths).forEach(page::println);
        if (out != null) {
            sheet.write(out, lengths);
            page.println("The list to fill in was written to " + out + ".");
        }
        if (print != null) {
            printer.printSheets(sheet.sheets(lengths), BookPrinter.Paper.named(paper), print);
            page.println("The sheets to write on were written to " + print + ".");
        }
        page.flush();
    }
}
