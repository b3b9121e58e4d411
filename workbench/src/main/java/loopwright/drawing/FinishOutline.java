package loopwright.drawing;

import java.util.Arrays;
import java.util.List;

/**
 * The smallest outline that holds a share of a sample of finishes: a contour of the sample's smoothed density at the
 * level which that share of the balls exceeds.
 *
 * <p>Density: Gaussian kernels, one for each ball, along and across the shot, of width s n^(-1/6) (Scott, "Multivariate
 * Density Estimation", 1992: n^(-1/(d+4)) for d = 2; from memory), with s = 1.4826 times the median distance from the
 * median, so that a few mishits do not blur the outline of the good shots.
 */
public final class FinishOutline {
    private static final double LEAST_CELL = 1.5;
    /** Between nodes so close the density runs along a straight line to within a hundredth of its height. */
    private static final double CELL_OF_WIDTH = 0.35;

    private static final int FEWEST = 20;

    private final Extent extent;
    private final double cell;
    private final double[][] density;
    private final double[] atBalls;

    /**
     * @param balls where they finished, on the sheet
     * @param direction of the shot on the sheet, radians clockwise from right
     */
    public FinishOutline(List<Point> balls, double direction) {
        double cos = Math.cos(direction);
        double sin = Math.sin(direction);
        double[] along =
                balls.stream().mapToDouble(p -> cos * p.x() + sin * p.y()).toArray();
        double[] across =
                balls.stream().mapToDouble(p -> cos * p.y() - sin * p.x()).toArray();
        double shrink = Math.pow(Math.max(1, balls.size()), -1.0 / 6);
        double widthAlong = Math.max(1.2, robustSpread(along) * shrink);
        double widthAcross = Math.max(1.2, robustSpread(across) * shrink);
        extent = Extent.around(balls).grown(3.2 * Math.max(widthAlong, widthAcross));
        cell = Math.max(LEAST_CELL, CELL_OF_WIDTH * Math.min(widthAlong, widthAcross));
        int columns = (int) Math.ceil(extent.width() / cell) + 1;
        int rows = (int) Math.ceil(extent.height() / cell) + 1;
        density = new double[rows][columns];
        for (Point ball : balls) {
            spread(ball, cos, sin, widthAlong, widthAcross);
        }
        atBalls = balls.stream().mapToDouble(this::densityAt).sorted().toArray();
    }

    public static boolean worthwhile(List<?> balls) {
        return balls.size() >= FEWEST;
    }

    private void spread(Point ball, double cos, double sin, double widthAlong, double widthAcross) {
        double reach = 3 * Math.max(widthAlong, widthAcross);
        int r0 = (int) Math.max(0, Math.ceil((ball.y() - reach - extent.top()) / cell));
        int r1 = (int) Math.min(density.length - 1, Math.floor((ball.y() + reach - extent.top()) / cell));
        int c0 = (int) Math.max(0, Math.ceil((ball.x() - reach - extent.left()) / cell));
        int c1 = (int) Math.min(density[0].length - 1, Math.floor((ball.x() + reach - extent.left()) / cell));
        for (int r = r0; r <= r1; r++) {
            double dy = extent.top() + r * cell - ball.y();
            for (int c = c0; c <= c1; c++) {
                double dx = extent.left() + c * cell - ball.x();
                double u = (cos * dx + sin * dy) / widthAlong;
                double v = (cos * dy - sin * dx) / widthAcross;
                density[r][c] += Math.exp(-0.5 * (u * u + v * v));
            }
        }
    }

    private double densityAt(Point p) {
        double x = (p.x() - extent.left()) / cell;
        double y = (p.y() - extent.top()) / cell;
        int c = (int) Math.min(density[0].length - 2, Math.max(0, Math.floor(x)));
        int r = (int) Math.min(density.length - 2, Math.max(0, Math.floor(y)));
        double tx = x - c;
        double ty = y - r;
        return (1 - ty) * ((1 - tx) * density[r][c] + tx * density[r][c + 1])
                + ty * ((1 - tx) * density[r + 1][c] + tx * density[r + 1][c + 1]);
    }

    /** Outlines on the sheet that hold {@code share} (0 to 1) of the balls; more than one where balls gather apart. */
    public List<Trace> holding(double share) {
        int outside = (int) Math.round((1 - share) * atBalls.length);
        double level = atBalls[Math.min(atBalls.length - 1, Math.max(0, outside))];
        return Isolines.of(density, level).stream()
                .map(t -> new Trace(
                        t.points().stream()
                                .map(p -> new Point(extent.left() + p.x() * cell, extent.top() + p.y() * cell))
                                .toList(),
                        t.closed()))
                .toList();
    }

    private static double robustSpread(double[] values) {
        double middle = median(values);
        return 1.4826
                * median(Arrays.stream(values).map(v -> Math.abs(v - middle)).toArray());
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }
}
