package loopwright.putting;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;

/**
 * A green from heights measured at spots. At every node of the grid the plane is taken that fits the spots best, near
 * ones weighing most (moving least squares, weight 1 / (d^2 + h^2)^2 with h half the mean distance between neighbouring
 * spots): spots of one plane give that plane back exactly, and what lies between spots is smooth. Humps smaller than the
 * spacing of the spots are not seen.
 */
public final class SpotHeights {
    private static final double STEP = 0.5;

    /** A height z in metres at a place. */
    public record Spot(double x, double y, double z) {
        public Spot {
            if (!(Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z))) {
                throw new IllegalArgumentException("a spot height must be finite");
            }
        }
    }

    private SpotHeights() {}

    /** Three spots or more that are not on one line; the grid covers them with two metres around. */
    public static GreenSurface of(List<Spot> spots) {
        if (spots.size() < 3) {
            throw new IllegalArgumentException("a green needs three spot heights or more, not " + spots.size());
        }
        double west = spots.stream().mapToDouble(Spot::x).min().orElseThrow() - 2;
        double south = spots.stream().mapToDouble(Spot::y).min().orElseThrow() - 2;
        double east = spots.stream().mapToDouble(Spot::x).max().orElseThrow() + 2;
        double north = spots.stream().mapToDouble(Spot::y).max().orElseThrow() + 2;
        double softening = 0.25 * meanNeighbourSquared(spots);
        return SlopeGrid.over(west, south, east, north, STEP, (x, y) -> slope(spots, x, y, softening));
    }

    private static SlopeGrid.Slope slope(List<Spot> spots, double x, double y, double softening) {
        double[][] normal = new double[3][3];
        double[] right = new double[3];
        for (Spot spot : spots) {
            double dx = spot.x() - x;
            double dy = spot.y() - y;
            double away = dx * dx + dy * dy + softening;
            double weight = 1 / (away * away);
            double[] row = {1, dx, dy};
            for (int i = 0; i < 3; i++) {
                right[i] += weight * row[i] * spot.z();
                for (int j = 0; j < 3; j++) {
                    normal[i][j] += weight * row[i] * row[j];
                }
            }
        }
        DecompositionSolver solver = new LUDecomposition(new Array2DRowRealMatrix(normal)).getSolver();
        if (!solver.isNonSingular()) {
            throw new IllegalArgumentException("the spot heights lie on one line; at least one must lie beside it");
        }
        RealVector plane = solver.solve(new ArrayRealVector(right));
        return new SlopeGrid.Slope(plane.getEntry(1), plane.getEntry(2));
    }

    private static double meanNeighbourSquared(List<Spot> spots) {
        double sum = 0;
        for (Spot a : spots) {
            double nearest = Double.POSITIVE_INFINITY;
            for (Spot b : spots) {
                double squared = (a.x() - b.x()) * (a.x() - b.x()) + (a.y() - b.y()) * (a.y() - b.y());
                if (squared > 0 && squared < nearest) {
                    nearest = squared;
                }
            }
            sum += nearest;
        }
        return Math.max(1e-6, sum / spots.size());
    }
}
