package loopwright.scoring;

/** What may stand between a player and his target. A stroke can belong to several, so they do not add up to the score. */
public enum Obstacle {
    /** Strokes beyond one over par, hole by hole. */
    DOUBLES,
    /** Penalty strokes. */
    PENALTIES,
    /** Putts beyond the second, beside what the benchmark takes from the same first putts. */
    THREE_PUTTS,
    /** Putts of up to 6 ft that missed, beside what the benchmark misses of them; the limit is ours. */
    SHORT_PUTTS,
    /** Strokes from around the green to the hole, beside what the benchmark takes from there. */
    UP_AND_DOWNS,
    /** Approaches of 40 to 125 yd. */
    WEDGES,
    /** Tee shots of par 4 and longer. */
    TEE
}
