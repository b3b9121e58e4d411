package loopwright.strategy;

import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.putting.GreenOdds;

/**
 * The distribution of the score of a fixed policy, exactly: lane k holds for every place the chance of exactly k more
 * strokes. Every stroke lowers k, a penalty by one more, so that the lanes are found one after the other and nothing
 * is iterated.
 */
final class ScoreLanes {
    private final HoleProblem problem;
    private final NodeSet nodes;
    private final PolicyEvaluation evaluation;
    private final int lanes = PolicyEvaluation.MOST_STROKES;
    /** By lane, then cell: the chance that a ball found in the cell needs exactly that many more strokes. */
    private final float[][] cell;
    /** By lane, then state. */
    private final double[][] state;

    private final int[] bestDrop;

    ScoreLanes(HoleProblem problem, NodeSet nodes, PolicyEvaluation evaluation) {
        this.problem = problem;
        this.nodes = nodes;
        this.evaluation = evaluation;
        cell = new float[lanes][];
        state = new double[lanes][];
        bestDrop = new int[problem.relief.size()];
        for (int r = 0; r < bestDrop.length; r++) {
            bestDrop[r] = evaluation.field.bestDrop(r);
        }
    }

    double[] fromTee() {
        double[] out = new double[lanes + 1];
        double sum = 0;
        for (int k = 0; k < lanes; k++) {
            state[k] = new double[nodes.states];
            for (int s = 0; s < nodes.states; s++) {
                state[k][s] = chance(s, k);
            }
            cell[k] = cells(k);
            if (k >= 3) {
                cell[k - 3] = new float[0];
            }
            // Weights that are exact for linear change may go a hair below zero where a lane's chance is almost none.
            out[k] = Math.max(0, state[k][0]);
            sum += out[k];
        }
        out[lanes] = Math.max(0, 1 - sum);
        double rounding = sum + out[lanes];
        for (int k = 0; k <= lanes; k++) {
            out[k] /= rounding;
        }
        return out;
    }

    private double chance(int s, int k) {
        OutcomeRows rows = evaluation.rows;
        int next = k - rows.cost[s];
        if (next < 0) {
            return 0;
        }
        double sum = 0;
        int raster = problem.raster.restCells();
        double again = next >= 1 ? state[next - 1][s] : 0;
        double own = evaluation.value[s];
        for (int i = rows.start[s]; i < rows.start[s + 1]; i++) {
            int code = rows.code[i];
            if (code < raster) {
                float replay = rows.drop[s] ? 0 : evaluation.field.replay[code];
                sum += rows.weight[i] * ((1 - replay) * cell[next][code] + replay * again);
            } else {
                boolean relief = evaluation.field.reliefValue(code - raster) < 1 + own;
                sum += rows.weight[i] * (relief ? afterDrop(code - raster, next) : again);
            }
        }
        return sum;
    }

    /** The chance of exactly {@code left} more strokes after a crossing, the penalty strokes of its best drop included. */
    private double afterDrop(int crossing, int left) {
        int after = left - problem.relief.penalty(crossing);
        return after < 0 ? 0 : cell[after][bestDrop[crossing]];
    }

    private float[] cells(int k) {
        HoleRaster raster = problem.raster;
        double[] ofNode = new double[nodes.nodes];
        for (int n = 0; n < nodes.nodes; n++) {
            ofNode[n] = nodes.average(n, state[k]);
        }
        float[] out = new float[raster.restCells()];
        for (int c = 0; c < out.length; c++) {
            out[c] = (float) (raster.surface(c) == Surface.GREEN ? green(c, k) : nodes.atCell(c, ofNode));
        }
        return out;
    }

    private double green(int c, int k) {
        Place hole = problem.hole();
        if (k == 0) {
            return 1 - ValueField.GreenCells.mean(problem.raster, c, hole, (x, y) -> 1);
        }
        GreenOdds odds = problem.green;
        return ValueField.GreenCells.mean(problem.raster, c, hole, (x, y) -> odds.probability(x, y, k));
    }
}
