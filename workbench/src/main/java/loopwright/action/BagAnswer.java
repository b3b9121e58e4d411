package loopwright.action;

import java.util.List;

/**
 * What other bags are worth on a course.
 *
 * @param clubs in the bag as it is, the putter among them
 * @param now the bag as it is
 * @param changes each change by itself, in the order asked for
 */
public record BagAnswer(
        String course, String tees, String target, String player, List<String> clubs, Worth now, List<Change> changes) {
    public BagAnswer {
        clubs = List.copyOf(clubs);
        changes = List.copyOf(changes);
    }

    /** Half a tenth in 100: less would be printed as nothing. */
    private static final double LEAST_GAIN = 0.0005;

    /** What a round counts on average, over good and bad days, and the chance of the target. */
    public record Worth(double expected, double chance) {}

    /**
     * A change.
     *
     * @param gain in the chance of the target
     * @param gainError standard error of the gain: both bags were solved with several seeds
     * @param assumedCarryMetres of the new club, 0 where none came in
     * @param holes where it changes most, dearest gain first, at most three
     */
    public record Change(
            String words, Worth then, double gain, double gainError, double assumedCarryMetres, List<HoleGain> holes) {
        public Change {
            holes = List.copyOf(holes);
        }

        /** Within the noise of two seeds, or less than what is told at all. */
        public boolean same() {
            return Math.abs(gain) < Math.max(2 * gainError, LEAST_GAIN);
        }
    }

    /** Strokes a hole gains by a change. */
    public record HoleGain(int hole, double strokes) {}
}
