package loopwright.adapter.osm;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.action.CourseChoice;
import loopwright.action.CourseFiles;
import loopwright.action.CourseImport;
import loopwright.action.CourseListing;
import loopwright.action.UserFault;
import loopwright.action.WholeFile;
import loopwright.course.Course;

/** Course files in every format that this package reads. */
public final class OsmCourseFiles implements CourseFiles {
    @Override
    public CourseImport read(Path file, CourseChoice choice) {
        MapData data = data(file);
        Optional<MapElement> own = CourseReader.findRoot(data);
        if (own.isPresent()) {
            return CourseReader.read(file.toString(), data, own.get());
        }
        List<CourseLoop> loops = loops(data);
        return new CourseAssembler(loops.get(chosen(loops, choice, file)), file.toString()).assemble();
    }

    @Override
    public List<CourseListing> listCourses(Path file) {
        MapData data = data(file);
        Optional<MapElement> own = CourseReader.findRoot(data);
        if (own.isPresent()) {
            Course course = CourseReader.read(file.toString(), data, own.get()).course();
            int unsurveyed = (int)
                    course.holes().stream().filter(h -> !h.survey().complete()).count();
            return List.of(new CourseListing(
                    1, course.name(), own.get().id(), course.holes().size(), unsurveyed));
        }
        List<CourseListing> out = new ArrayList<>();
        for (CourseLoop loop : loops(data)) {
            out.add(new CourseListing(
                    out.size() + 1,
                    loop.name(),
                    loop.candidate().element(),
                    loop.holes().size(),
                    loop.holes().size()));
        }
        return out;
    }

    private static List<CourseLoop> loops(MapData data) {
        return CourseFinder.find(data.elements()).stream()
                .flatMap(c -> LoopFinder.find(c, data).stream())
                .toList();
    }

    @Override
    public void write(Course course, Path target) {
        WholeFile.write(target, CourseWriter.toGeoJson(course));
    }

    private static MapData data(Path file) {
        return switch (FileKind.of(file)) {
            case OSM_XML -> OsmGraphReader.read(new OsmXmlSource(file), file.toString());
            case OSM_PBF -> OsmGraphReader.read(new OsmPbfSource(file), file.toString());
            case OVERPASS_JSON -> OsmGraphReader.read(new OverpassSource(file), file.toString());
            case GEOJSON -> GeoJsonReader.read(file);
        };
    }

    private static int chosen(List<CourseLoop> all, CourseChoice choice, Path file) {
        if (all.isEmpty()) {
            throw new UserFault(file + " holds no golf hole and no green; choose a file that contains the course.");
        }
        List<Integer> fits = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            boolean named = choice.name().isEmpty()
                    || all.get(i)
                            .name()
                            .toLowerCase(Locale.ROOT)
                            .contains(choice.name().get().toLowerCase(Locale.ROOT));
            boolean numbered = choice.number().isEmpty() || choice.number().getAsInt() == i + 1;
            if (named && numbered) {
                fits.add(i);
            }
        }
        if (fits.size() == 1) {
            return fits.get(0);
        }
        String list = all.stream()
                .map(c -> (all.indexOf(c) + 1) + " \"" + c.name() + "\"")
                .collect(Collectors.joining(", "));
        throw new UserFault(
                fits.isEmpty()
                        ? file + " has no such course; it holds " + list + "."
                        : file + " holds several courses: " + list + "; choose one with --name or --number.");
    }
}
