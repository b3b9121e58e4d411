package loopwright.cli;

import java.nio.file.Path;
import loopwright.action.CourseListing;
import loopwright.action.ReadCourse;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright course list FILE}. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the courses of a map file.")
public final class CourseListCommand implements Runnable {
    private final ReadCourse action;

    @Parameters(paramLabel = "FILE", description = "The map file.")
    private @Nullable Path file;

    @Spec
    private @Nullable CommandSpec spec;

    public CourseListCommand(ReadCourse action) {
        this.action = action;
    }

    @Override
    public void run() {
        if (file == null || spec == null) {
            throw new IllegalStateException("picocli fills the parameters before it runs a command");
        }
        for (CourseListing course : action.listCourses(file)) {
            spec.commandLine()
                    .getOut()
                    .printf(
                            "%d  %s: %d holes (%s)%s%n",
                            course.number(), course.name(), course.holes(), course.element(), survey(course));
        }
    }

    private static String survey(CourseListing course) {
        if (course.unsurveyed() == 0) {
            return "";
        }
        return course.unsurveyed() == course.holes() ? ", unsurveyed" : ", " + course.unsurveyed() + " unsurveyed";
    }
}
