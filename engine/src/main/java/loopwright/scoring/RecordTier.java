package loopwright.scoring;

/** How much was written down of a hole or a round; each tier can answer what the ones before it can, and more. */
public enum RecordTier {
    /** The score of each hole. */
    SCORE,
    /** Tee ball, approach, penalties, chips, first putt and putts of each hole. */
    COUNTS,
    /** Lie and distance to the hole before each stroke. */
    SHOTS,
    /** The place of each stroke on the map as well. */
    PLACES
}
