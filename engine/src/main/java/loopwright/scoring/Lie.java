package loopwright.scoring;

/** Where a ball lies, in the words of the published tables of strokes to hole out. */
public enum Lie {
    TEE,
    FAIRWAY,
    ROUGH,
    SAND,
    /** In the rough or trees with no way to the green: the next stroke only brings the ball back into play. */
    RECOVERY,
    GREEN
}
