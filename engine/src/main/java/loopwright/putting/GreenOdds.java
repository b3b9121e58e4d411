package loopwright.putting;

/** The odds of holing out on one green with today's hole location, by place in the course's local frame. */
public interface GreenOdds {
    /** Expected putts from a place, metres east and north; 1 or more outside the hole. */
    double expectedPutts(double x, double y);

    /** Probability that exactly {@code putts} (1 or more) are needed from a place. */
    double probability(double x, double y, int putts);

    /** Adds, at index k from 1 on, the probability of exactly k putts from a place. */
    default void addProbabilities(double x, double y, double[] byPutts) {
        for (int k = 1; k < byPutts.length; k++) {
            byPutts[k] += probability(x, y, k);
        }
    }

    /** A green whose slope nobody measured: the distance to the hole alone counts, and no break is claimed. */
    static GreenOdds level(PuttingOdds odds, double holeX, double holeY) {
        return new Level(odds, holeX, holeY);
    }

    /** Odds by the distance to the hole alone. */
    record Level(PuttingOdds odds, double holeX, double holeY) implements GreenOdds {
        @Override
        public double expectedPutts(double x, double y) {
            return odds.expectedPutts(Math.hypot(x - holeX, y - holeY));
        }

        @Override
        public double probability(double x, double y, int putts) {
            return odds.probability(Math.hypot(x - holeX, y - holeY), putts);
        }

        @Override
        public void addProbabilities(double x, double y, double[] byPutts) {
            double metres = Math.hypot(x - holeX, y - holeY);
            for (int k = 1; k < byPutts.length; k++) {
                byPutts[k] += odds.probability(metres, k);
            }
        }
    }
}
