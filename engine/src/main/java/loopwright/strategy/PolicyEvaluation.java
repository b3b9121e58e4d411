package loopwright.strategy;

import java.util.Arrays;
import loopwright.geo.Place;
import loopwright.numerics.Watch;

/**
 * What any fixed policy is worth on a hole: values of every state, the exact distribution of the score, and the chance
 * of a penalty, all from clouds independent of those on which choices were made.
 */
public final class PolicyEvaluation {
    /** Scores are told apart up to this many strokes; the last holds "or more". */
    public static final int MOST_STROKES = 20;

    private static final int MOST_PASSES = 60;
    private static final double SETTLED = 1e-7;

    private final HoleProblem problem;
    private final NodeSet nodes;
    final OutcomeRows rows;
    final ValueField field;
    final double[] value;
    /** Largest change of a node in the pass under way. */
    private double change;

    private double[] crossingCost = new double[64];
    private double[] crossingWeight = new double[64];

    PolicyEvaluation(
            HoleProblem problem,
            NodeSet nodes,
            NodePolicy policy,
            Spot[] spots,
            int[] points,
            double[] start,
            Watch watch) {
        this.problem = problem;
        this.nodes = nodes;
        rows = OutcomeRows.of(problem, policy, spots, points, watch);
        field = problem.values(nodes);
        value = start.clone();
        for (int n = 0; n < nodes.nodes; n++) {
            field.nodeValue[n] = nodes.average(n, value);
        }
        field.refreshAll();
        settle(watch);
    }

    /** Expected strokes from the tee. */
    public double expected() {
        return value[0];
    }

    /** Expected strokes to hole out of a ball lying at a place, over its situations; NaN where none is played from. */
    public double expectedFrom(Place place) {
        int cell = problem.raster.cell(place);
        double strokes = problem.raster.surface(cell).isPlayable() ? field.ofCell(cell) : Double.NaN;
        return Double.isFinite(strokes) ? strokes : Double.NaN;
    }

    private void settle(Watch watch) {
        change = Double.POSITIVE_INFINITY;
        for (int pass = 0; pass < MOST_PASSES && change > SETTLED; pass++) {
            watch.check();
            change = 0;
            nodes.inBands(this::update, field::refreshBand);
        }
    }

    private void update(int node) {
        double before = field.nodeValue[node];
        for (int s = nodes.firstState[node]; s < nodes.firstState[node + 1]; s++) {
            value[s] = valueOfRow(s);
        }
        field.nodeValue[node] = nodes.average(node, value);
        change = Math.max(change, Math.abs(field.nodeValue[node] - before));
    }

    private double valueOfRow(int s) {
        if (rows.drop[s]) {
            return rows.cost[s] + field.ofCell(rows.code[rows.start[s]]);
        }
        double sum = rows.cost[s];
        double again = 0;
        int crossings = 0;
        int cells = problem.raster.restCells();
        for (int i = rows.start[s]; i < rows.start[s + 1]; i++) {
            int code = rows.code[i];
            if (code < cells) {
                sum += rows.weight[i] * field.found[code];
                again += rows.weight[i] * field.replay[code];
            } else {
                if (crossings == crossingCost.length) {
                    crossingCost = Arrays.copyOf(crossingCost, 2 * crossings);
                    crossingWeight = Arrays.copyOf(crossingWeight, 2 * crossings);
                }
                crossingCost[crossings] = field.reliefValue(code - cells);
                crossingWeight[crossings++] = rows.weight[i];
            }
        }
        return Evaluator.solve(sum, again, crossingCost, crossingWeight, crossings, value[s]);
    }

    /** Probability of each score from the tee: index k holds exactly k strokes, the last one that many or more. */
    public double[] scores() {
        return new ScoreLanes(problem, nodes, this).fromTee();
    }

    /** Probability that the hole is played without a penalty stroke, from the tee. */
    public double withoutPenalty() {
        return new CleanPlay(problem, nodes, this).fromTee();
    }
}
