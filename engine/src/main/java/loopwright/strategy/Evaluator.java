package loopwright.strategy;

import loopwright.flight.Descent;
import loopwright.ground.Surface;
import org.jspecify.annotations.Nullable;

/**
 * Computes what one shot from one spot leads to, and what that is worth. A workspace: one per thread, reused for many
 * shots.
 *
 * <p>With c the mean cost of outcomes that stay in play, m the chance of a replay from the same spot (lost, out of
 * bounds) and A_k the cost of the best other relief after a crossing of chance w_k, the value v of the spot under this
 * shot solves v = 1 + c + m (1 + v) + sum w_k min(A_k, 1 + v); the right side is concave and piecewise linear in v, so
 * Newton's steps end exactly.
 */
final class Evaluator {
    private static final int NEWTON_STEPS = 60;
    /** A shot that comes back to the same spot nearly always leads nowhere. */
    private static final double HOPELESS = 0.999;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final HoleProblem problem;
    private final HoleRaster raster;
    private final int cells;
    private final CloudReader reader;
    private final @Nullable GroundHeights heights;
    /** Outcomes of the stroke last played, the first {@link #size} of each array. */
    int[] code = new int[64];

    double[] weight = new double[64];
    int size;
    private double sin;
    private double cos;
    private double cellsToAim;
    private double sectorOfAim;
    /** Height of the ground at the spot, metres. */
    private float spotHeight;

    /** By point, where heights are known: how many cells short of level ground it comes down. */
    private float[] back = new float[64];
    /** And the rise of the ground there along its travel, metres per cell. */
    private float[] landingSlope = new float[64];

    private double[] reliefCost = new double[64];
    private double[] reliefWeight = new double[64];

    Evaluator(HoleProblem problem) {
        this.problem = problem;
        raster = problem.raster;
        cells = raster.restCells();
        reader = new CloudReader(problem.ability.clouds());
        heights = problem.heights;
    }

    /** Finds the outcomes of a stroke on the clouds for choosing; they stay in {@link #code} and {@link #weight}. */
    void play(Spot spot, Option o, int points) {
        aim(spot, o);
        Cloud cloud = cloud(spot, o, points, false);
        size = 0;
        for (int k = 0; k + 1 < cloud.strata.length; k++) {
            add(spot, cloud, cloud.strata[k], cloud.strata[k + 1], cloud.weight[k]);
        }
    }

    /**
     * The same on the independent clouds for reporting: of each stratum a stretch of about {@code points} in all,
     * beginning at a place that {@code variant} selects, so that different spots see different points.
     */
    void report(Spot spot, Option o, int points, int variant) {
        aim(spot, o);
        Cloud cloud = cloud(spot, o, Math.max(points, problem.settings.reportPoints()), true);
        size = 0;
        double share = Math.min(1, (double) points / cloud.size);
        double start = variant * GOLDEN - Math.floor(variant * GOLDEN);
        for (int k = 0; k + 1 < cloud.strata.length; k++) {
            int first = cloud.strata[k];
            int count = cloud.strata[k + 1] - first;
            int take = Math.max(Math.min(2, count), (int) Math.round(count * share));
            int from = (int) (start * count);
            int beyond = Math.max(0, from + take - count);
            double pointWeight = cloud.weight[k] * count / take;
            add(spot, cloud, first + from, first + from + take - beyond, pointWeight);
            add(spot, cloud, first, first + beyond, pointWeight);
        }
    }

    private Cloud cloud(Spot spot, Option o, int points, boolean report) {
        double metres = cellsToAim * HoleRaster.CELL_METRES;
        double turns = sectorOfAim / TreeFan.SECTORS;
        Cloud cloud = reader.open(o.shot(), spot.surface(), spot.situation(), metres, turns, points, report);
        int most = 2 * cloud.size; // a ball that may be lost counts twice
        if (code.length < most) {
            code = new int[most];
            weight = new double[most];
            back = new float[most];
            landingSlope = new float[most];
            reliefCost = new double[most];
            reliefWeight = new double[most];
        }
        return cloud;
    }

