package loopwright.strategy;

/**
 * How often each state is met under a fixed policy: expected visits in one playing of the hole from the tee, found by
 * sending the probability forward stroke by stroke.
 */
final class Occupancy {
    private static final int MOST_STROKES = 40;
    private static final double LEFT_OVER = 1e-7;
    /** A state this seldom met at one stroke is let go: all of them together are far below what play is searched for. */
    private static final double NEGLIGIBLE = 1e-9;

    private final NodeSet nodes;
    private final OutcomeRows rows;
    private final ValueField field;
    private final double[] value;
    private double[] next;

    private Occupancy(NodeSet nodes, OutcomeRows rows, ValueField field, double[] value) {
        this.nodes = nodes;
        this.rows = rows;
        this.field = field;
        this.value = value;
        this.next = new double[nodes.states];
    }

    /** Expected visits by state; {@code value} decides, as in the solver, between relief and replay. */
    static double[] of(NodeSet nodes, OutcomeRows rows, ValueField field, double[] value) {
        return new Occupancy(nodes, rows, field, value).visits();
    }

    private double[] visits() {
        double[] visits = new double[nodes.states];
        double[] here = new double[nodes.states];
        here[0] = 1;
        double left = 1;
        for (int stroke = 0; stroke < MOST_STROKES && left > LEFT_OVER; stroke++) {
            next = new double[nodes.states];
            left = 0;
            for (int s = 0; s < here.length; s++) {
                if (Math.abs(here[s]) > NEGLIGIBLE) {
                    visits[s] += here[s];
                    left += here[s];
                    send(s, here[s]);
                }
            }
            here = next;
        }
        return visits;
    }

    private void send(int s, double mass) {
        int cells = field.found.length;
        for (int i = rows.start[s]; i < rows.start[s + 1]; i++) {
            double share = mass * rows.weight[i];
            int code = rows.code[i];
            if (code < cells) {
                double replay = rows.drop[s] ? 0 : field.replay[code];
                next[s] += share * replay;
                arrive(code, share * (1 - replay));
            } else if (field.reliefValue(code - cells) < 1 + value[s]) {
                arrive(field.bestDrop(code - cells), share);
            } else {
                next[s] += share;
            }
        }
    }

    private void arrive(int cell, double mass) {
        for (int i = NodeMesh.CORNERS * cell; i < NodeMesh.CORNERS * (cell + 1) && nodes.cellNodes[i] >= 0; i++) {
            int node = nodes.cellNodes[i];
            for (int s = nodes.firstState[node]; s < nodes.firstState[node + 1]; s++) {
                next[s] += mass * nodes.cellWeights[i] * nodes.probability[s];
            }
        }
    }
}
