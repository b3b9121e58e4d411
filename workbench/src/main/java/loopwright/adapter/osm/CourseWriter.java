package loopwright.adapter.osm;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.course.Tree;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.geo.Region;

/**
 * Writes a course as GeoJSON: OSM's keys for every map program, and beside them our own, prefixed "loopwright:", from
 * which {@link CourseReader} builds the same course again. Coordinates have nine decimals, a tenth of a millimetre,
 * so that reading and writing again gives the same bytes.
 */
final class CourseWriter {
    static final int VERSION = 1;

    private final ObjectMapper mapper = new ObjectMapper();
    private final List<ObjectNode> features = new ArrayList<>();
    private final Course course;
    private final LocalFrame frame;

    private CourseWriter(Course course) {
        this.course = course;
        this.frame = new LocalFrame(course.origin());
    }

    /** The whole file; one feature a line. */
    static String toGeoJson(Course course) {
        CourseWriter writer = new CourseWriter(course);
        writer.courseFeature();
        course.areas().forEach(writer::area);
        course.trees().forEach(writer::tree);
        course.holes().forEach(writer::hole);
        course.teeSets().forEach(writer::teeSet);
        StringBuilder out = new StringBuilder("{\"type\":\"FeatureCollection\",\"features\":[\n");
        for (int i = 0; i < writer.features.size(); i++) {
            out.append(writer.features.get(i)).append(i + 1 < writer.features.size() ? ",\n" : "\n");
        }
        return out.append("]}\n").toString();
    }

    private ObjectNode feature(String id, Map<String, ?> properties, ObjectNode geometry) {
        ObjectNode feature = mapper.createObjectNode();
        feature.put("type", "Feature").put("id", id);
        feature.set("properties", mapper.valueToTree(properties));
        feature.set("geometry", geometry);
        features.add(feature);
        return feature;
    }

    private void courseFeature() {
        Map<String, Object> p = new TreeMap<>();
        p.put("leisure", "golf_course");
        p.put("name", course.name());
        p.put(OwnKeys.VERSION, VERSION);
        p.put(
                OwnKeys.ORIGIN,
                List.of(course.origin().longitudeDegrees(), course.origin().latitudeDegrees()));
        p.put(OwnKeys.BOUNDARY, course.boundaryGuessed() ? "guessed" : "confirmed");
        p.put(OwnKeys.TEE_SETS, course.teeSets().stream().map(TeeSet::name).toList());
        course.heights().ifPresent(h -> p.put(OwnKeys.HEIGHTS, PackedHeights.pack(h)));
        ObjectNode geometry = course.boundary().map(this::polygons).orElseGet(() -> point(course.origin()));
        feature("course", p, geometry);
    }

    private void area(Area area) {
        Map<String, Object> p = new TreeMap<>(osmTags(area.kind()));
        p.put(OwnKeys.AREA, area.kind().name().toLowerCase(Locale.ROOT));
        p.put(OwnKeys.NOT_FOUND_CHANCE, area.notFoundChance());
        SurveyTags.write(area.survey(), p);
        feature(area.id(), p, polygons(area.region()));
    }

    /** The nearest tags of OSM, for map programs; our own key decides on reading. */
    static Map<String, String> osmTags(AreaKind kind) {
        return switch (kind) {
            case GREEN -> Map.of("golf", "green");
            case BUNKER -> Map.of("golf", "bunker", "natural", "sand");
            case TEE -> Map.of("golf", "tee");
            case YELLOW_PENALTY_AREA -> Map.of("golf", "water_hazard");
            case RED_PENALTY_AREA -> Map.of("golf", "lateral_water_hazard");
            case OUT_OF_BOUNDS -> Map.of("golf", "out_of_bounds");
            case FAIRWAY -> Map.of("golf", "fairway");
            case WASTE_AREA -> Map.of("natural", "sand");
            case WOODS -> Map.of("natural", "wood");
            case DEEP_ROUGH -> Map.of("natural", "scrub");
            case ROUGH -> Map.of("golf", "rough");
            case PATH -> Map.of("highway", "path", "area", "yes");
            case ROAD -> Map.of("highway", "service", "area", "yes");
            case BUILDING -> Map.of("building", "yes");
            case PRACTICE -> Map.of("golf", "practice");
        };
    }

