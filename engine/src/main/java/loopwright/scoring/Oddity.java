package loopwright.scoring;

/**
 * Something in a record that is rarely right, though it can be legal golf: to be asked once, not refused.
 *
 * @param hole number of the hole
 * @param shot number of the stroke on the hole in the order written, or 0 where it is about the hole
 * @param found a count, or metres for a distance
 * @param beside what it was compared with, in the same unit
 */
public record Oddity(Kind kind, int hole, int shot, double found, double beside) {
    /** What looks odd. */
    public enum Kind {
        /** The ball is farther from the hole after a stroke without a penalty: metres after and before. */
        FARTHER_WITHOUT_PENALTY,
        /** A putt from very far: metres. */
        VERY_LONG_PUTT,
        /** The written score and what strokes and penalties add up to. */
        SCORE_DOES_NOT_ADD_UP,
        /** The last stroke was holed from far off the green: metres. Strokes may be missing. */
        HOLED_FROM_FAR,
        /** The first stroke was not from a tee. */
        NOT_FROM_TEE,
        /** A stroke from the tee after the first, without a penalty stroke before it. */
        TEE_AGAIN_WITHOUT_PENALTY,
        /** Putts, chips and penalties leave no stroke to reach the green: the score and their sum. */
        COUNTS_LEAVE_NO_STROKE,
        /** More putts than anyone takes: the number. */
        MANY_PUTTS,
        /** A hole too short or too long for its par: metres and par. */
        LENGTH_AND_PAR,
        /** A score far above par: score and par. */
        HIGH_SCORE
    }
}
