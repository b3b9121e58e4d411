package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import loopwright.course.Hole;
import loopwright.geo.Place;

/**
 * A green as the trade divides it, seen along the line of play: front, middle and back, left, centre and right. Zones lie
 * at a quarter, half and three quarters of the depth, and of the width there.
 */
final class GreenZones {
    private static final double STEP_METRES = 0.25;
    private static final double REACH_METRES = 80;
    private static final double[] PARTS = {0.25, 0.5, 0.75};
    private static final String[] DEPTH = {"front", "middle", "back"};
    private static final String[] WIDTH = {"left", "centre", "right"};

    private final Hole hole;
    private final Place centre;
    private final double bearing;

    /** A place of the green with its name, "front left". */
    record Zone(String name, Place place) {}

    GreenZones(Hole hole) {
        this.hole = hole;
        centre = hole.green().centre();
        var places = hole.line().places();
        bearing = places.get(places.size() - 2).bearingTo(centre);
    }

    /** Direction of play into the green. */
    double bearing() {
        return bearing;
    }

    /** The nine zones that lie on the green; on an odd shape some do not. */
    List<Zone> all() {
        List<Zone> out = new ArrayList<>();
        double[] depth = extent(0, true);
        for (int d = 0; d < PARTS.length; d++) {
            double forward = depth[0] + PARTS[d] * (depth[1] - depth[0]);
            double[] width = extent(forward, false);
            for (int w = 0; w < PARTS.length; w++) {
                Place place = centre.offset(bearing, forward, width[0] + PARTS[w] * (width[1] - width[0]));
                if (hole.green().contains(place)) {
                    out.add(new Zone(DEPTH[d] + " " + WIDTH[w], place));
                }
            }
        }
        return out;
    }

    /** First and last metres on the green, along the line of play through the centre, or across it so far on. */
    private double[] extent(double forward, boolean along) {
        double first = Double.NaN;
        double last = 0;
        for (double s = -REACH_METRES; s <= REACH_METRES; s += STEP_METRES) {
            Place at = along ? centre.offset(bearing, s, 0) : centre.offset(bearing, forward, s);
            if (hole.green().contains(at)) {
                first = Double.isNaN(first) ? s : first;
                last = s;
            }
        }
        return Double.isNaN(first) ? new double[] {0, 0} : new double[] {first, last};
    }

    /** From a place on the green to its edge in a direction, metres. */
    double toEdge(Place from, double direction) {
        double s = 0;
        while (s < 2 * REACH_METRES && hole.green().contains(from.along(direction, s))) {
            s += STEP_METRES;
        }
        return s;
    }
}
