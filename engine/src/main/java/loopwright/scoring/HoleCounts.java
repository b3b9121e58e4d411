package loopwright.scoring;

import java.util.Optional;
import java.util.OptionalInt;
import loopwright.units.Distance;

/**
 * The counts of a hole; anything not written down is empty.
 *
 * @param chips strokes from around the green
 * @param firstPutt length of the first putt
 */
public record HoleCounts(
        Optional<TeeBall> teeBall,
        Optional<String> approachClub,
        Optional<ApproachResult> approach,
        OptionalInt penaltyStrokes,
        OptionalInt chips,
        Optional<Distance> firstPutt,
        OptionalInt putts) {
    /** Nothing counted. */
    public static final HoleCounts NONE = new HoleCounts(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            OptionalInt.empty());

    public HoleCounts {
        if (penaltyStrokes.orElse(0) < 0 || chips.orElse(0) < 0 || putts.orElse(0) < 0) {
            throw new IllegalArgumentException("counts are zero or more");
        }
    }

    public boolean isEmpty() {
        return equals(NONE);
    }
}
