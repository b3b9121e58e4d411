package loopwright.action;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.course.Area;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.SightLine;
import loopwright.course.SkylineTarget;
import loopwright.course.TreeCover;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.units.Distance;

/** Something to aim at that can be seen from the ball, in words: "the right edge of the left bunker". */
final class Landmarks {
    /** A landmark further off the aim than this is no help: one and a half degrees, about five yards at 200. */
    private static final double OFF_AIM_RADIANS = Math.toRadians(1.5);
    /** A landmark up to so far off the aim is told with the paces between: three fingers at arm's length, assumed. */
    private static final double NEAR_RADIANS = Math.toRadians(6);
    /** Two objects that stand nearer to each other than this, seen from the ball, are not told apart by distance. */
    private static final double APART_METRES = 10;
    /** What lies further off the aim is not looked at. */
    private static final double VIEW_RADIANS = Math.toRadians(30);
    /** Further off the aim than this a blind line is not told by a skyline target. */
    private static final double BESIDE_RADIANS = Math.toRadians(10);
    /** How far past the end of the shot a landmark may stand. */
    private static final double BEYOND_METRES = 220;
    /** What has to be seen of an aim: the flag, or a player who stands there down to his hips; heights of coarse maps are
     * off by half a metre and more. Assumed. */
    private static final double FLAG_METRES = 2;

    private static final double TURF_METRES = 1;
    /** A building is seen by its upper half: assumed. */
    private static final double BUILDING_METRES = 4;

    private final CourseMap map;
    private final Hole hole;
    private final SightLine sight;

    Landmarks(CourseMap map) {
        this.map = map;
        hole = map.hole();
        sight = new SightLine(map.course(), map);
    }

    /** What to aim at; {@code blind} if the aim itself cannot be seen, and the words then name a line over what can. */
    record Line(String words, boolean blind) {}

    /** A thing by its name: "left bunker", or "bunker at 214 yd" where several stand on its side. */
    private record Thing(String name, boolean byDistance) {}

    /** The visible landmark for one line of aim that takes the fewest words, and of equals the nearest. */
    private final class Best {
        private final Place from;
        private final double bearing;
        private double least = Double.POSITIVE_INFINITY;
        private String words = "";

        Best(Place from, double bearing) {
            this.from = from;
            this.bearing = bearing;
        }

        /** A landmark of its own: {@code at} if it is aimed at, else so many paces left or right of {@code beside}. */
        void offer(Place place, double seenMetres, String at, String beside, boolean byDistance) {
            double turn = turn(from, place, bearing);
            double cost = cost(Math.abs(turn), byDistance);
            if (Math.abs(turn) < NEAR_RADIANS && cost < least && sight.sees(from, place, seenMetres)) {
                least = cost;
                words = Math.abs(turn) < OFF_AIM_RADIANS ? at : paces(from, place, turn) + beside;
            }
        }

        /** What is aimed at comes before what is aimed beside, a plain name before one with a distance. */
        private static double cost(double off, boolean byDistance) {
            double longer = byDistance ? OFF_AIM_RADIANS : 0;
            return off < OFF_AIM_RADIANS ? off + longer : off + NEAR_RADIANS + 2 * longer;
        }
    }

    /** "20 paces right": of a place that is seen so far to the side of the aim, - left. */
    private static String paces(Place from, Place place, double turn) {
        double right = -from.distanceTo(place) * Math.sin(turn) / Distance.METRES_PER_YARD;
        return String.format(Locale.ROOT, "%.0f paces %s", Math.abs(right), right < 0 ? "left" : "right");
    }

    /** The line of a shot; {@code offsetMetres} says how far beside the line of play its aim lies. */
    Line line(Place from, Place aim, double offsetMetres) {
        String landmark = landmark(from, aim);
        boolean atFlag = aim.distanceTo(hole.holeLocation()) < from.distanceTo(aim) / 4;
        Optional<SightLine.Obstacle> hidden = atFlag
                ? sight.findObstacle(from, hole.holeLocation(), FLAG_METRES)
                : sight.findObstacle(from, aim, TURF_METRES);
        if (hidden.isEmpty()) {
            return new Line(landmark.isEmpty() ? beside(offsetMetres) : landmark, false);
        }
        return new Line(landmark.isEmpty() ? over(from, aim, hidden.get()) : landmark, true);
    }

    private String landmark(Place from, Place aim) {
        double bearing = from.bearingTo(aim);
        double reach = from.distanceTo(aim);
        Best best = new Best(from, bearing);
        for (SkylineTarget target : hole.survey().notes().skylineTargets()) {
            if (Math.abs(turn(from, target.place(), bearing)) < OFF_AIM_RADIANS) {
                return target.name();
            }
        }
        if (from.distanceTo(hole.holeLocation()) <= reach + BEYOND_METRES) {
            best.offer(hole.holeLocation(), FLAG_METRES, "the hole", " of the hole", false);
            edges(best, hole.green(), TURF_METRES, new Thing("green", false));
        }
        List<Area> inView = map.course().areas().stream()
                .filter(a -> isInView(a, from, bearing, reach))
                .toList();
        for (Area area : inView) {
            name(area, from, inView).ifPresent(what -> edges(best, area.region(), seenMetres(area), what));
        }
        return best.words;
    }

