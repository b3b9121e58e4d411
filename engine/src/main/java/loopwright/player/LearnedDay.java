package loopwright.player;

/**
 * What rounds tell of the way from the range to the course, each with the range that holds it 9 times in 10.
 *
 * @param widening factor on the spreads that are planned with; 1 where the assumed way from range to course was right
 * @param directionSdRadians of the day's bias
 * @param logSpreadSd of the logarithm of the day's scale on spread
 * @param rounds that had at least one swing with its aim
 * @param swings in all of them
 */
public record LearnedDay(Interval widening, Interval directionSdRadians, Interval logSpreadSd, int rounds, int swings) {
    /** The day to plan with from now on. */
    public DayEffect day() {
        return new DayEffect(directionSdRadians.middle(), logSpreadSd.middle());
    }

    /** Range-to-course widening of a player who was measured on range balls alone. */
    public Interval fromRange() {
        double assumed = PriorTable.RANGE_WIDENING;
        return new Interval(widening.middle() * assumed, widening.low() * assumed, widening.high() * assumed);
    }
}
