package loopwright.ground;

/**
 * How a ball first meets the ground.
 *
 * @param speedMetresPerSecond above 0 to 150
 * @param descentRadians below the horizontal, above 0 to pi/2
 * @param bearingRadians horizontal direction of travel, clockwise from north
 * @param backspinRadiansPerSecond about the level axis square to the travel; negative is topspin
 */
public record Touchdown(
        double speedMetresPerSecond, double descentRadians, double bearingRadians, double backspinRadiansPerSecond) {
    public Touchdown {
        if (!(speedMetresPerSecond > 0 && speedMetresPerSecond <= 150)) {
            throw new IllegalArgumentException("landing speed lies between 0 and 150 m/s, not " + speedMetresPerSecond);
        }
        if (!(descentRadians > 0 && descentRadians <= Math.PI / 2)) {
            throw new IllegalArgumentException(
                    "a descent lies between 0 and 90 degrees, not " + Math.toDegrees(descentRadians));
        }
        if (!Double.isFinite(bearingRadians) || !(Math.abs(backspinRadiansPerSecond) <= 2000)) {
            throw new IllegalArgumentException("a landing needs a bearing and a backspin within 2000 rad/s");
        }
    }
}
