package loopwright.cli;

import java.nio.file.Path;
import java.util.Objects;
import loopwright.action.BookPrinter;
import loopwright.action.CourseWalk;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright course walk FILE}: sheets to carry round a course and write on. */
@Command(
        name = "walk",
        mixinStandardHelpOptions = true,
        description = "Prints what to look at, step off and level on each hole; \"course survey\" takes the answers.")
public final class CourseWalkCommand implements Runnable {
    private final CourseWalk action;
    private final BookPrinter printer;

    @Parameters(paramLabel = "FILE", description = "The course or map file.")
    private @Nullable Path file;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The sheets as PDF.")
    private @Nullable Path out;

    @Option(names = "--tees", defaultValue = "middle", paramLabel = "NAME", description = "Default: ${DEFAULT-VALUE}.")
    private String tees = "middle";

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

    public CourseWalkCommand(CourseWalk action, BookPrinter printer) {
        this.action = action;
        this.printer = printer;
    }

    @Override
    public void run() {
        BookPrinter.Paper sheet = BookPrinter.Paper.named(paper);
        var sheets = action.sheets(Objects.requireNonNull(file), tees, units.unit());
        printer.printSheets(sheets, sheet, Objects.requireNonNull(out));
        Objects.requireNonNull(spec)
                .commandLine()
                .getOut()
                .println("Written to " + out + ", " + sheets.pages().size() + " sheets.");
    }
}
