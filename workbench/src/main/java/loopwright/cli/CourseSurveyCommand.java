package loopwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import loopwright.action.ReadCourse;
import loopwright.action.SurveyCourse;
import loopwright.action.UserFault;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright course survey FILE}: a dialog, or single lines with {@code --set}. */
@Command(
        name = "survey",
        mixinStandardHelpOptions = true,
        description = "Keeps what a map cannot say: what you have looked at on each hole, bunker depths, local rules,"
                + " today's tees. Asks hole by hole; with --set it only does what the lines say.")
public final class CourseSurveyCommand implements Runnable {
    private static final List<String> TICKS = List.of("trees", "out-of-bounds", "penalty-areas", "bunkers");

    private final SurveyCourse action;

    @Parameters(paramLabel = "FILE", description = "The course or map file.")
    private @Nullable Path file;

    @Mixin
    private CourseChoiceOptions choice = new CourseChoiceOptions();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "Write the course here; may be the course file itself.")
    private @Nullable Path out;

    @Option(names = "--hole", paramLabel = "N", description = "Ask about this hole only.")
    private @Nullable Integer onlyHole;

    @Option(
            names = "--set",
            paramLabel = "LINE",
            description =
                    "A line of the survey, for example \"7 trees yes\" or \"all-holes all yes\"; may be repeated.")
    private List<String> lines = List.of();

    @Spec
    private @Nullable CommandSpec spec;

    public CourseSurveyCommand(SurveyCourse action) {
        this.action = action;
    }

    @Override
    public void run() {
        if (file == null || out == null || spec == null) {
            throw new IllegalStateException("picocli fills the parameters before it runs a command");
        }
        PrintWriter terminal = spec.commandLine().getOut();
        Course course = action.open(file, choice.toChoice());
        if (lines.isEmpty()) {
            course = dialog(course, terminal);
        } else {
            for (String line : lines) {
                course = applied(course, line);
            }
        }
        action.save(course, out);
        List<Integer> open = ReadCourse.unsurveyedHoles(course);
        terminal.println(
                open.isEmpty()
                        ? "Every hole is surveyed."
                        : "Unsurveyed still: " + open.size() + " holes: " + open + ".");
        terminal.println("Course written to " + out + ".");
    }

    /** A line about one thing, or, with "all-holes" in place of a number, about every hole. */
    private static Course applied(Course course, String line) {
        if (!line.strip().startsWith("all-holes ")) {
            return SurveyLine.apply(course, line);
        }
        Course changed = course;
        for (Hole hole : course.holes()) {
            changed = SurveyLine.apply(changed, hole.number() + line.strip().substring("all-holes".length()));
        }
        return changed;
    }

    private Course dialog(Course course, PrintWriter terminal) {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
        Course changed = course;
        terminal.println("Answer y or n, Enter to leave as it is, q to stop and keep what was said.");
        for (Hole hole : course.holes()) {
            if (onlyHole != null && hole.number() != onlyHole) {
                continue;
            }
            shown(changed, hole, terminal);
            for (String tick : TICKS) {
                String question =
                        "  Have you looked at the " + tick.replace('-', ' ') + ", and are all in play on the map?";
                String answer = ask(in, terminal, question);
                if (answer.equals("q")) {
                    return changed;
                }
                changed =
                        answer.isEmpty() ? changed : said(changed, hole.number() + " " + tick + " " + answer, terminal);
            }
            while (true) {
                String line = ask(in, terminal, "  Anything else? (help, or Enter for the next hole)");
                if (line.equals("q")) {
                    return changed;
                }
                if (line.isEmpty()) {
                    break;
                }
                changed = said(changed, line, terminal);
            }
        }
        return changed;
    }

    private static Course said(Course course, String line, PrintWriter terminal) {
        if (line.equalsIgnoreCase("help")) {
            SurveyLine.HELP.forEach(h -> terminal.println("    " + h));
            GreenLine.HELP.forEach(h -> terminal.println("    " + h));
            return course;
        }
        try {
            return SurveyLine.apply(course, line);
        } catch (UserFault e) {
            terminal.println("    " + e.getMessage());
            return course;
        }
    }

    /** The answer, or "q" at the end of the input. */
    private static String ask(BufferedReader in, PrintWriter terminal, String question) {
        terminal.print(question + " ");
        terminal.flush();
        try {
            String line = in.readLine();
            return line == null ? "q" : line.strip();
        } catch (IOException e) {
            throw new UserFault("The terminal cannot be read: " + e.getMessage() + ".", e);
        }
    }

    private static void shown(Course course, Hole hole, PrintWriter terminal) {
        terminal.printf(
                "%nHole %d, par %d, %.0f yd from the back.%n",
                hole.number(),
                hole.par(),
                Distance.ofMetres(course.lengthMetres(hole, course.teeSets().get(0)))
                        .yards());
        terminal.printf(
                "  On the map: %s; %s; %s; %s.%n",
                listed(course, hole, AreaKind.WOODS, "woods"),
                listed(course, hole, AreaKind.RED_PENALTY_AREA, "red penalty areas"),
                listed(course, hole, AreaKind.YELLOW_PENALTY_AREA, "yellow penalty areas"),
                listed(course, hole, AreaKind.BUNKER, "bunkers"));
        terminal.println(
                course.boundary().isEmpty()
                        ? "  No out of bounds is known."
                        : "  Out of bounds is the border on the map" + (course.boundaryGuessed() ? ", a guess." : "."));
    }

    private static String listed(Course course, Hole hole, AreaKind kind, String name) {
        List<String> ids = SurveyCourse.areasBeside(course, hole, kind).stream()
                .map(Area::id)
                .toList();
        return ids.isEmpty() ? "no " + name : ids.size() + " " + name + " (" + String.join(", ", ids) + ")";
    }
}
