package loopwright.player;

/**
 * How one round differs from the next: one bias of direction and one scale on spread for the whole day, neither of which
 * the player sees on the first tee.
 *
 * @param directionSdRadians standard deviation of the day's bias, 0 or more
 * @param logSpreadSd standard deviation of the logarithm of the day's scale on spread, 0 or more
 */
public record DayEffect(double directionSdRadians, double logSpreadSd) {
    /** Assumed: 1.5 degrees and a tenth, until several dated sessions tell. */
    public static final DayEffect ASSUMED = new DayEffect(Math.toRadians(1.5), 0.10);

    public DayEffect {
        if (!(directionSdRadians >= 0 && logSpreadSd >= 0)) {
            throw new IllegalArgumentException("a day effect has spreads of zero or more");
        }
    }
}
