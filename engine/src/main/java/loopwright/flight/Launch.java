package loopwright.flight;

/**
 * How a ball leaves the club, seen along the aim.
 *
 * @param speedMetresPerSecond ball speed, above 0 to 120
 * @param launchRadians above the horizontal, -pi/2 to pi/2
 * @param startRadians start direction, + right
 * @param spinRadiansPerSecond total spin, 0 to 1600
 * @param axisRadians tilt of the spin axis seen along the start: + curves to the right, 0 is pure backspin, pi topspin
 */
public record Launch(
        double speedMetresPerSecond,
        double launchRadians,
        double startRadians,
        double spinRadiansPerSecond,
        double axisRadians) {
    static final double FASTEST = 120;
    static final double MOST_SPIN = 1600;

    public Launch {
        if (!(speedMetresPerSecond > 0 && speedMetresPerSecond <= FASTEST)) {
            throw new IllegalArgumentException("ball speed lies between 0 and 120 m/s, not " + speedMetresPerSecond);
        }
        if (!(Math.abs(launchRadians) <= Math.PI / 2)) {
            throw new IllegalArgumentException(
                    "launch angle lies between -90 and 90 degrees, not " + Math.toDegrees(launchRadians));
        }
        if (!(Math.abs(startRadians) <= Math.PI)) {
            throw new IllegalArgumentException(
                    "start direction lies between -180 and 180 degrees, not " + Math.toDegrees(startRadians));
        }
        if (!(spinRadiansPerSecond >= 0 && spinRadiansPerSecond <= MOST_SPIN)) {
            throw new IllegalArgumentException("spin lies between 0 and 1600 rad/s, not " + spinRadiansPerSecond);
        }
        if (!(Math.abs(axisRadians) <= Math.PI)) {
            throw new IllegalArgumentException(
                    "spin axis lies between -180 and 180 degrees, not " + Math.toDegrees(axisRadians));
        }
    }

    public Launch withSpeed(double newSpeed) {
        return new Launch(newSpeed, launchRadians, startRadians, spinRadiansPerSecond, axisRadians);
    }

    public Launch withSpin(double newSpin) {
        return new Launch(speedMetresPerSecond, launchRadians, startRadians, newSpin, axisRadians);
    }

    public Launch withStart(double newStart) {
        return new Launch(speedMetresPerSecond, launchRadians, newStart, spinRadiansPerSecond, axisRadians);
    }

    public Launch withAxis(double newAxis) {
        return new Launch(speedMetresPerSecond, launchRadians, startRadians, spinRadiansPerSecond, newAxis);
    }
}
