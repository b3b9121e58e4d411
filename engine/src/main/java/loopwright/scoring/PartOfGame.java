package loopwright.scoring;

/** The rows by which strokes gained are added up. */
public enum PartOfGame {
    /** Strokes from the tee of a par 4, 5 or 6, also when played again. */
    TEE_SHOTS,
    /** Everything longer than around the green that is no tee shot of a longer hole; par-3 tee shots are here. */
    APPROACH,
    /** Off the green, near the hole. */
    AROUND_THE_GREEN,
    PUTTING,
    /** Penalty strokes, apart from the play that led to them. */
    PENALTIES,
    /** A putt that was given: it counts a stroke nobody saw. */
    CONCEDED,
    /** All strokes before the first putt, where only counts were written down. */
    TO_THE_GREEN,
    /** All strokes of a hole, where only its score was written down. */
    WHOLE_HOLE
}
