package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;

/**
 * Strokes gained of every stroke of a hole against a baseline J (strokes to hole out).
 *
 * <p>A stroke from s to s' gains J(s) - J(s') - 1, less the penalty strokes it brought; J(in the hole) = 0. The penalty
 * is kept apart, so that a table can show play and penalties in two rows. The sum over a hole telescopes to J(tee) less
 * the score. A ball out of bounds is replayed from s with one penalty stroke: J(s) - J(s) - 1 - 1 = -2 whatever J.
 * Source: M. Broadie, Assessing Golfer Performance on the PGA TOUR, Interfaces 42(2), 2012, section 2.
 */
public final class StrokesGained {
    private StrokesGained() {}

    /**
     * What one stroke gained.
     *
     * @param play against the baseline, before penalties
     * @param penalty minus the penalty strokes
     */
    public record Gained(double play, int penalty) {
        public double total() {
            return play + penalty;
        }
    }

    /** The gains of a hole that was holed out, stroke by stroke. */
    public static List<Gained> holedOut(StrokesBaseline baseline, List<Stroke> strokes) {
        return ending(baseline, strokes, 0);
    }

    /**
     * The gains of a hole that ended before the ball was holed (conceded, picked up), where the baseline still needs
     * {@code strokesLeft} from the last known place.
     */
    public static List<Gained> ending(StrokesBaseline baseline, List<Stroke> strokes, double strokesLeft) {
        List<Gained> out = new ArrayList<>();
        for (int i = 0; i < strokes.size(); i++) {
            double left = i + 1 < strokes.size() ? before(baseline, strokes.get(i + 1)) : strokesLeft;
            out.add(new Gained(
                    before(baseline, strokes.get(i)) - left - 1, -strokes.get(i).penaltyStrokes()));
        }
        return out;
    }

    private static double before(StrokesBaseline baseline, Stroke stroke) {
        return baseline.strokesToHoleOut(stroke.lie(), stroke.toHole());
    }
}
