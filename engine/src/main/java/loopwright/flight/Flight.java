package loopwright.flight;

/**
 * A flown ball, from the strike to the first touch of the ground; the strike is the origin.
 *
 * @param forwardMetres along the aim
 * @param rightMetres square to it
 * @param apexMetres greatest height above the strike
 * @param seconds time of flight
 * @param speedMetresPerSecond speed at landing
 * @param descentRadians below the horizontal at landing
 * @param headingRadians horizontal direction of travel at landing, relative to the aim, + right
 * @param spinRadiansPerSecond spin left at landing
 * @param reached false if the apex stayed below the landing height; the rest then describes the apex
 */
public record Flight(
        double forwardMetres,
        double rightMetres,
        double apexMetres,
        double seconds,
        double speedMetresPerSecond,
        double descentRadians,
        double headingRadians,
        double spinRadiansPerSecond,
        boolean reached) {

    public double carryMetres() {
        return Math.hypot(forwardMetres, rightMetres);
    }

    /** Finish direction of the carry relative to the aim, + right. */
    public double directionRadians() {
        return Math.atan2(rightMetres, forwardMetres);
    }
}
