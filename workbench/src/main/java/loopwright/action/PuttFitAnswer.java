package loopwright.action;

import org.jspecify.annotations.Nullable;

/**
 * A fitted putting; the component names are the keys of {@code docs/schema/putt-fit.schema.json}.
 *
 * @param putts all putts used, {@code drillPutts} of them on lines known to be straight
 * @param level score level of the prior
 * @param directionDegrees spread of direction, start line and reading as one
 * @param pacePercent spread of the roll in per cent of the intended roll
 * @param lengthPercent how much farther than the best pace of the level he rolls it, per cent; below 0: short
 * @param startLineDegrees the start line alone; none without a straight-putt drill
 * @param readingPercent spread of the read break in per cent of the break; {@code readingMeasured} false: the prior's share
 * @param halfHoledFeet from where every second putt drops, on a green of ordinary slope
 * @param twoPuttFeet from where the player needs two putts on average
 */
public record PuttFitAnswer(
        int putts,
        int drillPutts,
        double level,
        Estimate directionDegrees,
        Estimate pacePercent,
        Estimate lengthPercent,
        @Nullable Estimate startLineDegrees,
        double readingPercent,
        boolean readingMeasured,
        double halfHoledFeet,
        double twoPuttFeet,
        Misses misses) {
    /** A value with its 90 % interval; {@code assumedShare} 1: prior only, near 0: measured. */
    public record Estimate(double value, double low, double high, double assumedShare) {}

    /** Misses whose side was noted. */
    public record Misses(int shortOf, int past, int left, int right) {}
}
