package loopwright.ground;

/**
 * How quickly a running ball is slowed by a surface, as metres of level fairway that one metre of it uses up.
 *
 * <p>The run of a shot is given in metres of level fairway of ordinary firmness; along its path every metre costs the
 * resistance of the surface it crosses, and the ball rests where the sum is spent. All values are assumed: no measured
 * deceleration off the green was found; the green's is set equal to a fairway's for running approach shots.
 */
public final class RunResistance {
    /** Sand and penalty areas keep the ball: any run is spent at once. */
    private static final double KEEPS_THE_BALL = 1000;

    /** A climb of one metre costs as much as 1 / CLIMB metres of level fairway: what a rolling ball gives for it. */
    public static final double CLIMB = Turf.FAIRWAY_RESISTANCE;

    /** Down a slope that never ends a ball is stopped here: farther than any is known to run (assumed). */
    public static final double LONGEST_RUN_METRES = 120;

    private RunResistance() {}

    /** Metres of level fairway used up by one metre of this surface; above 0. */
    public static double of(Surface surface) {
        return switch (surface) {
            case TEE, FAIRWAY, GREEN -> 1;
            case PATH -> 0.6;
            case WASTE_AREA -> 2.5;
            case ROUGH, OUT_OF_BOUNDS -> 3;
            case WOODS -> 6;
            case DEEP_ROUGH -> 8;
            case BUNKER, RED_PENALTY_AREA, YELLOW_PENALTY_AREA -> KEEPS_THE_BALL;
        };
    }

    /**
     * The same on a slope along the run (rise per metre): gravity adds or takes what a rolling ball spends on the
     * climb, in the fairway's own deceleration. May be negative downhill, where the ball gains.
     */
    public static double of(Surface surface, double slopeAlong) {
        double level = 1 / Math.sqrt(1 + slopeAlong * slopeAlong);
        return level * (of(surface) + slopeAlong / Turf.FAIRWAY_RESISTANCE);
    }
}
