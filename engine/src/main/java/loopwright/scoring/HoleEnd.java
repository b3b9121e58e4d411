package loopwright.scoring;

/** How a hole ended. */
public enum HoleEnd {
    HOLED,
    /** The last putt was given: it counts in the score, but nobody saw it, so it is no made putt. */
    CONCEDED,
    /** Not finished; there is no score. */
    PICKED_UP
}
