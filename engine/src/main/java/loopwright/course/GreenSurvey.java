package loopwright.course;

import java.util.ArrayList;
import java.util.List;
import loopwright.geo.Place;

/**
 * What somebody has measured of a green, as he measured it: heights at spots, or arrows that say how steeply and which
 * way it falls (a sheet of nine spots is nine arrows). Nothing measured means that nothing is known, not that it is flat.
 */
public record GreenSurvey(List<Spot> spots, List<Arrow> arrows) {
    public static final GreenSurvey NOTHING = new GreenSurvey(List.of(), List.of());

    /** Spots whose largest triangle is smaller than this lie on one line for all purposes. */
    private static final double LEAST_TRIANGLE_SQUARE_METRES = 1;

    private static final double STEEPEST = 0.3;

    public GreenSurvey {
        spots = List.copyOf(spots);
        arrows = List.copyOf(arrows);
    }

    /** A height above any level that is the same for all spots of the green. */
    public record Spot(Place place, double heightMetres) {
        public Spot {
            if (!(Math.abs(heightMetres) <= 9000)) {
                throw new IllegalArgumentException("a spot's height lies within 9000 m, not " + heightMetres + " m");
            }
        }
    }

    /**
     * The fall at a place.
     *
     * @param slope fall over run
     * @param downhillRadians bearing of the fall
     */
    public record Arrow(Place place, double slope, double downhillRadians) {
        public Arrow {
            if (!(slope >= 0 && slope <= STEEPEST)) {
                throw new IllegalArgumentException(
                        "a green's slope lies between 0 and 30 %, not " + 100 * slope + " %");
            }
            if (!Double.isFinite(downhillRadians)) {
                throw new IllegalArgumentException("an arrow needs a direction");
            }
        }
    }

    public GreenSurvey withSpot(Spot spot) {
        List<Spot> more = new ArrayList<>(spots);
        more.add(spot);
        return new GreenSurvey(more, arrows);
    }

    public GreenSurvey withArrow(Arrow arrow) {
        List<Arrow> more = new ArrayList<>(arrows);
        more.add(arrow);
        return new GreenSurvey(spots, more);
    }

    /**
     * Nine arrows three across and three deep over the green's rectangle, front row first, each from left to right as
     * seen with the back of the green upwards.
     *
     * @param slopes nine falls over run
     * @param turns nine directions of the fall, clockwise from the way to the back
     */
    public GreenSurvey withNineSpots(Hole hole, double[] slopes, double[] turns) {
        List<Place> line = hole.line().places();
        Place middle = hole.green().centre();
        double back = line.get(line.size() - 2).bearingTo(middle);
        double[] extent = extent(hole, middle, back);
        GreenSurvey out = this;
        for (int i = 0; i < 9; i++) {
            int row = i / 3;
            double right = extent[0] + (i % 3 + 0.5) * (extent[1] - extent[0]) / 3;
            double forward = extent[2] + (row + 0.5) * (extent[3] - extent[2]) / 3;
            out = out.withArrow(new Arrow(middle.offset(back, forward, right), slopes[i], back + turns[i]));
        }
        return out;
    }

    /** Left, right, front and back edge of a green seen along a bearing, metres from its middle. */
    private static double[] extent(Hole hole, Place middle, double back) {
        double[] out = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
        for (List<List<Place>> polygon : hole.green().polygons()) {
            for (Place p : polygon.get(0)) {
                double east = p.x() - middle.x();
                double north = p.y() - middle.y();
                double right = east * Math.cos(back) - north * Math.sin(back);
                double forward = east * Math.sin(back) + north * Math.cos(back);
                out[0] = Math.min(out[0], right);
                out[1] = Math.max(out[1], right);
                out[2] = Math.min(out[2], forward);
                out[3] = Math.max(out[3], forward);
            }
        }
        return out;
    }

    /** True if the spots say how the green lies: three or more that are not on one line. */
    public boolean spotsShowThePlane() {
        for (Spot a : spots) {
            for (Spot b : spots) {
                if (triangle(spots.get(0).place(), a.place(), b.place()) >= LEAST_TRIANGLE_SQUARE_METRES) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double triangle(Place a, Place b, Place c) {
        return Math.abs((b.x() - a.x()) * (c.y() - a.y()) - (c.x() - a.x()) * (b.y() - a.y())) / 2;
    }
}
