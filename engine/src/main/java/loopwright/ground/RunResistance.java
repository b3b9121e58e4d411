package loopwright.ground;

/**
 * How quickly a running ball is slowed by a surface, as metres of level fairway that one metre of it uses up.
 *
 * <p>The run of a shot is given in metres of level fairway of ordinary firmness; along its path every metre costs the
 * resistance of the surface it crosses, and the ball rests where the sum is spent. All values are assumed: no measured
 * deceleration off the green was found; the green's is set equal to a fairway's for running approach shots.
 */
public final class RunResistance {
    private static final double[] BY_SURFACE = new double[Surface.values().length];

    static {
        BY_SURFACE[Surface.TEE.ordinal()] = 1;
        BY_SURFACE[Surface.FAIRWAY.ordinal()] = 1;
        BY_SURFACE[Surface.GREEN.ordinal()] = 1;
        BY_SURFACE[Surface.PATH.ordinal()] = 0.6;
        BY_SURFACE[Surface.WASTE_AREA.ordinal()] = 2.5;
        BY_SURFACE[Surface.ROUGH.ordinal()] = 3;
        BY_SURFACE[Surface.OUT_OF_BOUNDS.ordinal()] = 3;
        BY_SURFACE[Surface.DEEP_ROUGH.ordinal()] = 8;
        BY_SURFACE[Surface.WOODS.ordinal()] = 6;
        // Sand and penalty areas keep the ball: any run is spent at once.
        BY_SURFACE[Surface.BUNKER.ordinal()] = 1000;
        BY_SURFACE[Surface.RED_PENALTY_AREA.ordinal()] = 1000;
        BY_SURFACE[Surface.YELLOW_PENALTY_AREA.ordinal()] = 1000;
    }

    private RunResistance() {}

    /** Metres of level fairway used up by one metre of this surface; above 0. */
    public static double of(Surface surface) {
        return BY_SURFACE[surface.ordinal()];
    }
}
