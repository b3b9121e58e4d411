package loopwright.flight;

/**
 * How strikes of the same carry differ: one standard deviation more of the loft that the club delivers launches the ball
 * this much higher and spins it this much more, and the ball speed makes up for it. Loft has no units of its own here; it
 * is counted in such deviations, + higher, held at {@value #MOST} either way.
 *
 * @param launchRadians added to the launch angle, 0 or more
 * @param logSpin added to the logarithm of the spin, 0 or more
 */
public record LaunchSpread(double launchRadians, double logSpin) {
    public static final LaunchSpread NONE = new LaunchSpread(0, 0);

    static final double MOST = 3;

    public LaunchSpread {
        if (!(launchRadians >= 0 && launchRadians < 0.2 && logSpin >= 0 && logSpin < 0.5)) {
            throw new IllegalArgumentException(
                    "a launch spread lies within 0.2 rad and half the spin, not " + launchRadians + " and " + logSpin);
        }
    }

    boolean isNone() {
        return launchRadians == 0 && logSpin == 0;
    }

    static double held(double loft) {
        return Math.min(MOST, Math.max(-MOST, loft));
    }

    /** The style of strikes with so much more loft than usual. */
    LaunchStyle lofted(LaunchStyle usual, double loft) {
        double spins = Math.exp(loft * logSpin);
        return speed -> {
            Launch l = usual.at(speed);
            double spin = Math.min(Launch.MOST_SPIN, l.spinRadiansPerSecond() * spins);
            return new Launch(speed, l.launchRadians() + loft * launchRadians, l.startRadians(), spin, l.axisRadians());
        };
    }
}
