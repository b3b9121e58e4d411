package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.action.CourseImport;
import loopwright.action.DrawHoles;
import loopwright.action.ReadCourse;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright course draw FILE}. */
@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        description =
                "Draws every hole of a course, one picture each. \"course read --picture\" draws the whole course.")
public final class CourseDrawCommand implements Runnable {
    private final ReadCourse courses;
    private final DrawHoles holes;

    @Parameters(paramLabel = "FILE", description = "The map file.")
    private @Nullable Path file;

    @Mixin
    private CourseChoiceOptions choice = new CourseChoiceOptions();

    @Option(
            names = "--terrain",
            paramLabel = "FILE",
            description = "Heights of the ground: GeoTIFF or ESRI ASCII grid.")
    private @Nullable Path terrain;

    @Option(
            names = "--tees",
            paramLabel = "NAME",
            description = "Set of tees: a name, or back, middle (default), forward.")
    private String tees = "middle";

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Where the pictures go.")
    private @Nullable Path out;

    @Option(names = "--svg", description = "Write SVG instead of PNG.")
    private boolean svg;

    @Spec
    private @Nullable CommandSpec spec;

    public CourseDrawCommand(ReadCourse courses, DrawHoles holes) {
        this.courses = courses;
        this.holes = holes;
    }

    @Override
    public void run() {
        if (file == null || out == null || spec == null) {
            throw new IllegalStateException("picocli fills the parameters before it runs a command");
        }
        var nothing = new ReadCourse.Outputs(Optional.empty(), Optional.empty(), Optional.empty());
        CourseImport found = courses.read(file, choice.toChoice(), Optional.ofNullable(terrain), nothing);
        List<Path> files = holes.draw(found.course(), tees, out, svg ? "svg" : "png");
        PrintWriter terminal = spec.commandLine().getOut();
        terminal.println(files.size() + " pictures written to " + out + ", "
                + files.get(0).getFileName() + " to "
                + files.get(files.size() - 1).getFileName() + ".");
        List<Integer> unsurveyed = ReadCourse.unsurveyedHoles(found.course());
        if (!unsurveyed.isEmpty()) {
            terminal.println("Unsurveyed holes: " + unsurveyed.toString().replaceAll("[\\[\\]]", "")
                    + ". Empty ground there is not known to be open.");
        }
        terminal.flush();
    }
}