    private void aim(Spot spot, Option o) {
        double east = o.column() - spot.column();
        double north = o.row() - spot.row();
        cellsToAim = Math.sqrt(east * east + north * north);
        sin = cellsToAim > 0 ? east / cellsToAim : 0;
        cos = cellsToAim > 0 ? north / cellsToAim : 1;
        sectorOfAim = Math.atan2(sin, cos) * TreeFan.SECTORS_PER_RADIAN + 2 * TreeFan.SECTORS;
        spotHeight = heights == null ? 0 : heights.metresAt((float) spot.column(), (float) spot.row());
    }

    /** Adds the outcomes of points {@code from} to {@code to}, all of one stratum. */
    private void add(Spot spot, Cloud cloud, int from, int to, double pointWeight) {
        reader.read(from, to);
        if (heights != null && from < to) {
            fallTo(heights, spot, cloud, from, to);
        }
        for (int i = from; i < to; i++) {
            add(spot, cloud, i, pointWeight);
        }
    }

    private void add(Spot spot, Cloud cloud, int i, double pointWeight) {
        int sector = sector(cloud.turn(i));
        float carry = cloud.carry(i);
        float flown = spot.trees().flown(sector, carry, cloud.apexMetres(i), cloud.patience(i));
        double east = cloud.forward(i) * sin + cloud.right(i) * cos;
        double north = cloud.forward(i) * cos - cloud.right(i) * sin;
        if (flown < carry) {
            double x = spot.column() + east * flown / carry;
            double y = spot.row() + north * flown / carry;
            code[size] = problem.ground.code(x, y, 0, 0, east / carry, north / carry, sector, 0);
        } else {
            sector = sector(cloud.headTurn(i));
            code[size] = landed(cloud, i, spot.column() + east, spot.row() + north, sector);
        }
        weight[size++] = pointWeight;
        if (problem.relief.dropsByTheFairway()) {
            splitByLocalRule(sector);
        }
    }

    /** Under Model Local Rule E-5 a ball lost or out of bounds has drops of its own, as one in a penalty area has. */
    private void splitByLocalRule(int sector) {
        int cell = code[size - 1];
        if (cell >= cells || !HoleRaster.Ground.mayReplay(raster.ground(cell))) {
            return;
        }
        if (raster.surface(cell) == Surface.OUT_OF_BOUNDS) {
            code[size - 1] = cells + problem.relief.crossing(cell, sector);
        } else if (raster.notFound(cell) > 0) {
            double lost = weight[size - 1] * raster.notFound(cell);
            weight[size - 1] -= lost;
            code[size] = cells + problem.relief.lost(cell);
            weight[size++] = lost;
        }
    }

    /** The sector of a direction relative to the aim. */
    private int sector(float turn) {
        return (int) (sectorOfAim + turn) % TreeFan.SECTORS;
    }

    /** Outcome of a ball that comes down here on level ground. */
    private int landed(Cloud cloud, int i, double column, double row, int sector) {
        double east = cloud.headForward(i) * sin + cloud.headRight(i) * cos;
        double north = cloud.headForward(i) * cos - cloud.headRight(i) * sin;
        double x = column;
        double y = row;
        double slope = 0;
        if (heights != null) {
            x -= east * back[i];
            y -= north * back[i];
            slope = landingSlope[i];
        }
        return problem.ground.code(x, y, cloud.run(i), cloud.greenRun(i), east, north, sector, slope);
    }

