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

    /** The visible landmark nearest to one line of aim. */
    private final class Best {
        private final Place from;
        private final double bearing;
        private double off = NEAR_RADIANS;
        private double paces;
        private String words = "";

        Best(Place from, double bearing) {
            this.from = from;
            this.bearing = bearing;
        }

        void offer(Place place, double seenMetres, String what) {
            double turn = turn(from, place, bearing);
            if (Math.abs(turn) < off && sight.sees(from, place, seenMetres)) {
                off = Math.abs(turn);
                paces = -from.distanceTo(place) * Math.sin(turn) / Distance.METRES_PER_YARD;
                words = what;
            }
        }

        /** The landmark itself, or how many paces beside it the aim is seen. */
        String told() {
            if (words.isEmpty() || off < OFF_AIM_RADIANS) {
                return words;
            }
            return String.format(
                    Locale.ROOT, "a point %.0f paces %s of %s", Math.abs(paces), paces < 0 ? "left" : "right", words);
        }
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
            best.offer(hole.holeLocation(), FLAG_METRES, "the hole");
            edges(best, hole.green(), TURF_METRES, "green");
        }
        List<Area> inView = map.course().areas().stream()
                .filter(a -> isInView(a, from, bearing, reach))
                .toList();
        for (Area area : inView) {
            name(area, from, inView).ifPresent(what -> edges(best, area.region(), seenMetres(area), what));
        }
        return best.told();
    }

    private static boolean isInView(Area area, Place from, double bearing, double reach) {
        Place centre = area.region().centre();
        double distance = from.distanceTo(centre);
        return !words(area).isEmpty()
                && distance > 0.5 * reach
                && distance < reach + BEYOND_METRES
                && Math.abs(turn(from, centre, bearing)) < VIEW_RADIANS;
    }

    /** "left bunker"; "left bunker 210 yd out" where several stand there; nothing where distance does not tell them apart. */
    private Optional<String> name(Area area, Place from, List<Area> inView) {
        String plain = sided(area, from);
        double distance = from.distanceTo(area.region().centre());
        List<Double> others = inView.stream()
                .filter(a -> !a.equals(area) && sided(a, from).equals(plain))
                .map(a -> from.distanceTo(a.region().centre()))
                .toList();
        if (others.isEmpty()) {
            return Optional.of(plain);
        }
        return others.stream().anyMatch(d -> Math.abs(d - distance) < APART_METRES)
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%s %.0f yd out",
                        plain,
                        Distance.ofMetres(distance).yards()));
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

    private static void edges(Best best, Region region, double seenMetres, String what) {
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
        best.offer(left, seenMetres, "the left edge of the " + what);
        best.offer(right, seenMetres, "the right edge of the " + what);
        if (high - low < 4 * OFF_AIM_RADIANS) {
            best.offer(region.centre(), seenMetres, "the middle of the " + what);
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
                        Locale.ROOT,
                        "a point %.0f paces %s of the line of play",
                        paces,
                        offsetMetres < 0 ? "left" : "right");
    }
}
