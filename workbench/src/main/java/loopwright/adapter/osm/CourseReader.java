package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import loopwright.action.CourseImport;
import loopwright.action.ImportRecord;
import loopwright.action.UserFault;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.AreaSurvey;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.course.Tree;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.HeightField;

/**
 * Reads what {@link CourseWriter} wrote, exactly, and with it features that a coach has drawn into the file since:
 * areas and trees with OSM keys only.
 */
final class CourseReader {
    private final String label;
    private final MapData data;
    private final MapElement root;
    private final LocalFrame frame;
    private final List<ImportRecord> records;
    private final Map<String, Region> greens = new LinkedHashMap<>();

    private CourseReader(String label, MapData data, MapElement root) {
        this.label = label;
        this.data = data;
        this.root = root;
        this.records = new ArrayList<>(data.records());
        this.frame = new LocalFrame(position(root, OwnKeys.ORIGIN));
    }

    static Optional<MapElement> findRoot(MapData data) {
        return data.elements().stream()
                .filter(e -> e.find(OwnKeys.VERSION).isPresent())
                .findFirst();
    }

    static CourseImport read(String label, MapData data, MapElement root) {
        if (!root.get(OwnKeys.VERSION).equals(String.valueOf(CourseWriter.VERSION))) {
            throw new UserFault(label + ", " + OwnKeys.VERSION + ": this file has version " + root.get(OwnKeys.VERSION)
                    + ", and only version " + CourseWriter.VERSION + " can be read.");
        }
        CourseReader reader = new CourseReader(label, data, root);
        try {
            return new CourseImport(reader.course(), reader.records);
        } catch (IllegalArgumentException e) {
            throw new UserFault(label + ": " + e.getMessage() + ".", e);
        }
    }

    private Course course() {
        Optional<Region> boundary =
                root.shape() instanceof MapShape.Polygons ? Optional.of(region(root)) : Optional.empty();
        List<Area> areas = areas();
        return new Course(
                root.get("name"),
                frame.origin(),
                boundary,
                root.get(OwnKeys.BOUNDARY).equals("guessed"),
                areas,
                trees(),
                holes(),
                teeSets(),
                root.find(OwnKeys.HEIGHTS).map(this::heights));
    }

    private HeightField heights(String packed) {
        try {
            return PackedHeights.unpack(packed);
        } catch (IllegalArgumentException x) {
            throw new UserFault(
                    label + ", " + OwnKeys.HEIGHTS + ": the packed heights are damaged (" + x.getMessage()
                            + "); read the course again with --terrain.",
                    x);
        }
    }

    private List<Area> areas() {
        List<Area> out = new ArrayList<>();
        ShapeMender mender = new ShapeMender(frame, records);
        for (MapElement e : data.elements()) {
            AreaReading reading = AreaReading.of(e);
            String own = e.get(OwnKeys.AREA);
            if (own.equals(OwnKeys.HOLE_GREEN_ONLY)) {
                greens.put(e.id(), region(e));
            } else if (!own.isEmpty()) {
                Region region = region(e);
                out.add(new Area(e.id(), kind(e, own), region, chance(e), surveyOf(e)));
                greens.put(e.id(), region);
            } else if (reading.isArea() && e.find(OwnKeys.TEE_SET).isEmpty()) {
                mender.toSite(e, reading)
                        .flatMap(SiteElement::region)
                        .ifPresent(r -> out.add(Area.of(e.id(), reading.kind().orElseThrow(), r)));
            }
        }
        return out;
    }

