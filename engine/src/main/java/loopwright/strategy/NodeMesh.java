package loopwright.strategy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.ground.Surface;

/**
 * Lays out the decision nodes of a hole and connects the cells to them. Nodes stand on a grid: half the base spacing round the
 * green, the base spacing along the line of play, twice the base beyond. Every cell off the green is interpolated among up to four nodes of its own surface, the nearest in each
 * quarter round it, with weights that are exact for values that change linearly; a patch of surface without a node gets
 * one of its own. Node 0 is the tee.
 */
final class NodeMesh {
    static final int CORNERS = 4;
    /** Round the green, metres from the hole. */
    private static final double NEAR_METRES = 50;
    /** Width of the corridor either side of the line of play, metres. */
    private static final double CORRIDOR_METRES = 45;

    private static final double LARGEST_WEIGHT = 1.6;
    final HoleRaster raster;
    private final int base;
    private final Line line;
    private final List<Integer>[] buckets;
    private final int bucketColumns;
    private final int bucketCells;

    final List<double[]> places = new ArrayList<>();
    final List<Surface> surfaces = new ArrayList<>();
    /** Distance to the next nodes of the grid, cells; 0 for the tee and for nodes of patches. */
    final List<Integer> spacings = new ArrayList<>();

    /** For cell i: its nodes at 4 i to 4 i + 3 (or -1) and their weights. */
    final int[] cellNodes;

    final double[] cellWeights;

    @SuppressWarnings({"unchecked", "rawtypes"})
    NodeMesh(HoleRaster raster, Line line, int baseCells) {
        this.raster = raster;
        this.line = line;
        this.base = baseCells;
        bucketCells = 2 * baseCells;
        bucketColumns = raster.columns / bucketCells + 1;
        buckets = new List[bucketColumns * (raster.rows / bucketCells + 1)];
        cellNodes = new int[CORNERS * raster.restCells()];
        cellWeights = new double[CORNERS * raster.restCells()];
        Arrays.fill(cellNodes, -1);
        addNode(raster.column(line.start()), raster.row(line.start()), Surface.TEE, 0);
        addGrid();
        for (int cell = 0; cell < raster.cells(); cell++) {
            if (isDecided(cell)) {
                connect(cell);
            }
        }
    }

    private boolean isDecided(int cell) {
        return raster.surface(cell).isPlayable() && raster.surface(cell) != Surface.GREEN;
    }

    private void addGrid() {
        for (int r = 0; r < raster.rows; r += base / 2) {
            for (int c = 0; c < raster.columns; c += base / 2) {
                int cell = r * raster.columns + c;
                if (isDecided(cell)) {
                    int spacing = spacing(cell);
                    if (c % spacing == 0 && r % spacing == 0) {
                        register(addNode(c + 0.5, r + 0.5, raster.surface(cell), spacing), cell);
                    }
                }
            }
        }
    }

    private int spacing(int cell) {
        Place p = raster.centre(cell);
        if (p.distanceTo(line.end()) <= NEAR_METRES) {
            return base / 2;
        }
        return line.distanceTo(p) <= CORRIDOR_METRES ? base : 2 * base;
    }

    private int addNode(double c, double r, Surface s, int spacing) {
        places.add(new double[] {c, r});
        spacings.add(spacing);
        surfaces.add(s);
        return places.size() - 1;
    }

    private void register(int node, int cell) {
        int bucket = bucketOf(cell);
        if (buckets[bucket] == null) {
            buckets[bucket] = new ArrayList<>(8);
        }
        buckets[bucket].add(node);
    }

    private int bucketOf(int cell) {
        return raster.rowOf(cell) / bucketCells * bucketColumns + raster.columnOf(cell) / bucketCells;
    }

