package loopwright.strategy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.putting.ChipIn;
import loopwright.putting.GreenOdds;

/**
 * What it costs from here, by outcome code: for every cell the expected strokes to hole out where the ball is found,
 * times the chance that it is, and the chance that the stroke must be replayed (lost or out of bounds); for every
 * crossing into a penalty area the best relief of the Rules but stroke and distance.
 */
final class ValueField {
    final NodeSet nodes;
    final double[] nodeValue;
    final double[] found;
    final float[] replay;
    private double[] relief = new double[0];
    /** By crossing: the cell of the best drop. */
    private int[] reliefCell = new int[0];
    /** Crossings known when the reliefs were last read. */
    private int known;
    /** By band: the crossings with a drop in one of its cells. */
    private final List<List<Integer>> reliefsOfBand;

    private final HoleRaster raster;
    private final ReliefField crossings;

    ValueField(NodeSet nodes, ReliefField crossings, Place hole, GreenOdds odds) {
        this.nodes = nodes;
        this.raster = nodes.raster;
        this.crossings = crossings;
        reliefsOfBand = Stream.generate(() -> (List<Integer>) new ArrayList<Integer>())
                .limit(nodes.cellsOfBand.length)
                .toList();
        nodeValue = new double[nodes.nodes];
        found = new double[raster.restCells()];
        replay = new float[raster.restCells()];
        for (int cell = 0; cell < raster.restCells(); cell++) {
            boolean out = raster.surface(cell) == Surface.OUT_OF_BOUNDS;
            replay[cell] = out ? 1 : crossings.dropsByTheFairway() ? 0 : raster.notFound(cell);
            if (raster.surface(cell) == Surface.GREEN) {
                found[cell] = GreenCells.mean(raster, cell, hole, odds::expectedPutts);
            }
        }
    }

    /** Reads the nodes into the cells whose last node lies in this band, and into the reliefs. */
    void refreshBand(int band) {
        refreshCells(band);
        reliefsOfBand.get(band).forEach(this::refreshRelief);
        learnReliefs();
    }

    void refreshAll() {
        for (int band = 0; band < nodes.cellsOfBand.length; band++) {
            refreshCells(band);
        }
        for (int r = 0; r < known; r++) {
            refreshRelief(r);
        }
        learnReliefs();
    }

    private void refreshCells(int band) {
        for (int cell : nodes.cellsOfBand[band]) {
            found[cell] = (1 - replay[cell]) * nodes.atCell(cell, nodeValue);
        }
    }

    /** Expected strokes from a ball lying in a cell, found; infinite where no ball can be played from. */
    double ofCell(int cell) {
        return replay[cell] < 1 ? found[cell] / (1 - replay[cell]) : Double.POSITIVE_INFINITY;
    }

    private void refreshRelief(int record) {
        reliefCell[record] = cheapestDrop(record);
        relief[record] = reliefOf(record, reliefCell[record]);
    }

    /** Takes in the crossings that were found since the last time. */
    private void learnReliefs() {
        int n = crossings.size();
        if (relief.length < n) {
            relief = Arrays.copyOf(relief, Math.max(n, 2 * relief.length));
            reliefCell = Arrays.copyOf(reliefCell, relief.length);
        }
        for (; known < n; known++) {
            refreshRelief(known);
            for (int cell : crossings.drops(known)) {
                if (nodes.bandOfCell[cell] >= 0) {
                    addOnce(reliefsOfBand.get(nodes.bandOfCell[cell]), known);
                }
            }
        }
    }

    private static void addOnce(List<Integer> rising, int record) {
        if (rising.isEmpty() || rising.get(rising.size() - 1) != record) {
            rising.add(record);
        }
    }

    /** Cost of the best drop after a crossing, its penalty strokes included; infinite where no drop is possible. */
    private double reliefOf(int record, int drop) {
        return drop < 0 ? Double.POSITIVE_INFINITY : crossings.penalty(record) + ofCell(drop);
    }

    /** The cell of the best drop after a crossing, or -1. */
    int bestDrop(int record) {
        return isRefreshed(record) ? reliefCell[record] : cheapestDrop(record);
    }

    /** False for a crossing that was found after the last refresh. */
    private boolean isRefreshed(int record) {
        return record < known;
    }

    private int cheapestDrop(int record) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int cell : crossings.drops(record)) {
            double value = ofCell(cell);
            if (value < least) {
                least = value;
                best = cell;
            }
        }
        return best;
    }

    /** Value of a relief code, also of one found after the last refresh. */
    double reliefValue(int record) {
        return isRefreshed(record) ? relief[record] : reliefOf(record, cheapestDrop(record));
    }

    /** Averages over the area of a green cell, where the value bends too much for its centre alone. */
    static final class GreenCells {
        /** A cell is looked at in so many parts each way. */
        static final int PARTS = 3;

        private GreenCells() {}

        /** Mean over the cell of a function of the place; 0 where the ball drops in from off the green. */
        static double mean(HoleRaster raster, int cell, Place hole, DoubleBinaryOperator ofPlace) {
            double part = raster.side(cell) / PARTS;
            double sum = 0;
            for (int i = 0; i < PARTS; i++) {
                for (int j = 0; j < PARTS; j++) {
                    Place at =
                            raster.place(raster.west(cell) + (i + 0.5) * part, raster.south(cell) + (j + 0.5) * part);
                    boolean holed = at.distanceTo(hole) <= ChipIn.RADIUS_METRES;
                    sum += holed ? 0 : ofPlace.applyAsDouble(at.x(), at.y());
                }
            }
            return sum / (PARTS * PARTS);
        }
    }
}
