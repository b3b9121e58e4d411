package loopwright.scoring;

/** What was unusual about a hole, written down by the player. */
public enum HoleMark {
    /** A second ball was played under a Rule (provisional, or two balls when in doubt). */
    SECOND_BALL,
    PREFERRED_LIES,
    TEMPORARY_GREEN,
    /** The player looked at what seemed odd about this hole and says that it is right. */
    CHECKED
}
