package loopwright.flight;

/**
 * Finds the launch of a style that carries a given distance in a given direction in still standard air: ball speed for
 * the carry, start direction and spin axis for the direction.
 *
 * <p>A finish direction is partly start and partly curve, because an open face sends the ball right and tilts its spin
 * right. The tilt is m tanh(k d / m) for a finish direction d, m = {@value #MOST_TILT} rad (more is no golf swing). For
 * k see {@link #tiltPerDirection}; the ball starts wherever it must to finish at d. Carries are met to 1 mm.
 */
public final class LaunchFinder {
    /**
     * Share of a finish direction that is curve, at a swing's usual carry. Assumed; pooled over 300 shots of three
     * golfers of an open data set (CaddieSet, CVPR Workshops 2025) it was 0.56.
     */
    public static final double CURVE_SHARE = 0.5;

    private static final double MOST_TILT = 0.9;
    private static final double SLOWEST = 0.5;
    private static final double FASTEST = 115;
    private static final double CARRY_TOLERANCE = 1e-3;
    private static final int MOST_ITERATIONS = 60;
    private static final double SMALL_TILT = 0.05;

    private final BallFlight still = new BallFlight(FlightSetting.standard());

    /** The straight launch with this carry; at {@value #FASTEST} m/s if none is fast enough. */
    public Launch straight(LaunchStyle style, double carryMetres) {
        return tilted(style, carryMetres, 0, Math.sqrt(10 * carryMetres));
    }

    /** Tilt of the spin axis for every radian of finish direction that makes {@link #CURVE_SHARE} of it curve. */
    public double tiltPerDirection(LaunchStyle style, double usualCarryMetres) {
        Launch launch = tilted(style, usualCarryMetres, SMALL_TILT, Math.sqrt(10 * usualCarryMetres));
        return CURVE_SHARE * SMALL_TILT / still.fly(launch, 0).directionRadians();
    }

    /**
     * The launch with this carry and finish direction, by a swing that tilts the axis so much per direction.
     *
     * @param nearSpeed where to begin the search, m/s
     */
    public Launch toward(
            LaunchStyle style, double carryMetres, double directionRadians, double tiltPerDirection, double nearSpeed) {
        double tilt = MOST_TILT * Math.tanh(tiltPerDirection * directionRadians / MOST_TILT);
        Launch curving = tilted(style, carryMetres, tilt, nearSpeed);
        return curving.withStart(directionRadians - still.fly(curving, 0).directionRadians());
    }

    /** The secant rule inside a bracket; carry rises with speed. */
    private Launch tilted(LaunchStyle style, double carryMetres, double tilt, double nearSpeed) {
        double low = SLOWEST;
        double high = FASTEST;
        double speed = Math.min(Math.max(nearSpeed, low), high);
        double slope = carryMetres / speed;
        double lastSpeed = Double.NaN;
        double lastMiss = Double.NaN;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            double miss = still.fly(style.at(speed).withAxis(tilt), 0).carryMetres() - carryMetres;
            if (Math.abs(miss) < CARRY_TOLERANCE) {
                break;
            }
            if (miss > 0) {
                high = speed;
            } else {
                low = speed;
            }
            if (i > 0) {
                slope = (miss - lastMiss) / (speed - lastSpeed);
            }
            lastSpeed = speed;
            lastMiss = miss;
            double next = speed - miss / slope;
            speed = next > low && next < high ? next : 0.5 * (low + high);
        }
        return style.at(speed).withAxis(tilt);
    }
}
