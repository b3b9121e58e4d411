package loopwright.player;

/**
 * What a pattern rests on.
 *
 * @param balls measured balls of this very club and effort
 * @param assumedShare 0 (measured) to 1 (prior only): what is left of the prior's variance of the log
 *     spread of directions, of solid balls or of all where that is less
 */
public record Evidence(int balls, double assumedShare) {
    public static final Evidence ASSUMED = new Evidence(0, 1);

    /** Above this assumed share advice says that it hangs on what was not measured. */
    private static final double MOSTLY = 0.8;

    public Evidence {
        if (balls < 0 || !(assumedShare >= 0 && assumedShare <= 1)) {
            throw new IllegalArgumentException("evidence needs balls >= 0 and an assumed share between 0 and 1");
        }
    }

    public boolean isMostlyAssumed() {
        return assumedShare > MOSTLY;
    }
}
