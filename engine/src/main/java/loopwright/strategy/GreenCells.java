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
final class GreenCells {
    static final int MOST_PUTTS = LevelGreenOdds.MOST_PUTTS;

    /** The cells of the green. */
    final int[] cells;
    /** By green cell, then putts. */
    final double[][] putts;
    /** By green cell: distance nodes and their weights, which sum to 1 less the chance of having dropped in. */
    final int[][] node;

    final double[][] nodeWeight;

    GreenCells(HoleRaster raster, Place hole, GreenOdds odds) {
        this(raster, hole, odds, true);
    }

    /** For counting putts alone: the distances among the nodes of the odds stay unknown. */
    static GreenCells toCount(HoleRaster raster, Place hole, GreenOdds odds) {
        return new GreenCells(raster, hole, odds, false);
    }

    private GreenCells(HoleRaster raster, Place hole, GreenOdds odds, boolean withNodes) {
        cells = IntStream.range(0, raster.restCells())
                .filter(c -> raster.surface(c) == Surface.GREEN)
                .toArray();
        putts = new double[cells.length][];
        node = new int[cells.length][];
        nodeWeight = new double[cells.length][];
        for (int i = 0; i < cells.length; i++) {
            putts[i] = putts(raster, cells[i], hole, odds);
            if (withNodes && odds instanceof GreenOdds.Level level && level.odds() instanceof LevelGreenOdds paces) {
                spread(i, raster, hole, paces.nodes());
            }
        }
    }

    private static double[] putts(HoleRaster raster, int cell, Place hole, GreenOdds odds) {
        double[] p = new double[MOST_PUTTS + 1];
        double played = ValueField.GreenCells.mean(raster, cell, hole, (x, y) -> {
            odds.addProbabilities(x, y, p);
            return 1;
        });
        double parts = ValueField.GreenCells.PARTS * ValueField.GreenCells.PARTS;
        for (int k = 1; k <= MOST_PUTTS; k++) {
            p[k] /= parts;
        }
        p[0] = 1 - played;
        return p;
    }

    private void spread(int i, HoleRaster raster, Place hole, double[] nodes) {
        double[] weight = new double[nodes.length];
        // The mean of each hat function over the cell, gathered in one pass over its parts.
        double part = ValueField.GreenCells.mean(
                raster, cells[i], hole, (x, y) -> hats(nodes, Math.hypot(x - hole.x(), y - hole.y()), weight));
        int[] used = IntStream.range(0, nodes.length).filter(n -> weight[n] > 0).toArray();
        double sum = Arrays.stream(weight).sum();
        node[i] = used;
        nodeWeight[i] =
                Arrays.stream(used).mapToDouble(n -> weight[n] * part / sum).toArray();
    }

    /** Adds the weights of linear interpolation at a distance; always worth 1. */
    private static double hats(double[] nodes, double metres, double[] weight) {
        int found = Arrays.binarySearch(nodes, metres);
        int left = Math.max(0, Math.min(found >= 0 ? found : -found - 2, nodes.length - 2));
        double share = Math.min(1, (metres - nodes[left]) / (nodes[left + 1] - nodes[left]));
        weight[left] += 1 - share;
        weight[left + 1] += share;
        return 1;
    }
}