    /**
     * Finds {@link #back} and {@link #landingSlope} of points of one stratum, in a loop of their own: one ball's height
     * does not wait for where another ends. Points of a stratum come down near each other, so the plane under the
     * first tells well enough which one each meets.
     */
    private void fallTo(GroundHeights heights, Spot spot, Cloud cloud, int from, int to) {
        // in floats throughout: a centimetre at most, in half the time
        float s = (float) sin;
        float c = (float) cos;
        float fromColumn = (float) spot.column();
        float fromRow = (float) spot.row();
        float firstColumn = fromColumn + cloud.forward(from) * s + cloud.right(from) * c;
        float firstRow = fromRow + cloud.forward(from) * c - cloud.right(from) * s;
        int near = heights.planeAt(firstColumn, firstRow);
        for (int i = from; i < to; i++) {
            float x = fromColumn + cloud.forward(i) * s + cloud.right(i) * c;
            float y = fromRow + cloud.forward(i) * c - cloud.right(i) * s;
            float east = cloud.headForward(i) * s + cloud.headRight(i) * c;
            float north = cloud.headForward(i) * c - cloud.headRight(i) * s;
            float steepness = cloud.steepness(i);
            float roughly = steepness > 0 ? (heights.metres(near, x, y) - spotHeight) / steepness : 0;
            int plane = heights.planeAt(x - east * roughly, y - north * roughly);
            float slope = heights.slope(plane, east, north);
            landingSlope[i] = slope;
            float rise = heights.metres(plane, x, y) - spotHeight;
            back[i] = steepness > 0 ? Descent.back(rise, slope, steepness, cloud.bend(i)) : 0;
        }
    }

    /** Expected strokes to hole out under the stroke last played, if it is chosen here each time; v0 is a start. */
    double value(ValueField field, double v0) {
        double sum = 1;
        double again = 0;
        int crossings = 0;
        for (int i = 0; i < size; i++) {
            int code = this.code[i];
            double w = weight[i];
            if (code < cells) {
                sum += w * field.found[code];
                if (HoleRaster.Ground.mayReplay(raster.ground(code))) {
                    again += w * field.replay[code];
                }
            } else {
                reliefCost[crossings] = field.reliefValue(code - cells);
                reliefWeight[crossings++] = w;
            }
        }
        return solve(sum, again, reliefCost, reliefWeight, crossings, v0);
    }

    /** Solves v = sum + again (1 + v) + sum over k below n of weight_k min(cost_k, 1 + v); infinite if it never ends. */
    static double solve(double sum, double again, double[] cost, double[] weight, int n, double v0) {
        double v = v0;
        for (int step = 0; step < NEWTON_STEPS; step++) {
            double s = sum;
            double m = again;
            for (int k = 0; k < n; k++) {
                if (cost[k] < 1 + v) {
                    s += weight[k] * cost[k];
                } else {
                    m += weight[k];
                }
            }
            if (m > HOPELESS) {
                v = cheapestDrop(cost, n, v);
                if (v == Double.POSITIVE_INFINITY) {
                    return v;
                }
                continue;
            }
            double next = (s + m) / (1 - m);
            if (Math.abs(next - v) < 1e-13) {
                return next;
            }
            v = next;
        }
        return v;
    }

    /** The least cost of a relief that a replay worth 1 + v still beats: from there on the relief is taken. */
    private static double cheapestDrop(double[] cost, int n, double v) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < n; k++) {
            if (cost[k] >= 1 + v) {
                least = Math.min(least, cost[k]);
            }
        }
        return least;
    }

    /** Standard error of the value of the stroke last played, from the spread of its outcomes over independent points. */
    double standardError(ValueField field, double v) {
        double mean = 0;
        double squares = 0;
        double weights = 0;
        for (int i = 0; i < size; i++) {
            int code = this.code[i];
            double x = code < cells
                    ? field.found[code] + field.replay[code] * (1 + v)
                    : Math.min(field.reliefValue(code - cells), 1 + v);
            mean += weight[i] * x;
            squares += weight[i] * x * x;
            weights += weight[i] * weight[i];
        }
        return Math.sqrt(Math.max(0, squares - mean * mean) * weights);
    }
}