    private AreaKind kind(MapElement e, String name) {
        try {
            return AreaKind.valueOf(name.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException x) {
            throw fault(
                    e,
                    OwnKeys.AREA,
                    name,
                    "one of " + Arrays.toString(AreaKind.values()).toLowerCase(Locale.ROOT));
        }
    }

    private AreaSurvey surveyOf(MapElement e) {
        try {
            return new SurveyTags(frame).readArea(e);
        } catch (IllegalArgumentException x) {
            throw new UserFault(label + ", " + e.id() + ": " + x.getMessage() + ".", x);
        }
    }

    private double chance(MapElement e) {
        double value = number(e, OwnKeys.NOT_FOUND_CHANCE);
        if (!(value >= 0 && value <= 1)) {
            throw fault(e, OwnKeys.NOT_FOUND_CHANCE, e.get(OwnKeys.NOT_FOUND_CHANCE), "a chance from 0 to 1");
        }
        return value;
    }

    private List<Tree> trees() {
        List<Tree> out = new ArrayList<>();
        for (MapElement e : data.elements()) {
            if (e.has("natural", "tree") && e.shape() instanceof MapShape.Point) {
                out.addAll(TreeReading.read(e, frame, records));
            }
        }
        return out;
    }

    private List<Hole> holes() {
        List<Hole> out = new ArrayList<>();
        for (MapElement e : data.elements()) {
            if (e.golf("hole")) {
                out.add(hole(e));
            }
        }
        if (out.isEmpty()) {
            throw new UserFault(label + " has no golf=hole feature.");
        }
        return out;
    }

    private Hole hole(MapElement e) {
        if (!(e.shape() instanceof MapShape.Path path)) {
            throw new UserFault(label + ", " + e.id() + ": a hole must be a LineString from tee to green.");
        }
        Region green = greens.get(e.get(OwnKeys.GREEN));
        if (green == null) {
            throw fault(e, OwnKeys.GREEN, e.get(OwnKeys.GREEN), "the id of a green in this file");
        }
        Place at = frame.toPlace(position(e, OwnKeys.HOLE_LOCATION));
        if (!green.contains(at)) {
            // nine decimals may put a hole on the very edge of its green a tenth of a millimetre outside
            if (green.distanceTo(at) > 0.001) {
                throw fault(e, OwnKeys.HOLE_LOCATION, e.get(OwnKeys.HOLE_LOCATION), "a position on its green");
            }
            at = green.insidePlace();
        }
        try {
            OptionalInt index = OsmNumbers.wholeNumber(e.get("handicap"));
            return new Hole(
                    whole(e, "ref"),
                    whole(e, "par"),
                    e.get(OwnKeys.PAR_SOURCE),
                    index,
                    new Line(path.points().stream().map(frame::toPlace).toList()),
                    green,
                    e.get(OwnKeys.GREEN_ASSUMED).equals("true"),
                    at,
                    new SurveyTags(frame).read(e));
        } catch (IllegalArgumentException x) {
            throw new UserFault(label + ", " + e.id() + ": " + x.getMessage() + ".", x);
        }
    }

    private List<TeeSet> teeSets() {
        Map<String, Map<Integer, TeePlace>> places = new LinkedHashMap<>();
        OwnValues.texts(root.get(OwnKeys.TEE_SETS)).forEach(name -> places.put(name, new TreeMap<>()));
        for (MapElement e : data.elements()) {
            e.find(OwnKeys.TEE_SET).ifPresent(set -> {
                Map<Integer, TeePlace> own = places.get(set);
                if (own == null) {
                    throw fault(e, OwnKeys.TEE_SET, set, "a set that " + OwnKeys.TEE_SETS + " names");
                }
                Place at = frame.toPlace(e.shape().anchor());
                own.put(whole(e, "ref"), new TeePlace(at, e.find(OwnKeys.STANDS_IN)));
            });
        }
        List<TeeSet> out = new ArrayList<>();
        places.forEach((name, own) -> out.add(new TeeSet(name, out.size(), own)));
        if (out.isEmpty()) {
            throw fault(root, OwnKeys.TEE_SETS, root.get(OwnKeys.TEE_SETS), "the names of the sets, longest first");
        }
        return out;
    }

    private Region region(MapElement e) {
        if (!(e.shape() instanceof MapShape.Polygons polygons)) {
            throw new UserFault(label + ", " + e.id() + ": an area must be a Polygon or MultiPolygon.");
        }
        List<List<List<Place>>> parts = new ArrayList<>();
        for (MapShape.Rings rings : polygons.parts()) {
            List<List<Place>> part = new ArrayList<>();
            part.add(rings.outer().stream().map(frame::toPlace).toList());
            rings.holes().forEach(h -> part.add(h.stream().map(frame::toPlace).toList()));
            parts.add(part);
        }
        try {
            return Region.ofPolygons(parts);
        } catch (IllegalArgumentException x) {
            throw new UserFault(label + ", " + e.id() + ": " + x.getMessage() + ".", x);
        }
    }

    private LatLon position(MapElement e, String key) {
        double[] pair = OwnValues.numbers(e.get(key));
        if (pair.length != 2 || !(Math.abs(pair[0]) <= 180) || !(Math.abs(pair[1]) <= 90)) {
            throw fault(e, key, e.get(key), "a position as [longitude, latitude]");
        }
        return new LatLon(pair[1], pair[0]);
    }

    private int whole(MapElement e, String key) {
        return OsmNumbers.wholeNumber(e.get(key)).orElseThrow(() -> fault(e, key, e.get(key), "a whole number"));
    }

    private double number(MapElement e, String key) {
        double[] one = OwnValues.numbers("[" + e.get(key) + "]");
        if (one.length != 1) {
            throw fault(e, key, e.get(key), "a number");
        }
        return one[0];
    }

    private UserFault fault(MapElement e, String key, String value, String wanted) {
        return new UserFault(label + ", " + e.id() + ", " + key + ": \"" + value + "\" is not " + wanted + ".");
    }
}
