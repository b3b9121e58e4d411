package loopwright.scoring;

import java.util.Optional;
import loopwright.geo.LatLon;
import loopwright.ground.Situation;
import loopwright.units.Distance;

/**
 * One stroke as it was written down: from where, with what, and what it cost.
 *
 * @param toHole from the ball to the hole before the stroke
 * @param place where the ball lay, where positions were recorded
 * @param penaltyStrokes that came after this stroke and before the next
 * @param situation how the ball lay on its surface, where that was noted
 * @param intent what was meant, where it was noted
 */
public record ShotRecord(
        Optional<String> club,
        Lie lie,
        Distance toHole,
        Optional<LatLon> place,
        int penaltyStrokes,
        Optional<Situation> situation,
        Intent intent) {
    public ShotRecord {
        if (penaltyStrokes < 0) {
            throw new IllegalArgumentException("penalty strokes are zero or more, not " + penaltyStrokes);
        }
    }

    /** A stroke beside which nothing was noted. */
    public ShotRecord(Optional<String> club, Lie lie, Distance toHole, Optional<LatLon> place, int penaltyStrokes) {
        this(club, lie, toHole, place, penaltyStrokes, Optional.empty(), Intent.NONE);
    }

    /** What strokes gained need of it. */
    public Stroke stroke() {
        return new Stroke(lie, toHole, penaltyStrokes);
    }
}
