package loopwright.strategy;

import org.jspecify.annotations.Nullable;

/**
 * What the rest of a hole is played for: the strokes in hand afterwards if it ends with no further stroke, and the lane
 * after one more. A lane without a next one is settled: whatever follows on this hole, its strokes in hand stay.
 */
final class Lane {
    /** Place in the order of solving: every lane has a higher number than the one after it. */
    final int number;
    /** Strokes in hand if the hole is over now. */
    final int inHand;

    private final @Nullable Lane next;

    Lane(int number, int inHand, @Nullable Lane next) {
        this.number = number;
        this.inHand = inHand;
        this.next = next;
    }

    boolean settled() {
        return next == null;
    }

    /** The lane after so many more strokes. */
    Lane after(int strokes) {
        Lane lane = this;
        for (int i = 0; i < strokes && lane.next != null; i++) {
            lane = lane.next;
        }
        return lane;
    }
}
