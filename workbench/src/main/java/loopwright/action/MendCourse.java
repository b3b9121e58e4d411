package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** Changes the areas of a course as they were drawn: new shapes, other kinds, cuts, removals. */
public final class MendCourse {
    private MendCourse() {}

    /**
     * An area as it is to be.
     *
     * @param polygons for each its outer ring and then its holes
     * @param numbers what is known of it, as {@link AreaNumbers} tells; empty: of an area that keeps its kind all stays
     */
    public record Drawn(
            String id, AreaKind kind, List<List<List<Place>>> polygons, Optional<Map<String, Double>> numbers) {
        public Drawn {
            polygons = List.copyOf(polygons);
            numbers = numbers.map(Map::copyOf);
        }

        /** A shape alone. */
        public Drawn(String id, AreaKind kind, List<List<List<Place>>> polygons) {
            this(id, kind, polygons, Optional.empty());
        }
    }

    /**
     * What was changed since the course was read.
     *
     * @param drawn areas that are new or have another shape or kind
     * @param removed ids of areas that are gone
     * @param cuts shapes that are cut out of every area of their kind
     */
    public record Changes(List<Drawn> drawn, List<String> removed, List<Drawn> cuts) {
        public Changes {
            drawn = List.copyOf(drawn);
            removed = List.copyOf(removed);
            cuts = List.copyOf(cuts);
        }
    }

    public static Course apply(Course course, Changes changes) {
        Map<String, Area> areas = new TreeMap<>();
        List<String> order = new ArrayList<>();
        for (Area a : course.areas()) {
            areas.put(a.id(), a);
            order.add(a.id());
        }
        for (Drawn d : changes.drawn()) {
            if (!areas.containsKey(d.id())) {
                order.add(d.id());
            }
            areas.put(d.id(), area(d, Optional.ofNullable(areas.get(d.id()))));
        }
        changes.removed().forEach(areas::remove);
        for (Drawn cut : changes.cuts()) {
            cut(areas, cut.kind(), region(cut));
        }
        List<Area> after =
                order.stream().filter(areas::containsKey).map(areas::get).toList();
        return course.withAreas(after).withHoles(holes(course, areas));
    }

    /**
     * The course with another border.
     *
     * @param polygons of what is in bounds; none: no out of bounds is known
     */
    public static Course withBoundary(Course course, List<List<List<Place>>> polygons) {
        return course.withBoundary(polygons.isEmpty() ? Optional.empty() : Optional.of(region("the border", polygons)));
    }

    /** The area along a line, with flat ends. */
    public static Region strip(List<Place> line, double widthMetres) {
        if (line.size() < 2 || !(new Line(line).lengthMetres() > 1)) {
            throw new UserFault("A line needs a beginning and an end that lie apart; draw it again.");
        }
        return Region.strip(new Line(line), widthMetres / 2);
    }

    private static Area area(Drawn d, Optional<Area> before) {
        Region region = region(d);
        Area shaped = before.filter(b -> b.kind() == d.kind())
                .map(b -> new Area(b.id(), b.kind(), region, b.notFoundChance(), b.survey()))
                .orElseGet(() -> Area.of(d.id(), d.kind(), region));
        return d.numbers().map(n -> AreaNumbers.set(shaped, n)).orElse(shaped);
    }

    private static void cut(Map<String, Area> areas, AreaKind kind, Region out) {
        for (Area a : List.copyOf(areas.values())) {
            if (a.kind() == kind && a.region().intersects(out)) {
                Optional<Region> left = a.region().without(out);
                areas.remove(a.id());
                left.ifPresent(r -> areas.put(a.id(), new Area(a.id(), a.kind(), r, a.notFoundChance(), a.survey())));
            }
        }
    }

    /** Holes follow the greens they are played to. */
    private static List<Hole> holes(Course course, Map<String, Area> after) {
        List<Hole> out = new ArrayList<>();
        for (Hole hole : course.holes()) {
            Optional<Area> before = course.areas().stream()
                    .filter(a -> a.kind() == AreaKind.GREEN)
                    .filter(a -> a.region().contains(hole.holeLocation())
                            && hole.green().contains(a.region().insidePlace()))
                    .findFirst();
            if (before.isEmpty()) {
                out.add(hole);
                continue;
            }
            Area now = after.get(before.get().id());
            if (now == null || now.kind() != AreaKind.GREEN) {
                throw new UserFault("Hole " + hole.number() + " is played to the green "
                        + before.get().id() + "; draw its new shape instead of removing it.");
            }
            out.add(now.region() == before.get().region() ? hole : withGreen(hole, now.region()));
        }
        return out;
    }

    private static Hole withGreen(Hole hole, Region green) {
        Place place = green.contains(hole.holeLocation()) ? hole.holeLocation() : green.insidePlace();
        return new Hole(
                hole.number(),
                hole.par(),
                hole.parSource(),
                hole.strokeIndex(),
                hole.line(),
                green,
                false,
                place,
                hole.survey());
    }

    private static Region region(Drawn d) {
        return region(d.id(), d.polygons());
    }

    private static Region region(String what, List<List<List<Place>>> polygons) {
        for (List<List<Place>> polygon : polygons) {
            if (polygon.isEmpty() || !Region.isSound(polygon.get(0), polygon.subList(1, polygon.size()))) {
                throw new UserFault("The shape drawn for " + what
                        + " crosses itself or has fewer than three corners; move its corners and save again.");
            }
        }
        try {
            return Region.ofPolygons(polygons);
        } catch (IllegalArgumentException e) {
            throw new UserFault("The shape drawn for " + what + " cannot be used: " + e.getMessage() + ".", e);
        }
    }
}