    private static boolean isInView(Area area, Place from, double bearing, double reach) {
        Place centre = area.region().centre();
        double distance = from.distanceTo(centre);
        return !words(area).isEmpty()
                && distance > 0.5 * reach
                && distance < reach + BEYOND_METRES
                && Math.abs(turn(from, centre, bearing)) < VIEW_RADIANS;
    }

    /** Plain where nothing like it stands on its side, else with its distance, if that tells it apart. */
    private Optional<Thing> name(Area area, Place from, List<Area> inView) {
        String plain = sided(area, from);
        double distance = from.distanceTo(area.region().centre());
        List<Area> alike = inView.stream()
                .filter(a -> !a.equals(area) && words(a).equals(words(area)))
                .toList();
        if (alike.stream().noneMatch(a -> sided(a, from).equals(plain))) {
            return Optional.of(new Thing(plain, false));
        }
        return alike.stream().anyMatch(a -> Math.abs(from.distanceTo(a.region().centre()) - distance) < APART_METRES)
                ? Optional.empty()
                : Optional.of(new Thing(
                        String.format(
                                Locale.ROOT,
                                "%s at %.0f yd",
                                words(area),
                                Distance.ofMetres(distance).yards()),
                        true));
    }

    private String sided(Area area, Place from) {
        double side = turn(from, area.region().centre(), from.bearingTo(hole.holeLocation()));
        return (side < 0 ? "left " : "right ") + words(area);
    }

    private static String words(Area area) {
        return switch (area.kind()) {
            case BUNKER -> "bunker";
            case YELLOW_PENALTY_AREA, RED_PENALTY_AREA -> "penalty area";
            case WOODS -> "wood";
            case BUILDING -> "building";
            default -> "";
        };
    }

    private static double seenMetres(Area area) {
        return switch (area.kind()) {
            case WOODS -> area.survey().trees().orElse(TreeCover.WOODS_DEFAULT).heightMetres();
            case BUILDING -> BUILDING_METRES;
            default -> TURF_METRES;
        };
    }

    private static void edges(Best best, Region region, double seenMetres, Thing thing) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        Place left = region.centre();
        Place right = left;
        for (List<List<Place>> polygon : region.polygons()) {
            for (Place corner : polygon.get(0)) {
                double t = turn(best.from, corner, best.bearing);
                left = t < low ? corner : left;
                right = t > high ? corner : right;
                low = Math.min(low, t);
                high = Math.max(high, t);
            }
        }
        if (high - low > Math.PI / 2) {
            return;
        }
        String what = " of the " + thing.name;
        String leftEdge = "the left edge" + what;
        String rightEdge = "the right edge" + what;
        // beside the thing its name is enough, inside it the edge is needed
        best.offer(left, seenMetres, leftEdge, low > 0 ? what : " of " + leftEdge, thing.byDistance);
        best.offer(right, seenMetres, rightEdge, high < 0 ? what : " of " + rightEdge, thing.byDistance);
        if (high - low < 4 * OFF_AIM_RADIANS) {
            best.offer(region.centre(), seenMetres, "the middle" + what, " of the middle" + what, thing.byDistance);
        }
    }

    /** A line for an aim that is hidden: beside the nearest skyline target, else over what hides it, by its bearing. */
    private String over(Place from, Place aim, SightLine.Obstacle hidden) {
        double bearing = from.bearingTo(aim);
        double least = BESIDE_RADIANS;
        String words = "";
        for (SkylineTarget target : hole.survey().notes().skylineTargets()) {
            double turn = -turn(from, target.place(), bearing);
            if (Math.abs(turn) < least) {
                least = Math.abs(turn);
                words = String.format(
                        Locale.ROOT,
                        "%.0f degrees %s of %s",
                        Math.toDegrees(Math.abs(turn)),
                        turn < 0 ? "left" : "right",
                        target.name());
            }
        }
        if (!words.isEmpty()) {
            return words;
        }
        return String.format(
                Locale.ROOT,
                "over the %s %.0f yd ahead, bearing %03.0f",
                hidden.trees() ? "trees" : "rise",
                Distance.ofMetres(from.distanceTo(hidden.place())).yards(),
                Math.toDegrees(bearing) < 0 ? Math.toDegrees(bearing) + 360 : Math.toDegrees(bearing));
    }

    /** Bearing of a place relative to the aim, - left, within half a turn. */
    private static double turn(Place from, Place to, double bearing) {
        double turn = from.bearingTo(to) - bearing;
        return turn - 2 * Math.PI * Math.rint(turn / (2 * Math.PI));
    }

    private static String beside(double offsetMetres) {
        double paces = Math.abs(offsetMetres) / Distance.METRES_PER_YARD;
        return paces < 1
                ? "the line of play"
                : String.format(
                        Locale.ROOT, "%.0f paces %s of the line of play", paces, offsetMetres < 0 ? "left" : "right");
    }
}
