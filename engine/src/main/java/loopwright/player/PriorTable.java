package loopwright.player;

import static java.lang.Math.max;
import static java.lang.Math.min;
import static java.lang.Math.toRadians;

/**
 * Every number of the prior, each with its source or "assumed". A level L is an average 18-hole score; values at other
 * levels are straight lines through those at 80 and 100, held constant outside {@value #LOWEST_LEVEL} to
 * {@value #HIGHEST_LEVEL}. Length never depends on the level once the player has said how far one club goes, and never
 * on age or sex.
 *
 * <p>Sources. [BK] Broadie and Ko, "A simulation model to analyze the impact of distance and direction on golf scores",
 * Winter Simulation Conference 2009: 80-golfer driver 250.6 yd, direction SD 5.5 deg; 100-golfer 225 yd, 7.9 deg; length
 * is carry and run, the SD includes bad shots. [CR] Course Rating
 * System: 20 yd of run on a full shot. [CS] CaddieSet, CVPR Workshops 2025: carry CV 6.2 to 17.6 %, start direction of
 * irons about half that of the driver. "Assumed" is our own judgement, open to correction.
 */
final class PriorTable {
    static final double LOWEST_LEVEL = 60;
    static final double HIGHEST_LEVEL = 130;

    // ---- Length ----

    /** [BK] 250.6 yd at 80 and 225 yd at 100, carry and run: only where nobody said how far the player hits it. */
    static final double DRIVE_AT_80_METRES = 229.15;

    static final double DRIVE_AT_100_METRES = 205.74;

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

    /** Direction SD as a share of the driver's, by loft; sign from [CS], size assumed. */
    static final double[] DIRECTION_SHARE = {1, .95, .92, .88, .86, .84, .81, .78, .74, .71, .68, .66, .65, .65, .65};

    /** Solid carry SD as a share of the carry, by loft at 80, and its growth to 100 (assumed; inside [CS]). */
    static final double[] CARRY_SD_AT_80 = {
        .045, .047, .048, .049, .05, .05, .05, .05, .052, .053, .055, .058, .06, .063, .066
    };

    static final double CARRY_SD_GROWTH_TO_100 = 0.03;
    static final double SMALLEST_CARRY_SD = 0.02;

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

    // ---- Mishits: share of swings at 80 and 100 (assumed; [CS] 0 to 15 % of drives fall under 80 % of the median)
    // ----

    static final double[] DRIVER_MISHITS = {.07, .14};
    static final double[] WOOD_MISHITS = {.10, .20};
    static final double[] HYBRID_MISHITS = {.08, .16};
    static final double[] IRON_MISHITS = {.075, .15};
    static final double[] WEDGE_MISHITS = {.06, .12};

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

    // ---- Short game at 80 and 100 (assumed): a in metres, b a share, direction in degrees, mishit rates ----

    static final double[] CHIP_FLOOR = {.3, .5};
    static final double[] CHIP_SHARE = {.10, .15};
    static final double[] CHIP_DIRECTION = {2.5, 4};
    static final double[] CHIP_FAT = {.03, .07};
    static final double[] CHIP_THIN = {.03, .07};
    static final double[] PITCH_FLOOR = {.5, .9};
    static final double[] PITCH_SHARE = {.10, .15};
    static final double[] PITCH_DIRECTION = {3, 5};
    static final double[] PITCH_FAT = {.04, .09};
    static final double[] PITCH_THIN = {.04, .08};
    static final double[] SAND_FLOOR = {.8, 1.4};
    static final double[] SAND_SHARE = {.18, .26};
    static final double[] SAND_DIRECTION = {4, 7};
    static final double[] SAND_LEFT_IN = {.06, .18};
    static final double[] SAND_BLADED = {.04, .09};

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

    /** As above, not under a quarter of the value at 80 (a scratch player still errs). */
    static double at(double level, double[] at80And100) {
        return at(level, at80And100[0], at80And100[1], at80And100[0] / 4);
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