    private void connect(int cell) {
        double c = raster.columnOf(cell) + 0.5;
        double r = raster.rowOf(cell) + 0.5;
        int[] nearest = nearestByQuarter(cell, c, r);
        int found = 0;
        for (int n : nearest) {
            if (n >= 0) {
                nearest[found++] = n;
            }
        }
        if (found == 0) {
            nearest[found++] = addNode(c, r, raster.surface(cell), 0);
            register(nearest[0], cell);
        }
        double[] weights = weights(nearest, found, c, r);
        for (int i = 0; i < found; i++) {
            cellNodes[CORNERS * cell + i] = nearest[i];
            cellWeights[CORNERS * cell + i] = weights[i];
        }
    }

    private int[] nearestByQuarter(int cell, double c, double r) {
        int[] nearest = {-1, -1, -1, -1};
        double[] best = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
        Surface own = raster.surface(cell);
        int bucketColumn = raster.columnOf(cell) / bucketCells;
        int bucketRow = raster.rowOf(cell) / bucketCells;
        for (int br = Math.max(0, bucketRow - 1); br <= bucketRow + 1; br++) {
            for (int bc = Math.max(0, bucketColumn - 1); bc <= Math.min(bucketColumns - 1, bucketColumn + 1); bc++) {
                int bucket = br * bucketColumns + bc;
                if (bucket >= buckets.length || buckets[bucket] == null) {
                    continue;
                }
                for (int node : buckets[bucket]) {
                    double dx = places.get(node)[0] - c;
                    double dy = places.get(node)[1] - r;
                    int quarter = (dx >= 0 ? 1 : 0) + (dy >= 0 ? 2 : 0);
                    double squared = dx * dx + dy * dy;
                    if (surfaces.get(node) == own && squared < best[quarter]) {
                        best[quarter] = squared;
                        nearest[quarter] = node;
                    }
                }
            }
        }
        return nearest;
    }

    /** Weights that sum to 1 and, with three nodes or more in general position, reproduce linear functions. */
    private double[] weights(int[] found, int n, double c, double r) {
        double[] dx = new double[n];
        double[] dy = new double[n];
        double[] kernel = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            dx[i] = places.get(found[i])[0] - c;
            dy[i] = places.get(found[i])[1] - r;
            double squared = dx[i] * dx[i] + dy[i] * dy[i];
            if (squared < 1e-6) {
                double[] only = new double[n];
                only[i] = 1;
                return only;
            }
            kernel[i] = 1 / squared;
            sum += kernel[i];
        }
        double[] linear = n >= 3 ? linearWeights(dx, dy, kernel, sum) : new double[0];
        if (linear.length == n) {
            return linear;
        }
        for (int i = 0; i < n; i++) {
            kernel[i] /= sum;
        }
        return kernel;
    }

    /** w_i = k_i (a + b x_i + c y_i) with sum w = 1, sum w x = 0, sum w y = 0; empty if that extrapolates too far. */
    private static double[] linearWeights(double[] dx, double[] dy, double[] k, double scale) {
        double s = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (int i = 0; i < k.length; i++) {
            double w = k[i] / scale;
            s += w;
            sx += w * dx[i];
            sy += w * dy[i];
            sxx += w * dx[i] * dx[i];
            sxy += w * dx[i] * dy[i];
            syy += w * dy[i] * dy[i];
        }
        double det = s * (sxx * syy - sxy * sxy) - sx * (sx * syy - sxy * sy) + sy * (sx * sxy - sxx * sy);
        if (Math.abs(det) < 1e-9) {
            return new double[0];
        }
        double a = (sxx * syy - sxy * sxy) / det;
        double b = (sxy * sy - sx * syy) / det;
        double c = (sx * sxy - sxx * sy) / det;
        double[] out = new double[k.length];
        for (int i = 0; i < k.length; i++) {
            out[i] = k[i] / scale * (a + b * dx[i] + c * dy[i]);
            if (Math.abs(out[i]) > LARGEST_WEIGHT) {
                return new double[0];
            }
        }
        return out;
    }
}
