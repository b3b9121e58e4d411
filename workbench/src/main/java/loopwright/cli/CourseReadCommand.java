package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import loopwright.action.CourseImport;
import loopwright.action.ReadCourse;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright course read FILE}. */
@Command(
        name = "read",
        mixinStandardHelpOptions = true,
        description =
                "Reads a course from a map file (OSM XML, OSM PBF, GeoJSON with OSM golf keys, Overpass JSON; told by content)"
                        + " and says what had to be assumed.")
public final class CourseReadCommand implements Runnable {
    private final ReadCourse action;

    @Parameters(paramLabel = "FILE", description = "The map file.")
    private @Nullable Path file;

    @Mixin
    private CourseChoiceOptions choice = new CourseChoiceOptions();

    @Option(
            names = "--terrain",
            paramLabel = "FILE",
            description = "Heights of the ground: GeoTIFF or ESRI ASCII grid.")
    private @Nullable Path terrain;

    @Option(names = "--out", paramLabel = "FILE", description = "Write the course as GeoJSON.")
    private @Nullable Path out;

    @Option(names = "--picture", paramLabel = "FILE", description = "Draw the course as PNG.")
    private @Nullable Path picture;

    @Option(names = "--json", paramLabel = "FILE", description = "Write the report as JSON.")
    private @Nullable Path json;

    @Option(names = "--all", description = "Print every record, not only the first of each kind.")
    private boolean all;

    @Spec
    private @Nullable CommandSpec spec;

    public CourseReadCommand(ReadCourse action) {
        this.action = action;
    }

    @Override
    public void run() {
        if (file == null || spec == null) {
            throw new IllegalStateException("picocli fills the parameters before it runs a command");
        }
        var outputs = new ReadCourse.Outputs(
                Optional.ofNullable(out), Optional.ofNullable(picture), Optional.ofNullable(json));
        CourseImport found = action.read(file, choice.toChoice(), Optional.ofNullable(terrain), outputs);
        PrintWriter terminal = spec.commandLine().getOut();
        new CourseReport(terminal, all).print(found);
        outputs.course().ifPresent(f -> terminal.println("Course written to " + f + "."));
        outputs.picture().ifPresent(f -> terminal.println("Picture written to " + f + "."));
        outputs.report().ifPresent(f -> terminal.println("Report written to " + f + "."));
    }
}
