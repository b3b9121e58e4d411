package loopwright.action;

import java.util.List;
import loopwright.course.Hole;
import loopwright.geo.Place;

/**
 * A green as paces are counted on it: seen along the last part of the line of play, the way hole locations are given.
 *
 * @param up bearing to the back
 * @param left edge beside the middle, metres, 0 or less; {@code right}, {@code front}, {@code back} likewise
 */
record GreenFrame(Place middle, double up, double left, double right, double front, double back) {
    static GreenFrame of(Hole hole) {
        List<Place> line = hole.line().places();
        Place middle = hole.green().centre();
        double up = line.get(line.size() - 2).bearingTo(middle);
        double left = 0;
        double right = 0;
        double front = 0;
        double back = 0;
        for (List<List<Place>> polygon : hole.green().polygons()) {
            for (Place p : polygon.get(0)) {
                double east = p.x() - middle.x();
                double north = p.y() - middle.y();
                double aside = east * Math.cos(up) - north * Math.sin(up);
                double forward = east * Math.sin(up) + north * Math.cos(up);
                left = Math.min(left, aside);
                right = Math.max(right, aside);
                front = Math.min(front, forward);
                back = Math.max(back, forward);
            }
        }
        return new GreenFrame(middle, up, left, right, front, back);
    }
}
