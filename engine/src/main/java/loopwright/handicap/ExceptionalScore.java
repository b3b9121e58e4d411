package loopwright.handicap;

/**
 * Exceptional score reduction (Rule 5.9): a differential 7.0 to 9.9 below the index the round was played off takes 1.0
 * off each of the last 20 differentials (or of all, if fewer), 10.0 or more below takes 2.0; reductions add up.
 */
public final class ExceptionalScore {
    private static final int LARGE = 70;
    private static final int VERY_LARGE = 100;

    private ExceptionalScore() {}

    /** 0, -1 or -2. */
    public static double adjustment(double differential, double indexPlayedOff) {
        long tenthsBelow = Math.round((indexPlayedOff - differential) * 10); // both have one decimal
        if (tenthsBelow >= VERY_LARGE) {
            return -2;
        }
        return tenthsBelow >= LARGE ? -1 : 0;
    }
}
