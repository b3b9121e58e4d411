package loopwright.strategy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.IntToDoubleFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import loopwright.geo.Line;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.SituationTable;

/**
 * The decision nodes of a hole, each with one state per situation of its surface, in the order in which they are
 * solved: in bands of rising distance to the hole. Node 0 is the tee.
 */
final class NodeSet {
    /** Width of a band, cells. */
    private static final double BAND_CELLS = 16;
    /** How far a node of the right surface is looked for, cells; then any will do. */
    private static final int MOST_REACH = 5;

    private static final int MOST_PASSES = 100;
    /** Nodes of a band that one worker goes through. */
    private static final int STRETCH = 8;

    final HoleRaster raster;
    private final int baseCells;
    final int nodes;
    final int states;
    final double[] column;
    final double[] row;
    final Surface[] surface;
    /** Distance to the next nodes, cells; 0 for those that stand apart. */
    final int[] spacing;

    final int[] firstState;
    final int[] nodeOfState;
    final Situation[] situation;
    final double[] probability;
    final int[] band;
    /** All nodes, in bands of rising distance to the hole. */
    final int[] order;
    /** For cell i: its nodes at 4 i to 4 i + 3 (or -1) and their weights. */
    final int[] cellNodes;

    final double[] cellWeights;
    /** By cell: the band in which the last of its nodes is solved; -1 where it reads none. */
    final int[] bandOfCell;
    /** Cells that read nodes, by that band. */
    final int[][] cellsOfBand;

    NodeSet(HoleRaster raster, Line line, int baseCells) {
        this.raster = raster;
        this.baseCells = baseCells;
        NodeMesh mesh = new NodeMesh(raster, line, baseCells);
        cellNodes = mesh.cellNodes;
        cellWeights = mesh.cellWeights;
        nodes = mesh.nodes;
        column = Arrays.copyOf(mesh.column, nodes);
        row = Arrays.copyOf(mesh.row, nodes);
        surface = Arrays.copyOf(mesh.surface, nodes);
        spacing = Arrays.copyOf(mesh.spacing, nodes);
        firstState = new int[nodes + 1];
        List<SituationTable.Chance> all = new ArrayList<>();
        for (int n = 0; n < nodes; n++) {
            all.addAll(SituationTable.of(surface[n], raster.preferredLies));
            firstState[n + 1] = all.size();
        }
        states = all.size();
        situation = all.stream().map(SituationTable.Chance::situation).toArray(Situation[]::new);
        probability =
                all.stream().mapToDouble(SituationTable.Chance::probability).toArray();
        nodeOfState = new int[states];
        for (int n = 0; n < nodes; n++) {
            Arrays.fill(nodeOfState, firstState[n], firstState[n + 1], n);
        }
        band = bands(raster.column(line.end()), raster.row(line.end()));
        order = IntStream.range(0, nodes)
                .boxed()
                .sorted(Comparator.comparingInt(this::turn))
                .mapToInt(Integer::intValue)
                .toArray();
        bandOfCell = new int[raster.cells()];
        placeCells();
        cellsOfBand = sortCells();
    }

    private int[] bands(double holeColumn, double holeRow) {
        return IntStream.range(0, nodes)
                .map(n -> (int) (Math.hypot(column[n] - holeColumn, row[n] - holeRow) / BAND_CELLS))
                .toArray();
    }

    private void placeCells() {
        for (int cell = 0; cell < bandOfCell.length; cell++) {
            int last = -1;
            for (int i = NodeMesh.CORNERS * cell; i < NodeMesh.CORNERS * (cell + 1) && cellNodes[i] >= 0; i++) {
                last = Math.max(last, band[cellNodes[i]]);
            }
            bandOfCell[cell] = last;
        }
    }

    private int[][] sortCells() {
        int bands = Arrays.stream(band).max().orElse(0) + 1;
        int[] size = new int[bands];
        for (int of : bandOfCell) {
            if (of >= 0) {
                size[of]++;
            }
        }
        int[][] out = new int[bands][];
        for (int b = 0; b < bands; b++) {
            out[b] = new int[size[b]];
        }
        for (int cell = bandOfCell.length - 1; cell >= 0; cell--) {
            int of = bandOfCell[cell];
            if (of >= 0) {
                out[of][--size[of]] = cell;
            }
        }
        return out;
    }

    /** Mean of a value of states over the situations of a node. */
    double average(int node, double[] ofState) {
        double sum = 0;
        for (int s = firstState[node]; s < firstState[node + 1]; s++) {
            sum += probability[s] * ofState[s];
        }
        return sum;
    }

