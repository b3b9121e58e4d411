package loopwright.putting;

/**
 * How fast a green is: the level roll of a ball let go by a Stimpmeter, which leaves it at 1.83 m/s (6.00 ft/s; USGA
 * Stimpmeter instruction booklet and Penner 2002). The rolling ball then slows at a = 1.83^2 / (2 S).
 *
 * @param rollMetres the level roll S, 0.9 to 6 m (3 to 20 ft)
 */
public record GreenSpeed(double rollMetres) {
    public static final double RELEASE_METRES_PER_SECOND = 1.83;

    /** Standard gravity. */
    public static final double GRAVITY = 9.80665;

    private static final double LEAST = 0.9;
    private static final double MOST = 6.1;

    public GreenSpeed {
        if (!(rollMetres >= LEAST && rollMetres <= MOST)) {
            throw new IllegalArgumentException(
                    "a green speed is a roll of " + LEAST + " to " + MOST + " m, not " + rollMetres);
        }
    }

    public static GreenSpeed ofRollMetres(double metres) {
        return new GreenSpeed(metres);
    }

    /** Deceleration of a rolling ball on level ground, m/s2. */
    public double deceleration() {
        return RELEASE_METRES_PER_SECOND * RELEASE_METRES_PER_SECOND / (2 * rollMetres);
    }

    /** Penner's coefficient of rolling resistance: a = (5/7) rho g. */
    public double rollingResistance() {
        return deceleration() * 7 / (5 * GRAVITY);
    }
}
