package loopwright.player;

import static java.lang.Math.max;
import static java.lang.Math.min;
import static java.lang.Math.toRadians;

/**
 * Every number of the prior, each with its source or "assumed". A level L is an average 18-hole score. Spread, mishits and
 * short game are straight lines through the values of the tour (level {@value #TOUR_LEVEL}) and of a 90-golfer, lengths and
 * the driver's direction through those at 80 and 100; all are held constant outside {@value #LOWEST_LEVEL} to
 * {@value #HIGHEST_LEVEL}. Length never depends on the level once the player has said how far one club goes, and never
 * on age or sex.
 *
 * <p>Sources. [BK] Broadie and Ko, "A simulation model to analyze the impact of distance and direction on golf scores",
 * Winter Simulation Conference 2009: direction SD of the driver, bad shots included. [T9] Broadie, Interfaces 42(2), 2012,
 * Table 9: strokes to hole out of the tour by distance and lie. [TL] Broadie 2008 and 2012: tee lines, strokes from the tee
 * at d yards, 90-golfer 2.79 + 0.0066 d, tour 2.38 + 0.0041 d. [RA] R and A and USGA, amateur driving distance 2018: men by
 * handicap index. [CR] Course Rating System: 20 yd of run on a full shot; a scratch drive 250 yd, a bogey golfer's 200.
 * [CS] CaddieSet, CVPR Workshops 2025. [RI] Riccio's rule and its fellows: a 90-golfer hits 3 to 4 greens, saves a fifth.
 *
 * <p>"Set on" a source: no pattern is published, so it was chosen such that play by habit on plain holes
 * ({@code AnchorReferenceTest}) meets what is. "Assumed" is our own judgement, open to correction.
 */
final class PriorTable {
    static final double LOWEST_LEVEL = 60;
    static final double HIGHEST_LEVEL = 130;

    /** The two levels at which spread, mishits and short game are set: as in {@code PuttingSkillPrior}. */
    static final double TOUR_LEVEL = 71;

    static final double NINETY_LEVEL = 90;

    // ---- Length ----

    /**
     * 234 yd at 80 and 198 yd at 100, carry and run of a solid drive: only where nobody said how far the player hits it. [RA]
     * 240, 220, 204, 187 yd at an index of up to 5, to 12, to 20 and above (average scores of about 76, 83, 91 and 100: from
     * memory), 1 to 6 % more for what mishits take. [BK] has 250.6 and 225 yd; with those the 90-golfer of [TL] comes out 3
     * strokes a round too good, with these he does not, and [CR] sides with them.
     */
    static final double DRIVE_AT_80_METRES = 213.97;

    static final double DRIVE_AT_100_METRES = 181.05;

    /** [CR] 20 yd. */
    static final double DRIVER_RUN_METRES = 18.29;

    /** Assumed: a drive that carries little also runs little. */
    static final double DRIVER_RUN_LARGEST_SHARE = 0.15;

    /**
     * Assumed, as relative SDs of carry about the trend: the whole bag where a length was stated and where not, the slope from
     * driver to lob wedge, clubs of neighbouring loft together, one club alone, a partial effort of all wedges together.
     */
    static final double STATED_LENGTH_SD = 0.06;

    static final double UNSTATED_LENGTH_SD = 0.15;
    static final double TREND_SLOPE_SD = 0.08;
    static final double NEIGHBOUR_SD = 0.03;
    static final double NEIGHBOUR_DEGREES = 6;
    static final double CLUB_OWN_SD = 0.02;
    static final double PARTIAL_SD = 0.06;

    /** Assumed: below this driver carry (164 yd) the usual bag swaps long irons for woods and hybrids. */
    static final double SHORT_BAG_BELOW_METRES = 150;

    /** Assumed: below this driver carry (109 yd) fourteen clubs lie 3 yd apart, and the usual bag is half of one. */
    static final double HALF_BAG_BELOW_METRES = 100;

    /** Driver carry (252 yd) above which the trend no longer changes its shape (assumed). */
    static final double FAST_DRIVER_CARRY_METRES = 230;

    /** Loft in degrees, the abscissa of the rows below (common practice, no source). */
    static final double[] LOFT = {10.5, 15, 18, 21, 24, 27, 30, 34, 38, 42, 46, 50, 56, 60, 64};

    /** Carry of woods and of irons and wedges as a share of the driver's, fast swing (tour averages, from memory). */
    static final double[] WOOD_SHARE = {1, .885, .84, .80, .765, .73, .69, .64, .595, .55, .50, .45, .375, .32, .27};

    static final double[] HYBRID_SHARE = {
        .95, .87, .83, .785, .75, .715, .675, .63, .585, .54, .495, .445, .375, .32, .27
    };
    static final double[] IRON_SHARE = {
        .90, .84, .805, .77, .74, .705, .665, .625, .582, .538, .495, .445, .375, .32, .27
    };

    /**
     * How much of that share a slow swing loses, at loft above: times (1 - driver carry / fast carry). Chosen so that at a
     * driver carry of 120 m the 3- to 6-irons carry the same (the direction is common practice, the size assumed).
     */
    static final double[] WOOD_LOSS = {0, .03, .02, .02, .02, .02, .02, 0, 0, 0, 0, 0, 0, 0, 0};

