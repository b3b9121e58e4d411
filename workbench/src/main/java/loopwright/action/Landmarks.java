package loopwright.action;

import java.util.List;
import java.util.Locale;
import loopwright.course.Area;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.units.Distance;

/** Something to aim at that the map knows, in words: "right edge of the left bunker". */
final class Landmarks {
    /** A landmark further off the aim than this is no help: one and a half degrees, about five yards at 200. */
    private static final double OFF_AIM_RADIANS = Math.toRadians(1.5);
    /** How far past the end of the shot a landmark may stand. */
    private static final double BEYOND_METRES = 220;

    private final Course course;
    private final Hole hole;

    Landmarks(Course course, Hole hole) {
        this.course = course;
        this.hole = hole;
    }

    private static final class Best {
        private double off = OFF_AIM_RADIANS;
        private String words = "";

        void offer(double angle, String what) {
            if (Math.abs(angle) < off) {
                off = Math.abs(angle);
                words = what;
            }
        }
    }

    /** The landmark nearest to the line of aim, or how far beside the line of play the aim is. */
    String name(Place from, Place aim, double offsetMetres) {
        double bearing = from.bearingTo(aim);
        double reach = from.distanceTo(aim);
        Best best = new Best();
        if (from.distanceTo(hole.holeLocation()) <= reach + BEYOND_METRES) {
            best.offer(turn(from, hole.holeLocation(), bearing), "the hole");
            edges(best, from, bearing, hole.green(), "green");
        }
        for (Area area : course.areas()) {
            String what = words(area);
            double distance = from.distanceTo(area.region().centre());
            if (!what.isEmpty() && distance > 0.5 * reach && distance < reach + BEYOND_METRES) {
                double side = turn(from, area.region().centre(), from.bearingTo(hole.holeLocation()));
                edges(best, from, bearing, area.region(), (side < 0 ? "left " : "right ") + what);
            }
        }
        return best.words.isEmpty() ? beside(offsetMetres) : best.words;
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

    private static void edges(Best best, Place from, double bearing, Region region, String what) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (List<List<Place>> polygon : region.polygons()) {
            for (Place corner : polygon.get(0)) {
                double t = turn(from, corner, bearing);
                low = Math.min(low, t);
                high = Math.max(high, t);
            }
        }
        if (high - low > Math.PI / 2) {
            return;
        }
        best.offer(low, "left edge of the " + what);
        best.offer(high, "right edge of the " + what);
        if (high - low < 4 * OFF_AIM_RADIANS) {
            best.offer((low + high) / 2, "middle of the " + what);
        }
    }

    /** Bearing of a place relative to the aim, - left, within half a turn. */
    private static double turn(Place from, Place to, double bearing) {
        double turn = from.bearingTo(to) - bearing;
        return turn - 2 * Math.PI * Math.rint(turn / (2 * Math.PI));
    }

    private static String beside(double offsetMetres) {
        double paces = Math.abs(offsetMetres) / Distance.METRES_PER_YARD;
        return paces < 1
                ? "along the line of play"
                : String.format(
                        Locale.ROOT, "%.0f paces %s of the line of play", paces, offsetMetres < 0 ? "left" : "right");
    }
}