    private void tree(Tree tree) {
        Map<String, Object> p = new TreeMap<>();
        p.put("natural", "tree");
        p.put("height", tree.heightMetres());
        p.put("diameter_crown", tree.crownRadiusMetres() * 2);
        if (tree.gapMetres() != Tree.assumedGapMetres(tree.heightMetres()) || tree.density() != 1) {
            p.put(SurveyTags.BRANCH_GAP, tree.gapMetres());
            p.put(SurveyTags.TREE_DENSITY, tree.density());
        }
        feature(tree.id(), p, point(frame.toLatLon(tree.place())));
    }

    private void hole(Hole hole) {
        Map<String, Object> p = new TreeMap<>();
        p.put("golf", "hole");
        p.put("ref", String.valueOf(hole.number()));
        p.put("par", String.valueOf(hole.par()));
        hole.strokeIndex().ifPresent(i -> p.put("handicap", String.valueOf(i)));
        p.put(OwnKeys.PAR_SOURCE, hole.parSource());
        p.put(OwnKeys.GREEN, greenId(hole));
        p.put(OwnKeys.GREEN_ASSUMED, hole.greenAssumed());
        p.put(OwnKeys.HOLE_LOCATION, position(frame.toLatLon(hole.holeLocation())));
        new SurveyTags(frame).write(hole.survey(), p);
        ObjectNode line = mapper.createObjectNode().put("type", "LineString");
        line.set("coordinates", places(hole.line().places()));
        feature("hole/" + hole.number(), p, line);
    }

    /** The id of the hole's green among the areas; a green that is no area becomes a feature of its own. */
    private String greenId(Hole hole) {
        List<List<List<Place>>> wanted = hole.green().polygons();
        Optional<Area> area = course.areas().stream()
                .filter(a -> a.kind() == AreaKind.GREEN)
                .filter(a -> a.region() == hole.green() || a.region().polygons().equals(wanted))
                .findFirst();
        if (area.isPresent()) {
            return area.get().id();
        }
        String id = "green/" + hole.number();
        Map<String, Object> p = new TreeMap<>(osmTags(AreaKind.GREEN));
        p.put(OwnKeys.AREA, OwnKeys.HOLE_GREEN_ONLY);
        feature(id, p, polygons(hole.green()));
        return id;
    }

    private void teeSet(TeeSet set) {
        new TreeMap<>(set.placeByHole()).forEach((hole, place) -> tee(set, hole, place));
    }

    private void tee(TeeSet set, int hole, TeePlace place) {
        Map<String, Object> p = new TreeMap<>();
        p.put("golf", "tee");
        p.put("ref", String.valueOf(hole));
        p.put("tee", set.name());
        p.put(OwnKeys.TEE_SET, set.name());
        place.standsIn().ifPresent(other -> p.put(OwnKeys.STANDS_IN, other));
        feature("tee/" + set.name() + "/" + hole, p, point(frame.toLatLon(place.place())));
    }

    private ObjectNode point(LatLon at) {
        ObjectNode out = mapper.createObjectNode().put("type", "Point");
        out.set("coordinates", position(at));
        return out;
    }

    private ObjectNode polygons(Region region) {
        ArrayNode all = mapper.createArrayNode();
        for (List<List<Place>> polygon : region.polygons()) {
            ArrayNode rings = mapper.createArrayNode();
            polygon.forEach(ring -> rings.add(places(ring)));
            all.add(rings);
        }
        ObjectNode out = mapper.createObjectNode();
        if (all.size() == 1) {
            out.put("type", "Polygon").set("coordinates", all.get(0));
        } else {
            out.put("type", "MultiPolygon").set("coordinates", all);
        }
        return out;
    }

    private ArrayNode places(List<Place> places) {
        ArrayNode out = mapper.createArrayNode();
        places.forEach(p -> out.add(position(frame.toLatLon(p))));
        return out;
    }

    private ArrayNode position(LatLon at) {
        return mapper.createArrayNode().add(rounded(at.longitudeDegrees())).add(rounded(at.latitudeDegrees()));
    }

    static double rounded(double degrees) {
        return Math.round(degrees * 1e9) / 1e9;
    }
}
