package loopwright.player;

/**
 * One day as the player finds it without knowing: all his swings start further right, and all his spreads are wider, than
 * on the ordinary day.
 *
 * @param biasRadians added to the direction of every swing, + right
 * @param spread factor on the spreads of every swing and short shot, above 0
 * @param weight how much the day counts among the days it stands with
 */
public record RoundDay(double biasRadians, double spread, double weight) {
    public static final RoundDay ORDINARY = new RoundDay(0, 1, 1);

    public RoundDay {
        if (!(spread > 0) || !(weight >= 0)) {
            throw new IllegalArgumentException("a day has a spread above zero and a weight of zero or more");
        }
    }

    /** True if the player is himself. */
    public boolean isOrdinary() {
        return biasRadians == 0 && spread == 1;
    }
}
