package loopwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import loopwright.action.CourseImport;
import loopwright.action.ImportRecord;
import loopwright.action.ReadCourse;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.units.Distance;

/** Prints a course that was read: its card, what nobody has surveyed, and what was assumed. */
final class CourseReport {
    private static final int MOST_ELEMENTS = 6;

    private final PrintWriter out;
    private final boolean all;

    CourseReport(PrintWriter out, boolean all) {
        this.out = out;
        this.all = all;
    }

    void print(CourseImport found) {
        Course course = found.course();
        out.printf(
                Locale.ROOT,
                "%s: %d holes, par %d.%n%n",
                course.name(),
                course.holes().size(),
                course.par());
        card(course);
        unsurveyed(course);
        records(found.records());
    }

    private void card(Course course) {
        out.printf("%-6s%-5s", "hole", "par");
        course.teeSets().forEach(t -> out.printf("%10s", t.name()));
        boolean heights = course.heights().isPresent();
        out.println((heights ? "   rise" : "") + "   (yards" + (heights ? ", rise from the back tee in feet)" : ")"));
        for (Hole hole : course.holes()) {
            out.printf(Locale.ROOT, "%-6d%-5d", hole.number(), hole.par());
            course.teeSets().forEach(t -> out.printf("%10s", length(course, hole, t)));
            if (heights) {
                out.printf(Locale.ROOT, "%+7d", Math.round(riseFeet(course, hole)));
            }
            out.println(hole.greenAssumed() ? "   green assumed" : "");
        }
        out.printf(Locale.ROOT, "%-6s%-5d", "total", course.par());
        for (TeeSet set : course.teeSets()) {
            double metres = course.holes().stream()
                    .mapToDouble(h -> course.lengthMetres(h, set))
                    .sum();
            out.printf(Locale.ROOT, "%10.0f", Distance.ofMetres(metres).yards());
        }
        out.printf("%n%n");
        if (course.teeSets().stream().anyMatch(t -> course.holes().stream().anyMatch(h -> standsIn(h, t)))) {
            out.printf("* another tee stands in: the hole has none of this set.%n%n");
        }
    }

    private static double riseFeet(Course course, Hole hole) {
        var back = course.teeSets().get(0).getPlace(hole.number()).place();
        return Distance.ofMetres(course.riseMetres(back, hole.holeLocation())).feet();
    }

    private static boolean standsIn(Hole hole, TeeSet set) {
        return set.getPlace(hole.number()).standsIn().isPresent();
    }

    private static String length(Course course, Hole hole, TeeSet set) {
        double yards = Distance.ofMetres(course.lengthMetres(hole, set)).yards();
        return String.format(Locale.ROOT, "%s%.0f", standsIn(hole, set) ? "*" : "", yards);
    }

    private void unsurveyed(Course course) {
        List<Integer> holes = ReadCourse.unsurveyedHoles(course);
        if (!holes.isEmpty()) {
            out.printf(
                    "Unsurveyed: %s. Nobody has confirmed their trees, out of bounds and penalty areas, so an empty"
                            + " map may hide them.%n%n",
                    holes.size() == course.holes().size() ? "all holes" : "holes " + join(holes));
        }
    }

    private static String join(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private void records(List<ImportRecord> records) {
        Map<String, List<ImportRecord>> byKind = new LinkedHashMap<>();
        records.forEach(
                r -> byKind.computeIfAbsent(r.kind(), k -> new ArrayList<>()).add(r));
        byKind.forEach((kind, list) -> {
            String mark = list.get(0).warning() ? "Look at this" : "Note";
            out.printf("%s: %s%s%n", mark, kind, list.size() > 1 ? " (" + list.size() + ")" : "");
            List<ImportRecord> shown = all ? list : list.subList(0, 1);
            shown.forEach(this::record);
            if (shown.size() < list.size()) {
                out.println("    also: " + others(list.subList(shown.size(), list.size())));
            }
        });
        if (!records.isEmpty()) {
            out.println();
        }
    }

    private static String others(List<ImportRecord> rest) {
        String named =
                rest.stream().limit(MOST_ELEMENTS).map(ImportRecord::element).collect(Collectors.joining(", "));
        int more = rest.size() - MOST_ELEMENTS;
        return more > 0 ? named + " and " + more + " more (--all shows them)" : named;
    }

    private void record(ImportRecord r) {
        String where = r.where()
                .map(w -> String.format(Locale.ROOT, " at %.5f, %.5f", w.latitudeDegrees(), w.longitudeDegrees()))
                .orElse("");
        out.printf("    %s%s: %s %s Mend: %s%n", r.element(), where, r.found(), r.assumed(), r.mend());
    }
}
