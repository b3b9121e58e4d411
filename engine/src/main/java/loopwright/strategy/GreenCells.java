package loopwright.strategy;

import java.util.Arrays;
import java.util.stream.IntStream;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.putting.GreenOdds;
import loopwright.putting.LevelGreenOdds;

/**
 * The green of a hole as cells: of each the chance of needing 0 (dropped in from off the green), 1, 2 ... putts at the
 * pace that needs fewest, averaged over the cell; and, on a level green, how the cell's distances lie among the nodes of
 * the odds.
 */
final class GreenCells implements GreenCount {
    private static final int COUNTS = MOST_PUTTS + 1;
    private static final double[] NONE = {};

    /** The cells of the green. */
    final int[] cells;
    /** Distances that the odds of a level green are solved at, metres; none on a green with slopes. */
    final double[] nodes;
    /** By green cell and putts. */
    private final double[] putts;
    /** By green cell: where its first node stands in the next two, and the end of the last one. */
    private final int[] first;

    private int[] node = {};
    /** Of a cell they sum to 1 less the chance of having dropped in. */
    private double[] nodeWeight = {};

    GreenCells(HoleRaster raster, Place hole, GreenOdds odds) {
        cells = IntStream.range(0, raster.restCells())
                .filter(c -> raster.surface(c) == Surface.GREEN)
                .toArray();
        nodes = odds instanceof GreenOdds.Level level && level.odds() instanceof LevelGreenOdds paces
                ? paces.nodes()
                : NONE;
        putts = new double[cells.length * COUNTS];
        first = new int[cells.length + 1];
        for (int i = 0; i < cells.length; i++) {
            count(i, raster, hole, odds);
            first[i + 1] = first[i];
            if (isByDistance()) {
                spread(i, raster, hole);
            }
        }
    }

    /** True if the distance to the hole alone counts. */
    boolean isByDistance() {
        return nodes.length > 0;
    }

    @Override
    public double[] gather(double[] inCells) {
        double[] out = new double[cells.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = inCells[cells[i]];
        }
        return out;
    }

    @Override
    public double chance(int place, int count) {
        return putts[place * COUNTS + count];
    }

    /** Chances of arriving at the nodes, after that of having dropped in. */
    double[] byNode(double[] inCells) {
        double[] out = new double[nodes.length + 1];
        for (int i = 0; i < cells.length; i++) {
            double mass = inCells[cells[i]];
            out[0] += mass * chance(i, 0);
            for (int j = first[i]; mass != 0 && j < first[i + 1]; j++) {
                out[node[j] + 1] += mass * nodeWeight[j];
            }
        }
        return out;
    }

    /** Mean over a cell of what is known at the nodes, {@code holed} where the ball drops in. */
    double mean(int place, double holed, double[] atNodes) {
        double sum = chance(place, 0) * holed;
        for (int j = first[place]; j < first[place + 1]; j++) {
            sum += nodeWeight[j] * atNodes[node[j]];
        }
        return sum;
    }

    private void count(int i, HoleRaster raster, Place hole, GreenOdds odds) {
        double[] p = new double[COUNTS];
        double played = ValueField.GreenCells.mean(raster, cells[i], hole, (x, y) -> {
            odds.addProbabilities(x, y, p);
            return 1;
        });
        double parts = ValueField.GreenCells.PARTS * ValueField.GreenCells.PARTS;
        putts[i * COUNTS] = 1 - played;
        for (int k = 1; k < COUNTS; k++) {
            putts[i * COUNTS + k] = p[k] / parts;
        }
    }

    private void spread(int i, HoleRaster raster, Place hole) {
        double[] weight = new double[nodes.length];
        // The mean of each hat function over the cell, gathered in one pass over its parts.
        double part = ValueField.GreenCells.mean(
                raster, cells[i], hole, (x, y) -> hats(Math.hypot(x - hole.x(), y - hole.y()), weight));
        int[] used = IntStream.range(0, nodes.length).filter(n -> weight[n] > 0).toArray();
        double sum = Arrays.stream(weight).sum();
        int end = first[i] + used.length;
        if (end > node.length) {
            node = Arrays.copyOf(node, 2 * end);
            nodeWeight = Arrays.copyOf(nodeWeight, 2 * end);
        }
        for (int n : used) {
            node[first[i + 1]] = n;
            nodeWeight[first[i + 1]++] = weight[n] * part / sum;
        }
    }

    /** Adds the weights of linear interpolation at a distance; always worth 1. */
    private double hats(double metres, double[] weight) {
        int found = Arrays.binarySearch(nodes, metres);
        int left = Math.max(0, Math.min(found >= 0 ? found : -found - 2, nodes.length - 2));
        double share = Math.min(1, (metres - nodes[left]) / (nodes[left + 1] - nodes[left]));
        weight[left] += 1 - share;
        weight[left + 1] += share;
        return 1;
    }
}
