package loopwright.player;

/**
 * What a lie does to a pattern: multipliers, 1 for a good lie.
 *
 * @param carry on the mean carry, above 0
 * @param distanceSpread on the relative carry spread
 * @param directionSpread on the direction spread
 * @param mishits on every mishit rate
 * @param run on the run
 */
public record LieEffect(double carry, double distanceSpread, double directionSpread, double mishits, double run) {
    public static final LieEffect NONE = new LieEffect(1, 1, 1, 1, 1);

    public LieEffect {
        if (!(carry > 0 && distanceSpread > 0 && directionSpread > 0 && mishits >= 0 && run >= 0)) {
            throw new IllegalArgumentException("lie multipliers are above zero");
        }
    }
}
