package loopwright.course;

/** Local rules that change how a hole is played; numbers are those of the Model Local Rules (2023 edition, from memory). */
public enum LocalRule {
    /** E-5: two penalty strokes and a drop at the edge of the fairway instead of stroke and distance. */
    DROP_INSTEAD_OF_STROKE_AND_DISTANCE("E-5"),
    /** E-1: a dropping zone may be used. */
    DROP_ZONE("E-1"),
    /** E-3: a ball in the fairway may be lifted, cleaned and placed. */
    PREFERRED_LIES("E-3"),
    /** A temporary green is in play; its circle is cut into the fairway and it putts slowly. */
    TEMPORARY_GREEN("");

    private final String number;

    LocalRule(String number) {
        this.number = number;
    }

    /** Its number among the Model Local Rules, or empty text. */
    public String number() {
        return number;
    }
}
