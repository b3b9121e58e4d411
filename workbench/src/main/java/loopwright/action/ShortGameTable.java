package loopwright.action;

import java.util.List;
import loopwright.ground.Situation;
import loopwright.ground.Surface;

/**
 * What to play from round the green, on level ground, by lie, distance and room.
 *
 * @param spots lie by lie, nearest first, least room first
 */
public record ShortGameTable(String player, List<Spot> spots, List<String> assumed) {
    public ShortGameTable {
        spots = List.copyOf(spots);
        assumed = List.copyOf(assumed);
    }

    /**
     * One spot.
     *
     * @param metres to the hole
     * @param roomMetres of green between its edge and the hole; the ground before it is the lie's
     * @param ways every short shot that can be played, fewest strokes first; a part of a swing only where it beats them all
     */
    public record Spot(Surface lie, Situation situation, double metres, double roomMetres, List<Way> ways) {
        public Spot {
            ways = List.copyOf(ways);
        }

        public Way best() {
            return ways.get(0);
        }
    }

    /**
     * One way to play it.
     *
     * @param beyondMetres how far past the hole it is meant to stop; negative: short of it
     * @param expected strokes to hole out
     * @param insideThreeFeet chance that it stops on the green within 3 ft or drops, {@code insideSixFeet} within 6
     * @param upAndDown chance of holing out in two strokes
     * @param secondChip chance that it does not stop on the green
     */
    public record Way(
            String shot,
            double beyondMetres,
            double expected,
            double standardError,
            double insideThreeFeet,
            double insideSixFeet,
            double upAndDown,
            double secondChip) {
        /** True if another way costs no more than noise beside this one. */
        public boolean isSameAs(Way best) {
            return expected - best.expected < 2 * Math.hypot(standardError, best.standardError);
        }
    }
}