    /** A value of nodes as read by a cell; 0 where the cell reads none. */
    double atCell(int cell, double[] ofNode) {
        double sum = 0;
        for (int i = NodeMesh.CORNERS * cell; i < NodeMesh.CORNERS * (cell + 1) && cellNodes[i] >= 0; i++) {
            sum += cellWeights[i] * ofNode[cellNodes[i]];
        }
        return sum;
    }

    /** A value of states as read by a cell in one situation. */
    double atCell(int cell, Situation in, double[] ofState) {
        double sum = 0;
        for (int i = NodeMesh.CORNERS * cell; i < NodeMesh.CORNERS * (cell + 1) && cellNodes[i] >= 0; i++) {
            sum += cellWeights[i] * ofState[stateOf(cellNodes[i], in)];
        }
        return sum;
    }

    /** Visits every node, band by band from the hole outwards, and says when a band is done. */
    void inBands(IntConsumer node, IntConsumer bandDone) {
        int i = 0;
        for (int b = 0; b < cellsOfBand.length; b++) {
            while (i < nodes && band[order[i]] == b) {
                node.accept(order[i++]);
            }
            bandDone.accept(b);
        }
    }

    /**
     * Updates nodes again and again until none moves by more than {@code settled}: all of them, then those that still move
     * until they rest, and all again.
     *
     * @param update of one node; how far it moves
     */
    void settle(IntToDoubleFunction update, IntConsumer bandDone, double settled, Watch watch) {
        boolean[] moves = new boolean[nodes];
        boolean all = true;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            watch.check();
            boolean every = all;
            inBands(
                    n -> {
                        if (every || moves[n]) {
                            moves[n] = update.applyAsDouble(n) > settled;
                        }
                    },
                    bandDone);
            boolean rests = IntStream.range(0, nodes).noneMatch(n -> moves[n]);
            if (every && rests) {
                return;
            }
            all = rests;
        }
    }

    /**
     * Visits every node, with all cores: a band's nodes have two turns, as the squares of a chessboard have two colours, so that none
     * has the turn of its neighbours; those of a turn are gone through side by side, each stretch by a worker of its own.
     */
    void inBandsAtOnce(Supplier<IntConsumer> worker, Runnable turnDone, IntConsumer bandDone) {
        int next = 0;
        for (int turn = 0; turn < 2 * cellsOfBand.length; turn++) {
            int from = next;
            while (next < nodes && turn(order[next]) == turn) {
                next++;
            }
            int to = next;
            IntStream.range(0, (to - from + STRETCH - 1) / STRETCH).parallel().forEach(stretch -> {
                int begin = from + stretch * STRETCH;
                Arrays.stream(order, begin, Math.min(to, begin + STRETCH)).forEach(worker.get());
            });
            turnDone.run();
            if (turn % 2 == 1) {
                bandDone.accept(turn / 2);
            }
        }
    }

    private int turn(int node) {
        int square = (int) (column[node] / baseCells) + (int) (row[node] / baseCells);
        return 2 * band[node] + (square & 1);
    }

    /** The node that counts most for a cell, or -1 if the cell reads none. */
    int mainNode(int cell) {
        int best = -1;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < NodeMesh.CORNERS && cellNodes[NodeMesh.CORNERS * cell + i] >= 0; i++) {
            if (cellWeights[NodeMesh.CORNERS * cell + i] > most) {
                most = cellWeights[NodeMesh.CORNERS * cell + i];
                best = cellNodes[NodeMesh.CORNERS * cell + i];
            }
        }
        return best;
    }

    /**
     * The node of a surface that stands for a place. Near an edge the cell's centre can lie on another surface than the
     * place itself; then the nearest cell of the right surface answers.
     */
    int nodeFor(double atColumn, double atRow, Surface on) {
        for (int reach = 0; reach <= MOST_REACH; reach++) {
            int best = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int r = -reach; r <= reach; r++) {
                for (int c = -reach; c <= reach; c++) {
                    int node = mainNode(raster.cell(atColumn + c, atRow + r));
                    if (node >= 0 && (surface[node] == on || reach == MOST_REACH)) {
                        double distance = Math.hypot(column[node] - atColumn, row[node] - atRow);
                        if (distance < least) {
                            least = distance;
                            best = node;
                        }
                    }
                }
            }
            if (best >= 0) {
                return best;
            }
        }
        return 0;
    }

    /** The state of a node in a situation; its first state if the node does not know the situation. */
    int stateOf(int node, Situation wanted) {
        for (int s = firstState[node]; s < firstState[node + 1]; s++) {
            if (situation[s] == wanted) {
                return s;
            }
        }
        return firstState[node];
    }
}
