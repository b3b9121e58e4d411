package loopwright.handicap;

/**
 * Course and playing handicap (Rules 6.1 and 6.2): index x slope / 113 + (course rating - par), kept in full until the
 * playing handicap, which is that times the allowance, rounded once.
 *
 * @param exact before rounding; what the playing handicap is computed from
 */
public record CourseHandicap(double exact) {
    /** The common allowance in individual stroke play (from memory); 1 in match play. */
    public static final double STROKE_PLAY_ALLOWANCE = 0.95;

    public static CourseHandicap eighteen(double index, TeeRating rating, int par) {
        return new CourseHandicap(rating.fromStandard(index) + rating.courseRating() - par);
    }

    /** For nine holes: half the index, to a tenth, with the rating and par of the nine. */
    public static CourseHandicap nine(double index, TeeRating nine, int parOfNine) {
        return eighteen(Rounding.toTenth(index / 2), nine, parOfNine);
    }

    /** As used for the adjustment of hole scores. */
    public int rounded() {
        return Rounding.toWhole(exact);
    }

    /** The strokes received in a competition with this allowance (1 for all of them). */
    public int playing(double allowance) {
        if (!(allowance > 0 && allowance <= 1.5)) {
            throw new IllegalArgumentException("an allowance lies above 0 and up to 1.5, not " + allowance);
        }
        return Rounding.toWhole(exact * allowance);
    }
}
