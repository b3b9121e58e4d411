package loopwright.player;

import java.util.List;
import java.util.random.RandomGenerator;

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

    /**
     * Five days that stand for all: the ordinary one, and on each axis one either side at sqrt(3) standard deviations.
     * With weights 1/3 and 4 x 1/6 averages over the two independent normal laws are exact up to the third degree, and
     * along each axis up to the fifth. Over a round {@code strategy.RoundScores} adds the days on which the two meet.
     */
    public List<RoundDay> days() {
        double reach = Math.sqrt(3);
        double bias = reach * directionSdRadians;
        double spread = Math.exp(reach * logSpreadSd);
        return List.of(
                new RoundDay(0, 1, 1.0 / 3),
                new RoundDay(-bias, 1, 1.0 / 6),
                new RoundDay(bias, 1, 1.0 / 6),
                new RoundDay(0, 1 / spread, 1.0 / 6),
                new RoundDay(0, spread, 1.0 / 6));
    }

    /** A day drawn at random. */
    public RoundDay draw(RandomGenerator random) {
        double bias = directionSdRadians * random.nextGaussian();
        return new RoundDay(bias, Math.exp(logSpreadSd * random.nextGaussian()), 1);
    }
}
