package loopwright.strategy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import loopwright.ground.Surface;

/**
 * The chances of the target on one hole and day under one policy, lane by lane: kept for every state, and for the few
 * lanes that the next one reads also for every cell.
 */
final class LaneField {
    private static final int KEPT = 4;
    private static final int BLOCK = 8192;

    final NodeSet nodes;
    final ReliefField relief;
    final float[] replay;
    private final HandOver after;
    private final GreenLanes green;
    private final List<double[]> ofState = new ArrayList<>();
    private final Map<Integer, double[]> found = new LinkedHashMap<>();

    LaneField(NodeSet nodes, ReliefField relief, float[] replay, HandOver after, GreenLanes green) {
        this.nodes = nodes;
        this.relief = relief;
        this.replay = replay;
        this.after = after;
        this.green = green;
    }

    /** Chance of the target if the hole is over in this lane. */
    double holed(Lane lane) {
        return after.at(lane.inHand);
    }

    double inState(Lane lane, int state) {
        return lane.settled() ? holed(lane) : ofState.get(lane.number)[state];
    }

    /** Chance from a ball found in a cell. */
    double inCell(Lane lane, int cell) {
        return lane.settled() ? holed(lane) : Math.min(1, found(lane)[cell] / (1 - replay[cell]));
    }

    /** The same worked out for this cell alone. */
    double ofCell(Lane lane, int cell) {
        if (lane.settled() || nodes.raster.surface(cell) == Surface.GREEN) {
            return inCell(lane, cell);
        }
        double[] states = ofState.get(lane.number);
        double sum = 0;
        for (int i = NodeMesh.CORNERS * cell; i < NodeMesh.CORNERS * (cell + 1) && nodes.cellNodes[i] >= 0; i++) {
            sum += nodes.cellWeights[i] * nodes.average(nodes.cellNodes[i], states);
        }
        return Math.max(0, Math.min(1, sum));
    }

    void put(Lane lane, double[] states) {
        while (ofState.size() <= lane.number) {
            ofState.add(new double[0]);
        }
        ofState.set(lane.number, states);
        green.solve(lane);
    }

    /** By cell: the chance from there times the chance that the ball is found. */
    double[] found(Lane lane) {
        double[] known = found.get(lane.number);
        if (known == null) {
            known = cells(lane);
            found.put(lane.number, known);
            if (found.size() > KEPT) {
                found.remove(found.keySet().iterator().next());
            }
        }
        return known;
    }

    /** Lets go of the cells until somebody asks again. */
    void forgetCells() {
        found.clear();
    }

    private double[] cells(Lane lane) {
        double[] ofNode = new double[nodes.nodes];
        for (int n = 0; n < ofNode.length; n++) {
            ofNode[n] = nodes.average(n, ofState.get(lane.number));
        }
        double[] out = new double[nodes.raster.restCells()];
        IntStream.range(0, (out.length + BLOCK - 1) / BLOCK)
                .parallel()
                .forEach(b -> readNodes(ofNode, out, b * BLOCK, Math.min(out.length, (b + 1) * BLOCK)));
        green.read(lane, out);
        return out;
    }

    /** Weights that are exact for linear change may reach beyond 0 or 1; a chance does not. */
    private void readNodes(double[] ofNode, double[] out, int from, int to) {
        for (int c = from; c < to; c++) {
            if (nodes.cellNodes[NodeMesh.CORNERS * c] >= 0 && nodes.raster.surface(c) != Surface.GREEN) {
                out[c] = (1 - replay[c]) * Math.max(0, Math.min(1, nodes.atCell(c, ofNode)));
            }
        }
    }
}
