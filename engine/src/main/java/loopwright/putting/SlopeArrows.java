package loopwright.putting;

import java.util.ArrayList;
import java.util.List;

/**
 * A green from arrows that say at some places how steeply and which way it falls, as walked with a level: between arrows
 * the slope is their mean weighted with 1 / (d^2 + 0.25 m^2) (Shepard's interpolation, softened). One arrow is a plane.
 */
public final class SlopeArrows {
    private static final double STEP = 0.5;
    private static final double SOFTENING = 0.25;

    /**
     * One arrow.
     *
     * @param slope fall over run, 0 to 0.3
     * @param downhill bearing in which the green falls, radians clockwise from north
     */
    public record Arrow(double x, double y, double slope, double downhill) {
        public Arrow {
            if (!(slope >= 0 && slope <= 0.3) || !Double.isFinite(x + y + downhill)) {
                throw new IllegalArgumentException("an arrow needs a place, a slope of 0 to 0.3 and a bearing");
            }
        }
    }

    private SlopeArrows() {}

    public static GreenSurface of(List<Arrow> arrows) {
        if (arrows.isEmpty()) {
            throw new IllegalArgumentException("a green needs one arrow or more");
        }
        double west = arrows.stream().mapToDouble(Arrow::x).min().orElseThrow() - 2;
        double south = arrows.stream().mapToDouble(Arrow::y).min().orElseThrow() - 2;
        double east = arrows.stream().mapToDouble(Arrow::x).max().orElseThrow() + 2;
        double north = arrows.stream().mapToDouble(Arrow::y).max().orElseThrow() + 2;
        return SlopeGrid.over(west, south, east, north, STEP, (x, y) -> slope(arrows, x, y));
    }

    /**
     * A sheet of nine spots, three across and three deep over a green's rectangle, as a caddie fills it in: front row
     * first, each from left to right as seen with the back of the green upwards.
     *
     * @param back bearing from the front of the green to its back
     * @param slopes nine falls over run
     * @param downhill nine bearings of the fall
     */
    public static GreenSurface nineSpots(
            double centreX,
            double centreY,
            double back,
            double width,
            double depth,
            double[] slopes,
            double[] downhill) {
        if (slopes.length != 9 || downhill.length != 9) {
            throw new IllegalArgumentException("a sheet of nine spots needs nine slopes and nine directions");
        }
        List<Arrow> arrows = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            double right = (i % 3 - 1) * width / 3;
            double forward = (i / 3 - 1) * depth / 3;
            arrows.add(new Arrow(
                    centreX + forward * Math.sin(back) + right * Math.cos(back),
                    centreY + forward * Math.cos(back) - right * Math.sin(back),
                    slopes[i],
                    downhill[i]));
        }
        return of(arrows);
    }

    /** The fall points downhill, the slope uphill. */
    private static SlopeGrid.Slope slope(List<Arrow> arrows, double x, double y) {
        double total = 0;
        double east = 0;
        double north = 0;
        for (Arrow arrow : arrows) {
            double dx = arrow.x() - x;
            double dy = arrow.y() - y;
            double weight = 1 / (dx * dx + dy * dy + SOFTENING);
            total += weight;
            east -= weight * arrow.slope() * Math.sin(arrow.downhill());
            north -= weight * arrow.slope() * Math.cos(arrow.downhill());
        }
        return new SlopeGrid.Slope(east / total, north / total);
    }
}
