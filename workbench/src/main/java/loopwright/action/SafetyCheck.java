package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Predicate;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.geo.Box;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.Surface;

/**
 * How often a shot finishes where people may be: on or by a road, a path or a building, on or by the tee or green of another
 * hole, beyond the boundary, or across a road. It knows what the map shows and nobody else; it warns, and never calls a shot
 * safe.
 */
final class SafetyCheck {
    /** A tee of another hole that the map does not draw is taken as a circle of this radius, metres: assumed. */
    private static final double TEE_RADIUS_METRES = 8;

    /**
     * One in two hundred: assumed; low, since the map does not know who is there, a round has some forty such shots, and the
     * chance is read off some four hundred finishes.
     */
    static final double WORTH_A_WARNING = 0.005;
    /**
     * On a path it is one in twenty: assumed. Most paths of a course are its players' own and run along every hole; at one in two
     * hundred more than every second shot of a real course with paths was warned of, and the warnings that matter drowned.
     */
    static final double WORTH_A_WARNING_ON_A_PATH = 0.05;

    private static final String ON_A_PATH = "on a path";
    /** Half the width of a ball's way over the ground. */
    private static final double LINE_METRES = 0.1;
    /** Mapped edges are uncertain by 4 yd, and people stand beside as well as on: assumed. */
    private static final double BESIDE_METRES = 4;

    private final CourseMap map;
    private final List<Ground> grounds = new ArrayList<>();
    private final List<Region> roads = new ArrayList<>();

    private record Ground(String name, Box box, Predicate<Place> holds) {
        static Ground of(String name, Region region) {
            return new Ground(
                    "on or by " + name, region.box().grown(BESIDE_METRES), p -> region.distanceTo(p) <= BESIDE_METRES);
        }
    }

    SafetyCheck(CourseMap map) {
        this.map = map;
        Course course = map.course();
        for (Area area : course.areas()) {
            switch (area.kind()) {
                case ROAD -> {
                    grounds.add(Ground.of("a road", area.region()));
                    roads.add(area.region());
                }
                case BUILDING -> grounds.add(Ground.of("a building", area.region()));
                case PATH -> grounds.add(new Ground(ON_A_PATH, area.region().box(), area.region()::contains));
                default -> {
                    // nothing that people stand on more than elsewhere
                }
            }
        }
        course.holes().stream().filter(h -> h.number() != map.hole().number()).forEach(this::addOther);
    }

    private void addOther(Hole other) {
        grounds.add(Ground.of("the green of hole " + other.number(), other.green()));
        String tee = "a tee of hole " + other.number();
        for (var set : map.course().teeSets()) {
            Place place = set.getPlace(other.number()).place();
            grounds.add(new Ground(
                    "on or by " + tee,
                    Box.around(List.of(place)).grown(TEE_RADIUS_METRES),
                    p -> p.distanceTo(place) <= TEE_RADIUS_METRES));
        }
        for (Area area : map.course().areas()) {
            boolean others = area.kind() == AreaKind.TEE
                    && map.course().teeSets().stream()
                            .anyMatch(s -> area.region()
                                    .contains(s.getPlace(other.number()).place()));
            if (others) {
                grounds.add(Ground.of(tee, area.region()));
            }
        }
    }

    /** The chance of each kind of finish of a ball, from equally likely ones; greatest first, none that never happened. */
    List<RoundPlan.Risk> of(Place ball, List<Place> finishes) {
        List<Region> reached = roadsBeside(ball, finishes);
        TreeMap<String, Integer> count = new TreeMap<>();
        for (Place p : finishes) {
            if (reached.stream().anyMatch(road -> isAcross(road, ball, p))) {
                count.merge("across a road", 1, Integer::sum);
            }
            if (map.surfaceAt(p) == Surface.OUT_OF_BOUNDS) {
                count.merge("beyond the boundary", 1, Integer::sum);
            }
            grounds.stream()
                    .filter(g -> g.box.contains(p.x(), p.y()) && g.holds.test(p))
                    .map(Ground::name)
                    .distinct()
                    .forEach(name -> count.merge(name, 1, Integer::sum));
        }
        return count.entrySet().stream()
                .map(e -> new RoundPlan.Risk(
                        e.getKey(),
                        (double) e.getValue() / finishes.size(),
                        e.getKey().equals(ON_A_PATH) ? WORTH_A_WARNING_ON_A_PATH : WORTH_A_WARNING))
                .sorted((a, b) -> Double.compare(b.chance(), a.chance()))
                .toList();
    }

    private List<Region> roadsBeside(Place ball, List<Place> finishes) {
        List<Place> all = new ArrayList<>(finishes);
        all.add(ball);
        Box box = Box.around(all);
        return roads.stream().filter(r -> r.box().intersects(box)).toList();
    }

    /** True if the ball came to rest behind the road, not on it. */
    private static boolean isAcross(Region road, Place ball, Place finish) {
        return !road.contains(finish)
                && !road.contains(ball)
                && ball.distanceTo(finish) > LINE_METRES
                && Region.strip(new Line(List.of(ball, finish)), LINE_METRES).intersects(road);
    }
}
