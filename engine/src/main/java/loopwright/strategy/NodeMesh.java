package loopwright.strategy;

import java.util.Arrays;
import java.util.stream.IntStream;
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
    /** The nodes of one surface in one square of the ground, and how many there are. */
    private final int[][] buckets;

    private final int[] inBucket;
    private final int bucketColumns;
    private final int bucketRows;
    private final int bucketCells;

    /** Nodes of the grid by place, half the base apart; -1 where there is none. */
    private final int[] grid;

    private final int gridColumns;

    /** Number of nodes, the first so many of each array. */
    int nodes;

    double[] column = new double[1 << 10];
    double[] row = new double[1 << 10];
    Surface[] surface = new Surface[1 << 10];
    /** Distance to the next nodes of the grid, cells; 0 for the tee and for nodes of patches. */
    int[] spacing = new int[1 << 10];

    /** For cell i: its nodes at 4 i to 4 i + 3 (or -1) and their weights. */
    final int[] cellNodes;

    final double[] cellWeights;

    NodeMesh(HoleRaster raster, Line line, int baseCells) {
        this.raster = raster;
        this.line = line;
        this.base = baseCells;
        bucketCells = 2 * baseCells;
        bucketColumns = raster.columns / bucketCells + 1;
        bucketRows = raster.rows / bucketCells + 1;
        buckets = new int[Surface.values().length * bucketColumns * bucketRows][0];
        inBucket = new int[buckets.length];
        gridColumns = raster.columns / (base / 2) + 1;
        grid = new int[gridColumns * (raster.rows / (base / 2) + 1)];
        Arrays.fill(grid, -1);
        cellNodes = new int[CORNERS * raster.restCells()];
        cellWeights = new double[CORNERS * raster.restCells()];
        Arrays.fill(cellNodes, -1);
        addNode(raster.column(line.start()), raster.row(line.start()), Surface.TEE, 0);
        addGrid();
        connectSquares();
        int[] alone = IntStream.range(0, raster.cells())
                .parallel()
                .filter(cell -> isDecided(cell) && !isConnected(cell) && !connect(cell))
                .toArray();
        for (int cell : alone) {
            if (!connect(cell)) {
                register(addNode(raster.columnOf(cell) + 0.5, raster.rowOf(cell) + 0.5, raster.surface(cell), 0), cell);
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
                    int toNext = spacing(cell);
                    if (c % toNext == 0 && r % toNext == 0) {
                        int node = addNode(c + 0.5, r + 0.5, raster.surface(cell), toNext);
                        register(node, cell);
                        grid[gridIndex(c, r)] = node;
                    }
                }
            }
        }
    }

    private int gridIndex(int c, int r) {
        return r / (base / 2) * gridColumns + c / (base / 2);
    }

    private int spacing(int cell) {
        Place p = raster.centre(cell);
        if (p.distanceTo(line.end()) <= NEAR_METRES) {
            return base / 2;
        }
        return line.distanceTo(p) <= CORRIDOR_METRES ? base : 2 * base;
    }

    private int addNode(double c, double r, Surface on, int toNext) {
        if (nodes == column.length) {
            column = Arrays.copyOf(column, 2 * nodes);
            row = Arrays.copyOf(row, 2 * nodes);
            surface = Arrays.copyOf(surface, 2 * nodes);
            spacing = Arrays.copyOf(spacing, 2 * nodes);
        }
        column[nodes] = c;
        row[nodes] = r;
        surface[nodes] = on;
        spacing[nodes] = toNext;
        return nodes++;
    }

    private void register(int node, int cell) {
        int bucket = bucket(surface[node], raster.rowOf(cell) / bucketCells, raster.columnOf(cell) / bucketCells);
        if (inBucket[bucket] == buckets[bucket].length) {
            buckets[bucket] = Arrays.copyOf(buckets[bucket], 2 * inBucket[bucket] + 4);
        }
        buckets[bucket][inBucket[bucket]++] = node;
    }

    private int bucket(Surface on, int bucketRow, int bucketColumn) {
        return (on.ordinal() * bucketRows + bucketRow) * bucketColumns + bucketColumn;
    }

    private boolean isConnected(int cell) {
        return cellNodes[CORNERS * cell] >= 0;
    }

    /** Connects cells within squares of the grid whose corners are all of the cells' surface, small squares first. */
    private void connectSquares() {
        for (int side = base / 2; side <= 2 * base; side *= 2) {
            int size = side;
            double[][] weights = squareWeights(size);
            IntStream.range(0, (raster.rows - 1) / size).parallel().forEach(i -> {
                for (int west = 0; west + size < raster.columns; west += size) {
                    connectSquare(west, i * size, size, weights);
                }
            });
        }
    }

    private void connectSquare(int west, int south, int side, double[][] weights) {
        int[] corners = {
            grid[gridIndex(west, south)],
            grid[gridIndex(west + side, south)],
            grid[gridIndex(west, south + side)],
            grid[gridIndex(west + side, south + side)]
        };
        if (corners[0] < 0 || !allOf(corners, surface[corners[0]], side)) {
            return;
        }
        for (int y = 1; y <= side; y++) {
            for (int x = 1; x <= side; x++) {
                int cell = (south + y) * raster.columns + west + x;
                if (raster.surface(cell) == surface[corners[0]] && !isConnected(cell)) {
                    set(cell, corners, CORNERS, weights[place(x, y, side)]);
                }
            }
        }
    }

    /** Weights of the corners at every place of a square of this size: all such squares share them. */
    private static double[][] squareWeights(int side) {
        double[][] out = new double[side * side][];
        for (int y = 1; y <= side; y++) {
            for (int x = 1; x <= side; x++) {
                double[] dx = {-x, side - x, -x, side - x};
                double[] dy = {-y, -y, side - y, side - y};
                out[place(x, y, side)] = weights(dx, dy);
            }
        }
        return out;
    }

    private static int place(int x, int y, int side) {
        return (y - 1) * side + x - 1;
    }

    /** Gives a cell that lies in no square its nodes, on any thread; false if none of its surface is near. */
    private boolean connect(int cell) {
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
            return false;
        }
        double[] dx = new double[found];
        double[] dy = new double[found];
        for (int i = 0; i < found; i++) {
            dx[i] = column[nearest[i]] - c;
            dy[i] = row[nearest[i]] - r;
        }
        set(cell, nearest, found, weights(dx, dy));
        return true;
    }

    private void set(int cell, int[] near, int n, double[] weights) {
        for (int i = 0; i < n; i++) {
            cellNodes[CORNERS * cell + i] = near[i];
            cellWeights[CORNERS * cell + i] = weights[i];
        }
    }

    private boolean allOf(int[] corners, Surface own, int side) {
        for (int node : corners) {
            if (node < 0 || surface[node] != own || spacing[node] != side) {
                return false;
            }
        }
        return true;
    }

    private int[] nearestByQuarter(int cell, double c, double r) {
        int[] nearest = {-1, -1, -1, -1};
        double[] best = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
        Surface own = raster.surface(cell);
        int bucketColumn = raster.columnOf(cell) / bucketCells;
        int bucketRow = raster.rowOf(cell) / bucketCells;
        for (int br = Math.max(0, bucketRow - 1); br <= Math.min(bucketRows - 1, bucketRow + 1); br++) {
            for (int bc = Math.max(0, bucketColumn - 1); bc <= Math.min(bucketColumns - 1, bucketColumn + 1); bc++) {
                int bucket = bucket(own, br, bc);
                for (int i = 0; i < inBucket[bucket]; i++) {
                    int node = buckets[bucket][i];
                    double dx = column[node] - c;
                    double dy = row[node] - r;
                    int quarter = (dx >= 0 ? 1 : 0) + (dy >= 0 ? 2 : 0);
                    double squared = dx * dx + dy * dy;
                    if (squared < best[quarter]) {
                        best[quarter] = squared;
                        nearest[quarter] = node;
                    }
                }
            }
        }
        return nearest;
    }

    /**
     * Weights that sum to 1 and, with three nodes or more in general position, reproduce linear functions.
     *
     * @param dx how far east of the place each node lies
     */
    private static double[] weights(double[] dx, double[] dy) {
        int n = dx.length;
        double[] kernel = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
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