    static final double[] HYBRID_LOSS = {0, .20, .16, .11, .07, .05, .03, 0, 0, 0, 0, 0, 0, 0, 0};
    static final double[] IRON_LOSS = {0, .50, .45, .376, .285, .173, .06, 0, 0, 0, 0, 0, 0, 0, 0};

    /** Run, apex as shares of carry, and angle of descent in degrees, by loft (assumed; the flight model refines them). */
    static final double[] RUN_SHARE = {
        .09, .085, .075, .07, .065, .055, .048, .04, .032, .025, .018, .012, .008, .005, .003
    };

    static final double[] APEX_SHARE = {
        .115, .125, .135, .145, .155, .165, .175, .19, .21, .23, .25, .265, .29, .31, .33
    };
    static final double[] DESCENT_DEGREES = {35, 39, 41, 43, 44, 45, 46, 47, 48, 49, 50, 51, 52, 53, 54};

    /** Assumed: at half the fast carry the ball comes down this much shallower and lower. */
    static final double SLOW_DESCENT_LOSS = 0.20;

    static final double SLOW_APEX_LOSS = 0.25;

    // ---- Spread ----

    /** [BK] direction SD of the driver's whole pattern, bad shots included: 5.5 deg at 80, 7.9 deg at 100. */
    static final double DRIVER_DIRECTION_AT_80 = toRadians(5.5);

    static final double DRIVER_DIRECTION_AT_100 = toRadians(7.9);

    /** Direction SD as a share of the driver's, by loft: set on [T9] from fairways, 100 to 220 yd, and [TL] at 150 and 180 yd. */
    static final double[] DIRECTION_OF_TOUR = {1, 1, 1, .97, .94, .90, .84, .78, .72, .67, .62, .58, .56, .56, .56};

    static final double[] DIRECTION_OF_90 = {1, 1, 1, 1, .98, .96, .94, .92, .90, .88, .86, .84, .80, .80, .80};

    /** Solid carry SD as a share of the carry, by loft: set as the directions; inside [CS] (6.2 to 17.6 %, mishits included). */
    static final double[] CARRY_SD_OF_TOUR = {
        .0315, .040, .041, .041, .041, .040, .038, .0365, .036, .036, .037, .040, .043, .047, .050
    };

    static final double[] CARRY_SD_OF_90 = {
        .060, .080, .082, .083, .084, .085, .085, .085, .086, .087, .088, .090, .090, .090, .090
    };

    /**
     * Assumed: how far a player's spread lies from that of his level, as SDs of its logarithm: all clubs together, one club.
     * Together a quarter: about what 9 balls would tell.
     */
    static final double SHARED_LOG_SPREAD_SD = 0.20;

    static final double CLUB_LOG_SPREAD_SD = 0.15;

    /** Assumed: the same for mishit rates (all families together, one family), and what the shares of kinds are worth in mishits. */
    static final double SHARED_LOG_MISHIT_SD = 0.35;

    static final double FAMILY_LOG_MISHIT_SD = 0.35;
    static final double MISHIT_KIND_BALLS = 12;

    /** Assumed: SD over players of the mean direction: the player's shape, one club about it. */
    static final double BIAS_SD = toRadians(2);

    static final double CLUB_BIAS_SD = toRadians(1.5);

    /** Assumed: mean direction of a player who names a side as his usual miss. */
    static final double USUAL_MISS_BIAS = toRadians(1.5);

    /** Assumed: a club's correlation is worth so many balls of none ([CS]: the sign differs between players). */
    static final double CORRELATION_BALLS = 30;

    // ---- Sessions, range and course (assumed) ----

    /** SD of a session's direction, relative carry and log spread, and how uncertain these are (SD of their logarithm). */
    static final double SESSION_DIRECTION_SD = toRadians(1.5);

    static final double SESSION_CARRY_SD = 0.02;
    static final double SESSION_LOG_SPREAD_SD = 0.10;
    static final double SESSION_SD_LOG_SD = 0.4;

    /** Spread on the course as a multiple of that on a range: above one, with the SD of its logarithm. */
    static final double RANGE_WIDENING = 1.15;

    static final double RANGE_WIDENING_LOG_SD = 0.10;

    /** A mat hides this share of mishits, a range's grass half as many. */
    static final double MAT_HIDES = 0.25;

    /** Range balls carry so much less, with its SD. */
    static final double RANGE_BALL_LOSS = 0.06;

    static final double RANGE_BALL_LOSS_SD = 0.03;

    /** Share of recorded balls that say nothing of the club (a slip of the pen, another club); they are set aside. */
    static final double STRAY_RATE = 0.01;

    static final double STRAY_DIRECTION_SD = toRadians(30);

    /** Standard deviation of what rounding to a whole yard takes from a length: a yard over the root of 12. */
    static final double ROUNDING_METRES = 0.264;

    /** Run as a share of carry is worth so many balls of the trend's. */
    static final double RUN_BALLS = 10;

