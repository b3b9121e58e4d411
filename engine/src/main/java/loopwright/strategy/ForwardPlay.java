package loopwright.strategy;

import java.util.Arrays;

/**
 * A fixed policy played forward from the tee, all its chances at once: the probability of being in every state after n
 * strokes is sent on stroke by stroke, and what arrives on the green is putted out. Penalties arrive a stroke later.
 * Chances of less than 1e-8, some 1e-4 in all, are not followed and score what is expected of them; of less than 1e-12
 * where the nodes are few and the answer exact. Where only the difference of two players counts, less than 1e-6 is let go
 * as if it had never been: one step of a skill comes out the same to 2e-4 strokes a hole; less than 1e-5 where it only counts
 * how much such differences vary.
 */
final class ForwardPlay {
    private static final int MOST = PolicyEvaluation.MOST_STROKES;
    private static final double NEGLIGIBLE = 1e-8;
    private static final double NEGLIGIBLE_ON_NODES_ALONE = 1e-12;
    private static final double NEGLIGIBLE_TO_COMPARE = 1e-6;
    private static final double NEGLIGIBLE_ROUGHLY = 1e-5;
    /** A stroke with its penalties is over within this many counts. */
    private static final int AHEAD = 4;

    private final NodeSet nodes;
    private final OutcomeRows rows;
    private final PolicyEvaluation decider;
    private final ReliefField relief;
    private final boolean toCompare;
    private final double negligible;
    private final double[][] inState;
    private final double[][] inCell;
    /** By count: the cells with something in them, and how many there are. */
    private final int[][] touched;

    private final int[] size;
    /** By strokes, what has arrived at each place on the green. */
    private final double[][] arrived = new double[MOST][0];
    /** The last count at which something still arrives. */
    private int under;

    /** Expected visits of every state in one playing of the hole. */
    final double[] visits;
    /** Probability of each score, the last that many or more. */
    final double[] scores = new double[MOST + 1];

    /** {@code decider} chooses between the reliefs; its policy is the one the rows belong to. */
    ForwardPlay(NodeSet nodes, OutcomeRows rows, PolicyEvaluation decider, GreenCount green) {
        this(nodes, rows, decider, green, rows, 1, false, negligible(decider));
    }

    /**
     * For comparing players: how likely the ball arrives at each place on the green, by strokes, seldom seen chances being let
     * go sooner. Whoever putts then, {@link #puttedOut} tells the scores.
     */
    static double[][] arrivals(
            NodeSet nodes, OutcomeRows rows, PolicyEvaluation decider, GreenCount green, boolean rough) {
        double negligible = rough ? NEGLIGIBLE_ROUGHLY : NEGLIGIBLE_TO_COMPARE;
        return new ForwardPlay(nodes, rows, decider, green, rows, 1, true, negligible).arrived;
    }

    /** Scores of arrivals on the green if they are putted out; what was let go before is as if it had never been. */
    static double[] puttedOut(double[][] arrivals, GreenCount green) {
        double[] scores = new double[MOST + 1];
        for (int strokes = 0; strokes < arrivals.length; strokes++) {
            puttOut(arrivals[strokes], strokes, green, scores);
        }
        evenOut(scores);
        return scores;
    }

    /** The same with the first stroke spread evenly over all of {@code tee}. */
    ForwardPlay(NodeSet nodes, OutcomeRows rows, PolicyEvaluation decider, GreenCount green, OutcomeRows tee) {
        this(nodes, rows, decider, green, tee, tee.cost.length, false, negligible(decider));
    }

    private static double negligible(PolicyEvaluation decider) {
        return decider.isAllRound() ? NEGLIGIBLE : NEGLIGIBLE_ON_NODES_ALONE;
    }

    private ForwardPlay(
            NodeSet nodes,
            OutcomeRows rows,
            PolicyEvaluation decider,
            GreenCount green,
            OutcomeRows tee,
            int teeRows,
            boolean toCompare,
            double negligible) {
        this.toCompare = toCompare;
        this.negligible = negligible;
        this.nodes = nodes;
        this.rows = rows;
        this.decider = decider;
        relief = decider.relief();
        visits = new double[nodes.states];
        Room room = Room.take(nodes);
        inState = room.inState;
        inCell = room.inCell;
        touched = room.touched;
        size = room.size;
        visits[0] = 1;
        for (int row = 0; row < teeRows; row++) {
            send(tee, row, 0, 1.0 / teeRows, 0);
        }
        for (int n = 1; n < MOST && n <= under; n++) {
            play(n, green);
        }
        room.giveBack();
        if (!toCompare) {
            for (int n = 0; n < arrived.length; n++) {
                puttOut(arrived[n], n, green, scores);
            }
            close();
        }
    }

    private void play(int strokes, GreenCount green) {
        arrived[strokes] = green.gather(inCell[strokes % AHEAD]);
        double[] states = inState[strokes % AHEAD];
        arrive(strokes % AHEAD, states);
        for (int s = 0; s < nodes.states; s++) {
            if (Math.abs(states[s]) > negligible) {
                visits[s] += states[s];
                send(rows, s, s, states[s], strokes);
            } else if (states[s] != 0 && !toCompare) {
                expect(strokes + decider.value[s], states[s]);
            }
        }
        Arrays.fill(states, 0, nodes.states, 0);
    }

    /** A chance scores the whole numbers either side of what is expected of it. */
    private void expect(double score, double mass) {
        int low = (int) Math.min(MOST, score);
        double share = Math.min(1, score - low);
        scores[low] += (1 - share) * mass;
        scores[Math.min(MOST, low + 1)] += share * mass;
    }

    private static void puttOut(double[] onGreen, int strokes, GreenCount green, double[] scores) {
        for (int i = 0; i < onGreen.length; i++) {
            double mass = onGreen[i];
            if (mass != 0) {
                for (int putts = 0; putts <= GreenCount.MOST_PUTTS; putts++) {
                    scores[Math.min(MOST, strokes + putts)] += mass * green.chance(i, putts);
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
        for (int s = 0; s < nodes.states; s++) {
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

    /** Where chances wait for their count, empty between two plays; thousands of plays of a thread use one room. */
    private static final class Room {
        private static final ThreadLocal<Room> OF_THREAD = new ThreadLocal<>();

        final double[][] inState;
        final double[][] inCell;
        final int[][] touched = new int[AHEAD][1 << 10];
        final int[] size = new int[AHEAD];

        private Room(int states, int cells) {
            inState = new double[AHEAD][states];
            inCell = new double[AHEAD][cells];
        }

        /** Nobody else's until it is given back; one that is not, because its play failed, is forgotten. */
        static Room take(NodeSet nodes) {
            Room room = OF_THREAD.get();
            OF_THREAD.remove();
            int cells = nodes.raster.restCells();
            return room == null || room.inState[0].length < nodes.states || room.inCell[0].length < cells
                    ? new Room(nodes.states, cells)
                    : room;
        }

        /** What was to come after the last count is let go. */
        void giveBack() {
            for (int slot = 0; slot < AHEAD; slot++) {
                Arrays.fill(inState[slot], 0);
                for (int k = 0; k < size[slot]; k++) {
                    inCell[slot][touched[slot][k]] = 0;
                }
                size[slot] = 0;
            }
            OF_THREAD.set(this);
        }
    }
}
