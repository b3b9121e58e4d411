package loopwright.scoring;

import loopwright.units.Distance;

/**
 * One stroke as strokes gained need it: from where it was made, and the penalty strokes it brought.
 *
 * @param penaltyStrokes added to the score between this stroke and the next (1 for a ball out of bounds, which is
 *     replayed from the same place; 1 for relief from a penalty area)
 */
public record Stroke(Lie lie, Distance toHole, int penaltyStrokes) {
    public Stroke {
        if (!(toHole.metres() >= 0)) {
            throw new IllegalArgumentException("a distance to the hole is zero or more, not " + toHole.metres() + " m");
        }
        if (penaltyStrokes < 0) {
            throw new IllegalArgumentException("penalty strokes are zero or more, not " + penaltyStrokes);
        }
    }
}
