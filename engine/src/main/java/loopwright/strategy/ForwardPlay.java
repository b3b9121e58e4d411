package loopwright.strategy;

import java.util.Arrays;

/**
 * A fixed policy played forward from the tee, all its chances at once: the probability of being in every state after n
 * strokes is sent on stroke by stroke, and what arrives on the green is putted out. Penalties arrive a stroke later.
 * Chances of less than 1e-8, some 1e-4 in all, are not followed and score what is expected of them; of less than 1e-12
 * where the nodes are few and the answer exact. Where only the difference of two players counts, less than 1e-6 is let go
 * as if it had never been: one step of a skill comes out the same to 2e-4 strokes a hole.
 */
final class ForwardPlay {
    private static final int MOST = PolicyEvaluation.MOST_STROKES;
    private static final double NEGLIGIBLE = 1e-8;
    private static final double NEGLIGIBLE_ON_NODES_ALONE = 1e-12;
    private static final double NEGLIGIBLE_TO_COMPARE = 1e-6;
    /** A stroke with its penalties is over within this many counts. */
    private static final int AHEAD = 4;

    private final NodeSet nodes;
    private final OutcomeRows rows;
    private final PolicyEvaluation decider;
    private final ReliefField relief;
    private final boolean toCompare;
    private final double negligible;
    private final double[][] inState = new double[AHEAD][];
    private final double[][] inCell = new double[AHEAD][];
    /** By count: the cells with something in them, and how many there are. */
    private final int[][] touched = new int[AHEAD][1 << 10];

    private final int[] size = new int[AHEAD];
    /** By strokes, what has arrived in each cell of the green. */
    private final double[][] arrived = new double[MOST][0];
    /** The last count at which something still arrives. */
    private int under;

    /** Expected visits of every state in one playing of the hole. */
    final double[] visits;
    /** Probability of each score, the last that many or more. */
    final double[] scores = new double[MOST + 1];

    /** {@code decider} chooses between the reliefs; its policy is the one the rows belong to. */
    ForwardPlay(NodeSet nodes, OutcomeRows rows, PolicyEvaluation decider, GreenCells green) {
        this(nodes, rows, decider, green, rows, 1, false);
    }

    /**
     * For comparing players: how likely the ball arrives in each cell of the green, by strokes, seldom seen chances being let
     * go sooner. Whoever putts then, {@link #puttedOut} tells the scores.
     */
    static double[][] arrivals(NodeSet nodes, OutcomeRows rows, PolicyEvaluation decider, GreenCells green) {
        ForwardPlay play = new ForwardPlay(nodes, rows, decider, green, rows, 1, true);
        return play.arrived;
    }

    /** Scores of arrivals on the green if they are putted out; what was let go before is as if it had never been. */
    static double[] puttedOut(double[][] arrivals, GreenCells green) {
        double[] scores = new double[MOST + 1];
        for (int strokes = 0; strokes < arrivals.length; strokes++) {
            puttOut(arrivals[strokes], strokes, green, scores);
        }
        evenOut(scores);
        return scores;
    }

    /** The same with the first stroke spread evenly over all of {@code tee}. */
    ForwardPlay(NodeSet nodes, OutcomeRows rows, PolicyEvaluation decider, GreenCells green, OutcomeRows tee) {
        this(nodes, rows, decider, green, tee, tee.cost.length, false);
    }

    private ForwardPlay(
            NodeSet nodes,
            OutcomeRows rows,
            PolicyEvaluation decider,
            GreenCells green,
            OutcomeRows tee,
            int teeRows,
            boolean toCompare) {
        this.toCompare = toCompare;
        negligible = toCompare ? NEGLIGIBLE_TO_COMPARE : decider.isAllRound() ? NEGLIGIBLE : NEGLIGIBLE_ON_NODES_ALONE;
        this.nodes = nodes;
        this.rows = rows;
        this.decider = decider;
        relief = decider.relief();
        visits = new double[nodes.states];
        for (int i = 0; i < AHEAD; i++) {
            inState[i] = new double[nodes.states];
            inCell[i] = new double[nodes.raster.restCells()];
        }
        visits[0] = 1;
        for (int row = 0; row < teeRows; row++) {
            send(tee, row, 0, 1.0 / teeRows, 0);
        }
        for (int n = 1; n < MOST && n <= under; n++) {
            play(n, green);
        }
        if (!toCompare) {
            for (int n = 0; n < arrived.length; n++) {
                puttOut(arrived[n], n, green, scores);
            }
            close();
        }
    }

