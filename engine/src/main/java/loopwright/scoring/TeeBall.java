package loopwright.scoring;

/** Where the ball from the tee went, as far as it is counted. */
public enum TeeBall {
    IN_PLAY,
    LEFT,
    RIGHT,
    LOST
}
