package loopwright.action;

import java.util.List;
import java.util.Optional;

/**
 * How far the plan's numbers can be trusted while the player's skill is known only so well: 90 % intervals.
 *
 * @param draws of the player as he may be, on each of which the same plan was valued
 * @param measureNext the swing whose balls would shrink the doubt most, if any is in the plan
 * @param assumed swings and short shots of the plan that are mostly assumed
 * @param beats how often each planned tee shot beats the next best
 */
public record HowSure(
        int draws,
        double expectedLow,
        double expectedHigh,
        double targetLow,
        double targetHigh,
        Optional<Measure> measureNext,
        List<String> assumed,
        List<Beats> beats) {
    public HowSure {
        beats = List.copyOf(beats);
        assumed = List.copyOf(assumed);
    }

    /** A swing to measure, and how many strokes a round its doubt is worth (one standard deviation). */
    public record Measure(String swing, double strokes) {}

    /** A planned tee shot, the next best, and the probability that the first is the better one for this player. */
    public record Beats(int hole, String club, String next, double probability) {}
}
