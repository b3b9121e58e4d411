package loopwright.ground;

/**
 * What a patch of ground does to a ball that bounces and rolls on it.
 *
 * <p>At factors of 1 friction and bounce are Penner's (see {@link Bounce}), measured on greens. A drive's run is mostly
 * hops and hangs on the crater wall; the fairway's factor was set so that the average drive of the PGA TOUR in 2015
 * (launch in {@code docs/validation.md}) runs the 22 yards by which its published total exceeds its computed carry. All
 * else is assumed: long grass and leaves dig deeper craters and give less rebound, about as much as {@link
 * RunResistance} says; the roll is the fairway's times that resistance; a path is rigid.
 *
 * @param craterFactor multiplies the slope of the crater wall, 0 (rigid) or more
 * @param reboundFactor multiplies the coefficient of restitution, 0 or more
 * @param leastRebound the coefficient of restitution is never less, 0 to 1
 * @param lowestHopMetres a rebound lower than this becomes a roll, above 0
 * @param friction sliding friction of the bounce, 0 to 1
 * @param rollingResistance rho in a = (5/7) rho g, above 0
 */
public record Turf(
        double craterFactor,
        double reboundFactor,
        double leastRebound,
        double lowestHopMetres,
        double friction,
        double rollingResistance) {
    /** Standard gravity, m/s2. */
    public static final double GRAVITY = 9.80665;

    /** A rigid ball that rolls: its turning takes part of the work, 1 / (1 + 2/5). */
    public static final double ROLLING = 5.0 / 7;

    /** Penner 2002, p. 933. */
    public static final double PENNER_FRICTION = 0.40;

    /** A green's by Penner is 0.131; a fairway's is "expected larger" (assumed). */
    public static final double FAIRWAY_RESISTANCE = 0.25;

    private static final double FAIRWAY_CRATER = 1.03;

    /**
     * Penner 2002, p. 935, for a green; elsewhere about the height of the grass, in which a skipping ball drags
     * (assumed).
     */
    private static final double GREEN_HOP = 0.005;

    private static final double FAIRWAY_HOP = 0.02;
    private static final double ROUGH_HOP = 0.06;

    /** A ball on concrete keeps more than half its speed at any impact of golf (common practice, no source). */
    private static final double PATH_REBOUND = 0.6;

    public Turf {
        if (!(craterFactor >= 0) || !(reboundFactor >= 0) || !(leastRebound >= 0 && leastRebound <= 1)) {
            throw new IllegalArgumentException("turf needs factors of zero or more and a least rebound up to 1");
        }
        if (!(friction >= 0 && friction <= 1) || !(rollingResistance > 0) || !(lowestHopMetres > 0)) {
            throw new IllegalArgumentException("turf needs friction 0 to 1, hops and rolling resistance above 0");
        }
    }

    /** The turf of a surface on a day; a green rolls with its own resistance, whatever the firmness. */
    public static Turf of(Surface surface, Firmness firmness, double greenResistance) {
        double roll = FAIRWAY_RESISTANCE * RunResistance.of(surface) * firmness.roll();
        return switch (surface) {
            case GREEN -> turf(1, 1, GREEN_HOP, firmness, greenResistance);
            case TEE, FAIRWAY -> turf(FAIRWAY_CRATER, 1, FAIRWAY_HOP, firmness, roll);
            case PATH -> new Turf(0, 1, PATH_REBOUND, GREEN_HOP, PENNER_FRICTION, roll);
            case WASTE_AREA -> turf(1.15, 0.6, FAIRWAY_HOP, firmness, roll);
            case ROUGH, OUT_OF_BOUNDS -> turf(1.15, 0.5, ROUGH_HOP, firmness, roll);
            case WOODS -> turf(1.35, 0.3, ROUGH_HOP, firmness, roll);
            case DEEP_ROUGH -> turf(1.40, 0.2, ROUGH_HOP, firmness, roll);
            case BUNKER, RED_PENALTY_AREA, YELLOW_PENALTY_AREA -> turf(1.4, 0.1, ROUGH_HOP, firmness, roll);
        };
    }

    private static Turf turf(double crater, double rebound, double hop, Firmness firmness, double roll) {
        return new Turf(crater * firmness.crater(), rebound * firmness.rebound(), 0, hop, PENNER_FRICTION, roll);
    }

    /** Deceleration of a rolling ball on level ground, m/s2. */
    public double deceleration() {
        return ROLLING * rollingResistance * GRAVITY;
    }
}