    private void play(int strokes, GreenCells green) {
        arrived[strokes] = onGreen(inCell[strokes % AHEAD], green);
        double[] states = inState[strokes % AHEAD];
        arrive(strokes % AHEAD, states);
        for (int s = 0; s < states.length; s++) {
            if (Math.abs(states[s]) > negligible) {
                visits[s] += states[s];
                send(rows, s, s, states[s], strokes);
            } else if (states[s] != 0 && !toCompare) {
                expect(strokes + decider.value[s], states[s]);
            }
        }
        Arrays.fill(states, 0);
    }

    /** A chance scores the whole numbers either side of what is expected of it. */
    private void expect(double score, double mass) {
        int low = (int) Math.min(MOST, score);
        double share = Math.min(1, score - low);
        scores[low] += (1 - share) * mass;
        scores[Math.min(MOST, low + 1)] += share * mass;
    }

    private static double[] onGreen(double[] cells, GreenCells green) {
        double[] out = new double[green.cells.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = cells[green.cells[i]];
        }
        return out;
    }

    private static void puttOut(double[] onGreen, int strokes, GreenCells green, double[] scores) {
        for (int i = 0; i < onGreen.length; i++) {
            double mass = onGreen[i];
            if (mass != 0) {
                for (int putts = 0; putts <= GreenCells.MOST_PUTTS; putts++) {
                    scores[Math.min(MOST, strokes + putts)] += mass * green.putts[i][putts];
                }
            }
        }
    }

    /** From cells to the states of the nodes they read. */
    private void arrive(int slot, double[] states) {
        double[] cells = inCell[slot];
        double[] ofNode = new double[nodes.nodes];
        for (int k = 0; k < size[slot]; k++) {
            int c = touched[slot][k];
            for (int i = NodeMesh.CORNERS * c; i < NodeMesh.CORNERS * (c + 1) && nodes.cellNodes[i] >= 0; i++) {
                ofNode[nodes.cellNodes[i]] += cells[c] * nodes.cellWeights[i];
            }
            cells[c] = 0;
        }
        size[slot] = 0;
        for (int s = 0; s < states.length; s++) {
            states[s] += ofNode[nodes.nodeOfState[s]] * nodes.probability[s];
        }
    }

    private void put(int count, int cell, double mass) {
        if (mass == 0) {
            return;
        }
        int slot = count % AHEAD;
        if (inCell[slot][cell] == 0) {
            if (size[slot] == touched[slot].length) {
                touched[slot] = Arrays.copyOf(touched[slot], 2 * size[slot]);
            }
            touched[slot][size[slot]++] = cell;
        }
        inCell[slot][cell] += mass;
        under = Math.max(under, count);
    }

    private void send(OutcomeRows rows, int row, int s, double mass, int strokes) {
        int next = strokes + rows.cost[row];
        double again = 0;
        int cells = nodes.raster.restCells();
        for (int i = rows.start[row]; i < rows.start[row + 1]; i++) {
            int code = rows.code[i];
            double share = mass * rows.weight[i];
            if (code < cells) {
                double replay = rows.drop[row] ? 0 : decider.field.replay[code];
                put(next, code, share * (1 - replay));
                again += share * replay;
            } else if (decider.field.reliefValue(code - cells) < 1 + decider.value[s]) {
                int after = next + relief.penalty(code - cells);
                put(after, decider.field.bestDrop(code - cells), share);
            } else {
                again += share;
            }
        }
        if (again != 0) {
            inState[(next + 1) % AHEAD][s] += again;
            under = Math.max(under, next + 1);
        }
    }

    /** What is still under way belongs to the last count. */
    private void close() {
        double sum = 0;
        for (int k = 0; k < MOST; k++) {
            sum += Math.max(0, scores[k]);
        }
        scores[MOST] = 1 - sum;
        evenOut(scores);
    }

    /** Rounding and weights below zero are evened out. */
    private static void evenOut(double[] scores) {
        double all = 0;
        for (int k = 0; k < scores.length; k++) {
            scores[k] = Math.max(0, scores[k]);
            all += scores[k];
        }
        for (int k = 0; k < scores.length; k++) {
            scores[k] /= all;
        }
    }
}
