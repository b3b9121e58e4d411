package loopwright.putting;

/**
 * How a player putts.
 *
 * <p>Where nobody measured the slope, start line and reading act as one spread of direction, {@link #directionSdRadians}:
 * the two parts at the break of a typical green, added as independent errors.
 *
 * @param startLineSdRadians spread of the start direction, stroke and alignment together
 * @param paceSd spread of the rolled distance as a share of the intended one
 * @param readingSd spread of the read break as a share of the true break (no effect on a putt known to be level)
 * @param evidence number of putts the values rest on; 0: prior by level only
 */
public record PuttingSkill(double startLineSdRadians, double paceSd, double readingSd, int evidence) {
    /**
     * Typical angle between the aim and the hole, root mean square over putts: 1.5 % of slope from any side on a green
     * of 10 ft, by the side-hill formula B / (2 A) = 0.101 times 0.71 for the side (slope: assumed).
     */
    public static final double TYPICAL_BREAK_RADIANS = 0.071;

    public PuttingSkill {
        if (!(startLineSdRadians > 0 && startLineSdRadians < 0.5) || !(paceSd > 0 && paceSd < 1) || !(readingSd >= 0)) {
            throw new IllegalArgumentException(
                    "putting skill needs start line 0 to 0.5 rad, pace 0 to 1, reading >= 0");
        }
        if (evidence < 0) {
            throw new IllegalArgumentException("a number of putts is zero or more");
        }
    }

    /** Spread of direction on a green whose slope was not measured: start line and reading as one. */
    public double directionSdRadians() {
        return Math.hypot(startLineSdRadians, readingSd * TYPICAL_BREAK_RADIANS);
    }
}
