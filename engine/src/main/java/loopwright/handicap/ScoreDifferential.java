package loopwright.handicap;

/**
 * Score differentials (Rule 5.1): (113 / slope) x (adjusted gross score - course rating - PCC), to a tenth.
 *
 * <p>Nine holes: the same of the nine with half the PCC, not rounded, plus the differential expected of nine holes from
 * the player's index, then rounded (Rules of Handicapping 2024). For 10 to 17 holes the holes not played are expected
 * likewise. The formula of the expected differential is not published, so those two are approximations, see
 * {@link #expectedNine}; they agree with the public values of docs/validation.md#handicap within a tenth.
 */
public final class ScoreDifferential {
    /** Rule 5.6: the playing conditions calculation runs from -1 to +3. */
    public static final double LOWEST_CONDITIONS = -1;

    public static final double HIGHEST_CONDITIONS = 3;

    private static final int HOLES = 18;
    private static final int NINE = 9;

    private ScoreDifferential() {}

    /** Of an 18-hole score. */
    public static double eighteen(int adjustedGross, TeeRating rating, double conditions) {
        return Rounding.toTenth(eighteenExact(adjustedGross, rating, conditions));
    }

    /** Of an 18-hole score, before rounding. */
    public static double eighteenExact(int adjustedGross, TeeRating rating, double conditions) {
        requireConditions(conditions);
        return rating.toStandard(adjustedGross - rating.courseRating() - conditions);
    }

    /** The played half of a nine-hole differential; not rounded until it is combined. */
    public static double ninePart(int adjustedGross, TeeRating nine, double conditions) {
        requireConditions(conditions);
        return nine.toStandard(adjustedGross - nine.courseRating() - conditions / 2);
    }

    /** Of a nine-hole score by a player with this index: the played half and the expected one. */
    public static double nine(int adjustedGross, TeeRating nine, double conditions, double index) {
        return Rounding.toTenth(ninePart(adjustedGross, nine, conditions) + expectedNine(index));
    }

    /**
     * Of 10 to 17 holes: the played part is measured against the par of those holes plus their share of (course rating
     * - par), the rest is that share of the expected differential. An approximation.
     *
     * @param rating of all 18 holes
     * @param parPlayed par of the holes played
     */
    public static double part(
            int adjustedGross, int holes, int parPlayed, TeeRating rating, int par, double conditions, double index) {
        return Rounding.toTenth(partExact(adjustedGross, holes, parPlayed, rating, par, conditions, index));
    }

    /** The same before rounding. */
    public static double partExact(
            int adjustedGross, int holes, int parPlayed, TeeRating rating, int par, double conditions, double index) {
        requireConditions(conditions);
        if (holes <= NINE || holes >= HOLES) {
            throw new IllegalArgumentException("this is for 10 to 17 holes, not " + holes);
        }
        double share = (double) holes / HOLES;
        double ratingPlayed = parPlayed + share * (rating.courseRating() - par);
        double played = rating.toStandard(adjustedGross - ratingPlayed - share * conditions);
        return played + expectedNine(index) * (HOLES - holes) / NINE;
    }

    /**
     * The differential expected of nine holes: 0.52 x index + 1.197. Public code uses this line; the Rules give no
     * formula. It misses a public table of values (30, 36, 54) by at most a tenth.
     */
    public static double expectedNine(double index) {
        return 0.52 * index + 1.197;
    }

    private static void requireConditions(double conditions) {
        if (!(conditions >= LOWEST_CONDITIONS && conditions <= HIGHEST_CONDITIONS)) {
            throw new IllegalArgumentException("the playing conditions lie between -1 and 3, not " + conditions);
        }
    }
}
