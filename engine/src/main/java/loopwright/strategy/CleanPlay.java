package loopwright.strategy;

import loopwright.ground.Surface;
import loopwright.numerics.Watch;

/** The chance that a fixed policy plays a hole out without a penalty stroke, from every state. */
final class CleanPlay {
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
        ofCell = new double[problem.raster.restCells()];
        for (int c = 0; c < ofCell.length; c++) {
            ofCell[c] = problem.raster.surface(c) == Surface.GREEN ? 1 : 0;
        }
    }

    double fromTee() {
        nodes.settle(this::update, this::refresh, SETTLED, Watch.NONE);
        return ofState[0];
    }

    private void refresh(int band) {
        for (int c : nodes.cellsOfBand[band]) {
            ofCell[c] = (1 - evaluation.field.replay[c]) * nodes.atCell(c, ofNode);
        }
    }

    /** How far the chance of a node moves. */
    private double update(int node) {
        OutcomeRows rows = evaluation.rows();
        for (int s = nodes.firstState[node]; s < nodes.firstState[node + 1]; s++) {
            ofState[s] = 0;
            for (int i = rows.start[s]; i < rows.start[s + 1] && !rows.drop[s]; i++) {
                if (rows.code[i] < ofCell.length) {
                    ofState[s] += rows.weight[i] * ofCell[rows.code[i]];
                }
            }
        }
        double mean = nodes.average(node, ofState);
        double moved = Math.abs(mean - ofNode[node]);
        ofNode[node] = mean;
        return moved;
    }
}
