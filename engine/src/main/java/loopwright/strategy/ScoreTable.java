package loopwright.strategy;

/**
 * What the strokes of a hole count in the round's sum. Lower is better in every table, so that one solver serves all:
 * Stableford points are counted below zero (three points count -3), and "at least 36 points" is the limit -36.
 * The table never falls as strokes rise.
 */
public sealed interface ScoreTable {

    /** What a hole finished in this many strokes (1 or more) adds to the round's sum. */
    int counts(int strokes);

    /** Stroke play: every stroke counts. */
    static ScoreTable strokes() {
        return new Net(0);
    }

    /** Stroke play with strokes received on this hole (below zero: strokes given back by a plus handicap). */
    static ScoreTable net(int received) {
        return new Net(received);
    }

    /** Rule 21.2: a hole counts at most {@code most} strokes. */
    static ScoreTable maximum(int most) {
        return new Maximum(most, strokes());
    }

    /** Rule 21.2 with handicap: the maximum is applied to the gross score, then the strokes received come off. */
    static ScoreTable maximum(int most, int received) {
        return new Maximum(most, net(received));
    }

    /**
     * Rule 21.1b: net double bogey or worse no points, net bogey 1, net par 2, and one more for each stroke better.
     * The numbers of the rule are from memory.
     */
    static ScoreTable stableford(int par, int received) {
        return new Stableford(par, received);
    }

    /** Strokes less those received. */
    record Net(int received) implements ScoreTable {
        @Override
        public int counts(int strokes) {
            return strokes - received;
        }
    }

    /** Strokes cut at a maximum. */
    record Maximum(int most, ScoreTable table) implements ScoreTable {
        public Maximum {
            if (most < 1) {
                throw new IllegalArgumentException("a maximum score is at least 1, not " + most);
            }
        }

        @Override
        public int counts(int strokes) {
            return table.counts(Math.min(strokes, most));
        }
    }

    /** Stableford points, counted below zero. */
    record Stableford(int par, int received) implements ScoreTable {
        private static final int POINTS_FOR_NET_PAR = 2;

        @Override
        public int counts(int strokes) {
            return -Math.max(0, par + received + POINTS_FOR_NET_PAR - strokes);
        }
    }
}
