package loopwright.handicap;

/**
 * The rating of a set of tees, of 18 holes or of the nine that are played.
 *
 * @param courseRating expected score of a scratch player
 * @param slope difficulty for a bogey player relative to scratch, 55 to 155; 113 is standard
 */
public record TeeRating(double courseRating, int slope) {
    public static final int STANDARD_SLOPE = 113;
    public static final int LOWEST_SLOPE = 55;
    public static final int HIGHEST_SLOPE = 155;

    /** From the rating formula, strokes of bogey player over scratch: 5.381 men, 4.24 women (gam.org). */
    public static final double SLOPE_FACTOR_MEN = 5.381;

    public static final double SLOPE_FACTOR_WOMEN = 4.24;

    public TeeRating {
        if (!(courseRating > 0 && courseRating < 200)) {
            throw new IllegalArgumentException("a course rating lies above 0 and below 200, not " + courseRating);
        }
        if (slope < LOWEST_SLOPE || slope > HIGHEST_SLOPE) {
            throw new IllegalArgumentException("a slope lies between 55 and 155, not " + slope);
        }
    }

    /** The rating from its two parts: slope = factor x (bogey rating - course rating), within 55 to 155. */
    public static TeeRating ofBogeyRating(double courseRating, double bogeyRating, double factor) {
        int slope = Rounding.toWhole(factor * (bogeyRating - courseRating));
        return new TeeRating(courseRating, Math.max(LOWEST_SLOPE, Math.min(HIGHEST_SLOPE, slope)));
    }

    /** The score on these tees that has the same differential as a score on other rated tees. */
    public double asGoodAs(double score, TeeRating other) {
        return courseRating + fromStandard(other.toStandard(score - other.courseRating));
    }

    /** Strokes on these tees brought to a course of standard slope. */
    double toStandard(double strokes) {
        return strokes * STANDARD_SLOPE / slope;
    }

    /** Strokes on a course of standard slope brought to these tees. */
    double fromStandard(double strokes) {
        return strokes * slope / STANDARD_SLOPE;
    }
}
