package loopwright.practice;

/**
 * What a round comes to.
 *
 * @param expected strokes, or what the round counts
 * @param chance of the target, 0 to 1
 */
public record RoundOdds(double expected, double chance) {
    /** Beyond this a chance is as good as certain. */
    private static final double CERTAIN = 1e-9;

    /** Of a chance, held away from nothing and certainty. */
    public static double logOdds(double chance) {
        double held = Math.max(CERTAIN, Math.min(1 - CERTAIN, chance));
        return Math.log(held / (1 - held));
    }

    public static double chance(double logOdds) {
        return 1 / (1 + Math.exp(-logOdds));
    }
}
