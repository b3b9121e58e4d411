package loopwright.practice;

/**
 * How a skill grows with hours: what is left after h hours is f + (1 - f) exp(-h / tau), an exponential approach to a floor.
 * Individual curves are exponential, averages of many only look like a power law: A. Heathcote, S. Brown and D. J. K. Mewhort,
 * "The power law repealed", Psychonomic Bulletin and Review 7 (2000) 185-207 (40 sets of data). Rates in golf are published
 * nowhere; {@link LearningTable} holds what is assumed. Nothing is forgotten within the weeks of a plan (assumed).
 *
 * @param floor f, what practice of some months leaves at best as a share of today, 0 or more (decisions) to 1
 * @param hours tau: after so many hours 63 % of the way to the floor is gone, above 0
 */
public record LearningCurve(double floor, double hours) {
    public LearningCurve {
        if (!(floor >= 0 && floor <= 1)) {
            throw new IllegalArgumentException("a floor is a share of today's spread from 0 to 1, not " + floor);
        }
        if (!(hours > 0)) {
            throw new IllegalArgumentException("a learning curve needs hours above zero, not " + hours);
        }
    }

    /** Share left after so many hours. */
    public double left(double practised) {
        return floor + (1 - floor) * Math.exp(-practised / hours);
    }

    public LearningCurve withHours(double other) {
        return new LearningCurve(floor, other);
    }

    public LearningCurve withFloor(double other) {
        return new LearningCurve(other, hours);
    }
}
