package loopwright.action;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Place;
import loopwright.units.Distance;

/**
 * Hole locations as the trade gives them: paces on from the front of the green along the line of play, and paces in from
 * its left or right edge there. A pace is a yard.
 */
public final class HoleLocations {
    private static final double PACE_METRES = Distance.METRES_PER_YARD;
    private static final double STEP_METRES = 0.1;
    private static final Pattern FORM =
            Pattern.compile("\\s*(\\d+)\\s*:\\s*(\\d+(?:\\.\\d+)?)\\s*,\\s*(left|right)?\\s*(\\d+(?:\\.\\d+)?)\\s*");

    private HoleLocations() {}

    /** Reads "7:12,5" or "7:12,right 4" and returns the course with that hole cut there. */
    static Course apply(Course course, String text) {
        Matcher m = FORM.matcher(text);
        if (!m.matches()) {
            throw new UserFault("--hole-location " + text
                    + " is not a hole location; write hole:paces from the front,paces from the left, for example 7:12,5"
                    + " (or 7:12,right 4).");
        }
        Hole hole = HoleNumberList.hole(Integer.parseInt(m.group(1)), course);
        Hole cut = hole.withHoleLocation(locate(hole, m, "--hole-location " + text));
        return course.withHoles(course.holes().stream()
                .map(h -> h.number() == cut.number() ? cut : h)
                .toList());
    }

    /** A place on a green as "12,5" or "12,right 5": paces from the front and from the left or right edge. */
    public static Place find(Hole hole, String paces) {
        Matcher m = FORM.matcher(hole.number() + ":" + paces);
        if (!m.matches()) {
            throw new UserFault("\"" + paces + "\" is not a place on a green; write paces from the front and from the"
                    + " left, for example 12,5.");
        }
        return locate(hole, m, paces);
    }

    private static Place locate(Hole hole, Matcher m, String text) {
        boolean right = "right".equals(m.group(3));
        return locate(hole, Double.parseDouble(m.group(2)), Double.parseDouble(m.group(4)), right, text);
    }

    private static Place locate(Hole hole, double front, double side, boolean fromRight, String text) {
        var places = hole.line().places();
        Place before = places.get(places.size() - 2);
        Place middle = hole.green().centre();
        double bearing = before.bearingTo(middle);
        double reach = 100;
        double first = Double.NaN;
        double last = Double.NaN;
        for (double f = -reach; f <= reach; f += STEP_METRES) {
            if (hole.green().contains(middle.offset(bearing, f, 0))) {
                first = Double.isNaN(first) ? f : first;
                last = f;
            }
        }
        double along = first + front * PACE_METRES;
        if (Double.isNaN(first) || along > last) {
            throw new UserFault(String.format(
                    java.util.Locale.ROOT,
                    "%s is beyond the back of the green of hole %d, which is %.0f paces deep.",
                    text,
                    hole.number(),
                    (last - first) / PACE_METRES));
        }
        double sign = fromRight ? -1 : 1;
        double edge = Double.NaN;
        for (double s = -reach; s <= reach && Double.isNaN(edge); s += STEP_METRES) {
            if (hole.green().contains(middle.offset(bearing, along, sign * s))) {
                edge = sign * s;
            }
        }
        Place place = middle.offset(bearing, along, edge + sign * side * PACE_METRES);
        if (Double.isNaN(edge) || !hole.green().contains(place)) {
            throw new UserFault(
                    text + " is off the green of hole " + hole.number() + "; try fewer paces from the side.");
        }
        return place;
    }

    /** A place on the green as it would be typed: whole paces from the front and from the left edge. */
    static String describe(Hole hole, Place place) {
        if (!hole.green().contains(place)) {
            throw new UserFault("A hole is cut on the green; put it inside the green of hole " + hole.number() + ".");
        }
        var places = hole.line().places();
        double bearing = places.get(places.size() - 2).bearingTo(hole.green().centre());
        double front = reach(hole, place, bearing + Math.PI);
        double left = reach(hole, place, bearing - Math.PI / 2);
        return hole.number() + ":" + paces(front) + "," + paces(left);
    }

    /** How far the green goes from a place in a direction, metres. */
    private static double reach(Hole hole, Place place, double bearing) {
        double s = 0;
        while (hole.green().contains(place.along(bearing, s + STEP_METRES))) {
            s += STEP_METRES;
        }
        return s;
    }

    private static long paces(double metres) {
        return Math.max(1, Math.round(metres / PACE_METRES));
    }
}
