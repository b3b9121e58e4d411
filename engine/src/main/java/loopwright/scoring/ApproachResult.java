package loopwright.scoring;

/** How the stroke at the green ended. */
public enum ApproachResult {
    ON_GREEN,
    LEFT,
    RIGHT,
    SHORT,
    LONG
}
