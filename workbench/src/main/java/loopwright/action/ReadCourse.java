package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;

/** Reads a course from a map file, says what had to be assumed, and writes it, its picture and a report. */
public final class ReadCourse {
    private final CourseFiles files;
    private final TerrainFiles terrains;
    private final CoursePictures pictures;
    private final ResultFile reports;

    public ReadCourse(CourseFiles files, TerrainFiles terrains, CoursePictures pictures, ResultFile reports) {
        this.files = files;
        this.terrains = terrains;
        this.pictures = pictures;
        this.reports = reports;
    }

    /** What to write besides reading; each is optional. */
    public record Outputs(Optional<Path> course, Optional<Path> picture, Optional<Path> report) {}

    public CourseImport read(Path file, CourseChoice choice, Optional<Path> terrain, Outputs outputs) {
        CourseImport map = files.read(file, choice);
        CourseImport found = terrain.map(t -> withTerrain(map, t)).orElse(map);
        outputs.course().ifPresent(target -> files.write(found.course(), target));
        outputs.picture().ifPresent(target -> pictures.drawCourse(found.course(), LengthUnit.YARDS, target));
        outputs.report().ifPresent(target -> reports.write(target, report(found)));
        return found;
    }

    private CourseImport withTerrain(CourseImport map, Path terrain) {
        TerrainFiles.Terrain heights = terrains.read(terrain, map.course());
        List<ImportRecord> records = new ArrayList<>(heights.records());
        records.addAll(map.records());
        return new CourseImport(map.course().withHeights(heights.heights()), records);
    }

    public List<CourseListing> listCourses(Path file) {
        return files.listCourses(file);
    }

    /** Holes whose trees, out of bounds and penalty areas nobody has confirmed. */
    public static List<Integer> unsurveyedHoles(Course course) {
        return course.holes().stream()
                .filter(h -> !h.survey().complete())
                .map(Hole::number)
                .toList();
    }

    private static Map<String, Object> report(CourseImport found) {
        Course course = found.course();
        Map<String, Object> out = new LinkedHashMap<>();
        out.put(
                "course",
                Map.of(
                        "name",
                        course.name(),
                        "par",
                        course.par(),
                        "holes",
                        course.holes().size()));
        out.put("tees", course.teeSets().stream().map(t -> tees(course, t)).toList());
        out.put("holes", course.holes().stream().map(h -> hole(course, h)).toList());
        course.heights().ifPresent(h -> out.put("heightResolutionMetres", h.resolutionMetres()));
        out.put("unsurveyed", unsurveyedHoles(course));
        out.put("records", found.records().stream().map(ReadCourse::record).toList());
        return out;
    }

    private static Map<String, Object> tees(Course course, TeeSet set) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("name", set.name());
        double total = 0;
        List<Integer> borrowed = new ArrayList<>();
        for (Hole hole : course.holes()) {
            total += course.lengthMetres(hole, set);
            if (set.getPlace(hole.number()).standsIn().isPresent()) {
                borrowed.add(hole.number());
            }
        }
        out.put("lengthMetres", total);
        out.put("standInHoles", borrowed);
        return out;
    }

    private static Map<String, Object> hole(Course course, Hole hole) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("number", hole.number());
        out.put("par", hole.par());
        out.put("parSource", hole.parSource());
        hole.strokeIndex().ifPresent(i -> out.put("strokeIndex", i));
        Map<String, Object> lengths = new LinkedHashMap<>();
        course.teeSets().forEach(t -> lengths.put(t.name(), course.lengthMetres(hole, t)));
        out.put("lengthMetres", lengths);
        if (course.heights().isPresent()) {
            Map<String, Object> rises = new LinkedHashMap<>();
            course.teeSets()
                    .forEach(t -> rises.put(
                            t.name(),
                            course.riseMetres(t.getPlace(hole.number()).place(), hole.holeLocation())));
            out.put("riseMetres", rises);
        }
        out.put("greenAssumed", hole.greenAssumed());
        out.put("unsurveyed", !hole.survey().complete());
        return out;
    }

    private static Map<String, Object> record(ImportRecord record) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("kind", record.kind());
        out.put("warning", record.warning());
        out.put("element", record.element());
        record.where()
                .ifPresent(w -> out.put("where", Map.of("lat", w.latitudeDegrees(), "lon", w.longitudeDegrees())));
        out.put("found", record.found());
        out.put("assumed", record.assumed());
        out.put("mend", record.mend());
        return out;
    }
}