    // ---- Mishits: share of swings, of the tour and of a 90-golfer. Set on [TL] (par 3s: irons; slope: woods) and
    // [RI];
    // the driver's so that it hits as many fairways as [BK] says. [CS] 0 to 15 % of drives fall under 80 % of the
    // median.

    static final double[] DRIVER_MISHITS = {.04, .15};
    static final double[] WOOD_MISHITS = {.055, .30};
    static final double[] HYBRID_MISHITS = {.045, .26};
    static final double[] IRON_MISHITS = {.04, .22};
    static final double[] WEDGE_MISHITS = {.033, .12};

    /** Assumed: no level's prior mishits more than this share of its swings (reached by woods from 102 on, irons from 114). */
    static final double MOST_PRIOR_MISHITS = 0.45;

    /** Assumed: nobody mishits more than this share of his swings from a good lie. */
    static final double MOST_MISHITS = 0.7;

    /** Assumed: longest to shortest iron, rates about the family's by +-30 %. */
    static final double MISHIT_SLOPE_PER_DEGREE = 0.03;

    // ---- Partial swings (common practice, no source; spread assumed) ----

    static final String THREE_QUARTER = "three-quarter";
    static final String HALF = "half";
    static final double THREE_QUARTER_CARRY = 0.80;
    static final double HALF_CARRY = 0.60;
    static final double THREE_QUARTER_SPREAD = 1.10;
    static final double HALF_SPREAD = 1.25;

    // ---- Short game of the tour and of a 90-golfer: a in metres, b a share, direction in degrees, mishit rates. The
    // tour's set
    // on [T9] and its up-and-downs from 10 to 40 yd; the 90-golfer's so that a third of what parts him from the tour is
    // lost
    // inside 100 yd (Broadie 2014) and that he saves a fifth [RI].

    /**
     * Assumed: how short shots of one level differ in the logarithm of their spread, together and each kind by itself, and in
     * the logarithm of their mishits.
     */
    static final double TOUCH_SHARED_LOG_SPREAD_SD = 0.20;

    static final double TOUCH_OWN_LOG_SPREAD_SD = 0.20;
    static final double TOUCH_LOG_MISHIT_SD = 0.5;

    static final double[] CHIP_FLOOR = {.52, .73};
    static final double[] CHIP_SHARE = {.09, .1375};
    static final double[] CHIP_DIRECTION = {2.7, 4.15};
    static final double[] CHIP_FAT = {.012, .05};
    static final double[] CHIP_THIN = {.012, .05};
    static final double[] PITCH_FLOOR = {.55, .93};
    static final double[] PITCH_SHARE = {.085, .1325};
    static final double[] PITCH_DIRECTION = {2.6, 4.5};
    static final double[] PITCH_FAT = {.0175, .065};
    static final double[] PITCH_THIN = {.022, .06};
    static final double[] SAND_FLOOR = {.95, 1.5};
    static final double[] SAND_SHARE = {.125, .20};
    static final double[] SAND_DIRECTION = {3, 5.85};
    static final double[] SAND_LEFT_IN = {.015, .12};
    static final double[] SAND_BLADED = {.0175, .065};

    /** Longest chip, pitch and bunker shot (assumed); a pitch is no longer than 0.8 of the shortest full carry. */
    static final double CHIP_LONGEST_METRES = 25;

    static final double PITCH_LONGEST_METRES = 45;
    static final double SAND_LONGEST_METRES = 30;
    static final double PITCH_LONGEST_SHARE = 0.8;

    private PriorTable() {}

    /** The straight line through the values at 80 and 100, never under {@code floor}. */
    static double at(double level, double at80, double at100, double floor) {
        double held = min(HIGHEST_LEVEL, max(LOWEST_LEVEL, level));
        return max(floor, at80 + (at100 - at80) * (held - 80) / 20);
    }

    /** The straight line through the values of the tour and of a 90-golfer, not under a quarter of the tour's. */
    static double at(double level, double[] tourAnd90) {
        return between(level, tourAnd90[0], tourAnd90[1]);
    }

    /** The same at a loft, from a row each. */
    static double at(double level, double[] tourRow, double[] ninetyRow, double loftDegrees) {
        return between(level, byLoft(tourRow, loftDegrees), byLoft(ninetyRow, loftDegrees));
    }

    private static double between(double level, double tour, double ninety) {
        double held = min(HIGHEST_LEVEL, max(LOWEST_LEVEL, level));
        return max(tour / 4, tour + (ninety - tour) * (held - TOUR_LEVEL) / (NINETY_LEVEL - TOUR_LEVEL));
    }

    /** Reads a row of the table at a loft. */
    static double byLoft(double[] row, double loftDegrees) {
        if (loftDegrees <= LOFT[0]) {
            return row[0];
        }
        for (int i = 1; i < LOFT.length; i++) {
            if (loftDegrees <= LOFT[i]) {
                double share = (loftDegrees - LOFT[i - 1]) / (LOFT[i] - LOFT[i - 1]);
                return row[i - 1] + share * (row[i] - row[i - 1]);
            }
        }
        return row[row.length - 1];
    }
}
