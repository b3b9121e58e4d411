package loopwright.adapter.osm;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.course.AreaKind;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** Sorts the golf of a file into courses: by borders, and what lies outside every border by nearness. */
final class CourseFinder {
    /** How a border is read: always as an area; the kind itself is not used. */
    static final AreaReading BORDER = new AreaReading(Optional.of(AreaKind.ROUGH), true, false);

    /** Golf this close outside a border still belongs to it; borders are drawn with a rough hand. */
    private static final double BORDER_SLACK_METRES = 60;
    /** No course reaches further from its border's first point than this; saves exact tests. */
    private static final double FAR_DEGREES = 0.1;

    private CourseFinder() {}

    static List<CourseCandidate> find(List<MapElement> elements) {
        List<MapElement> borders = new ArrayList<>();
        List<MapElement> golf = new ArrayList<>();
        for (MapElement e : elements) {
            if (e.golf()) {
                golf.add(e);
            } else if (e.has("leisure", "golf_course") && !(e.shape() instanceof MapShape.Point)) {
                borders.add(e);
            }
        }
        Map<MapElement, List<MapElement>> byBorder = new LinkedHashMap<>();
        borders.forEach(b -> byBorder.put(b, new ArrayList<>()));
        List<MapElement> outside = new ArrayList<>(golf);
        for (Border border : sortedBySize(borders)) {
            List<MapElement> inside = byBorder.getOrDefault(border.element, new ArrayList<>());
            outside.removeIf(e -> border.holds(e) && inside.add(e));
        }
        List<CourseCandidate> out = new ArrayList<>();
        byBorder.forEach((border, inside) -> out.add(new CourseCandidate(
                border.find("name").orElse("unnamed course " + border.id()),
                border.id(),
                Optional.of(border),
                inside)));
        out.addAll(clusters(outside, elements));
        out.removeIf(c -> c.holeLines() == 0 && c.greens() == 0);
        return out;
    }

    /** The smallest first; of a border drawn twice, the one with a name. */
    private static List<Border> sortedBySize(List<MapElement> borders) {
        List<Border> out = new ArrayList<>();
        for (MapElement b : borders) {
            LocalFrame frame = new LocalFrame(b.shape().anchor());
            new ShapeMender(frame, new ArrayList<>())
                    .toSite(b, BORDER)
                    .ifPresent(s -> out.add(new Border(b, frame, s.getRegion())));
        }
        out.sort(Comparator.comparingDouble((Border b) -> b.region.areaSquareMetres())
                .thenComparing(b -> b.element.find("name").isEmpty()));
        return out;
    }

    /** Golf outside every border, in groups whose parts lie within about half a kilometre of each other. */
    private static List<CourseCandidate> clusters(List<MapElement> golf, List<MapElement> all) {
        Map<Long, List<MapElement>> tiles = new HashMap<>();
        golf.forEach(e -> tiles.computeIfAbsent(tile(e.shape().anchor()), t -> new ArrayList<>())
                .add(e));
        Set<Long> seen = new HashSet<>();
        List<CourseCandidate> out = new ArrayList<>();
        for (MapElement first : golf) {
            long start = tile(first.shape().anchor());
            if (seen.add(start)) {
                Set<MapElement> found = Collections.newSetFromMap(new IdentityHashMap<>());
                flood(start, tiles, seen, found);
                List<MapElement> group = golf.stream().filter(found::contains).toList();
                out.add(new CourseCandidate(
                        clusterName(group, all), group.get(0).id(), Optional.empty(), group));
            }
        }
        return out;
    }

    private static void flood(long start, Map<Long, List<MapElement>> tiles, Set<Long> seen, Set<MapElement> group) {
        Deque<Long> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            long tile = open.removeFirst();
            group.addAll(tiles.getOrDefault(tile, List.of()));
            for (long step : new long[] {-1, 0, 1}) {
                for (long row : new long[] {-1_000_000, 0, 1_000_000}) {
                    long next = tile + step + row;
                    if (tiles.containsKey(next) && seen.add(next)) {
                        open.add(next);
                    }
                }
            }
        }
    }

    private static long tile(LatLon p) {
        return (long) Math.floor(p.latitudeDegrees() * 200) * 1_000_000 + (long) Math.floor(p.longitudeDegrees() * 200);
    }

    /** A golf course mapped as a point gives its name to the group it stands in. */
    private static String clusterName(List<MapElement> group, List<MapElement> all) {
        LatLon at = group.get(0).shape().anchor();
        return all.stream()
                .filter(e -> e.has("leisure", "golf_course") && e.shape() instanceof MapShape.Point)
                .filter(e -> group.stream().anyMatch(g -> near(g, e)))
                .flatMap(e -> e.find("name").stream())
                .findFirst()
                .orElse(String.format(
                        Locale.ROOT, "unnamed course at %.4f, %.4f", at.latitudeDegrees(), at.longitudeDegrees()));
    }

    private static boolean near(MapElement a, MapElement b) {
        LatLon p = a.shape().anchor();
        LatLon q = b.shape().anchor();
        return Math.hypot(p.latitudeDegrees() - q.latitudeDegrees(), p.longitudeDegrees() - q.longitudeDegrees())
                < 0.005;
    }

    private record Border(MapElement element, LocalFrame frame, Region region) {
        boolean holds(MapElement e) {
            LatLon a = element.shape().anchor();
            LatLon p = e.shape().anchor();
            if (Math.abs(a.latitudeDegrees() - p.latitudeDegrees()) > FAR_DEGREES
                    || Math.abs(a.longitudeDegrees() - p.longitudeDegrees()) > FAR_DEGREES) {
                return false;
            }
            Place place = frame.toPlace(p);
            return region.distanceTo(place) <= BORDER_SLACK_METRES;
        }
    }
}
