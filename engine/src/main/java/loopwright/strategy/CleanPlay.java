package loopwright.strategy;

import loopwright.ground.Surface;

/** The chance that a fixed policy plays a hole out without a penalty stroke, from every state. */
final class CleanPlay {
    private static final int MOST_PASSES = 40;
    private static final double SETTLED = 1e-8;

    private final NodeSet nodes;
    private final PolicyEvaluation evaluation;
    private final double[] ofNode;
    private final double[] ofState;
    private final double[] ofCell;

    CleanPlay(HoleProblem problem, NodeSet nodes, PolicyEvaluation evaluation) {
        this.nodes = nodes;
        this.evaluation = evaluation;
        ofNode = new double[nodes.nodes];
        ofState = new double[nodes.states];
        ofCell = new double[problem.raster.cells()];
        for (int c = 0; c < ofCell.length; c++) {
            ofCell[c] = problem.raster.surface(c) == Surface.GREEN ? 1 : 0;
        }
    }

    double fromTee() {
        double change = 1;
        for (int pass = 0; pass < MOST_PASSES && change > SETTLED; pass++) {
            change = 0;
            int i = 0;
            for (int band = 0; band < nodes.cellsOfBand.length; band++) {
                while (i < nodes.nodes && nodes.band[nodes.order[i]] == band) {
                    change = Math.max(change, update(nodes.order[i++]));
                }
                for (int c : nodes.cellsOfBand[band]) {
                    ofCell[c] = (1 - evaluation.field.replay[c]) * interpolate(c);
                }
            }
        }
        return ofState[0];
    }

    private double update(int node) {
        OutcomeRows rows = evaluation.rows;
        double mean = 0;
        for (int s = nodes.firstState[node]; s < nodes.firstState[node + 1]; s++) {
            double sum = 0;
            for (int i = rows.start[s]; i < rows.start[s + 1] && !rows.drop[s]; i++) {
                if (rows.code[i] < ofCell.length) {
                    sum += rows.weight[i] * ofCell[rows.code[i]];
                }
            }
            ofState[s] = sum;
            mean += nodes.probability[s] * sum;
        }
        double change = Math.abs(mean - ofNode[node]);
        ofNode[node] = mean;
        return change;
    }

    private double interpolate(int c) {
        double sum = 0;
        for (int i = NodeMesh.CORNERS * c; i < NodeMesh.CORNERS * (c + 1) && nodes.cellNodes[i] >= 0; i++) {
            sum += nodes.cellWeights[i] * ofNode[nodes.cellNodes[i]];
        }
        return sum;
    }
}
