package loopwright.player;

import loopwright.ground.Situation;

/**
 * The height of a flight over its ground line, as far as trees need it, and how much of a wood round the ball leaves a
 * way out. The curve h(u) = 4 a u (1 - u) (1 + 0.6 (u - 1/2)), u = 0 at the ball and 1 at the landing, has its apex a
 * little past the middle and comes down steeper than it rose, as flights with backspin do; its greatest value is
 * within 2.5 % of a.
 */
public final class FlightShape {
    /** Standard deviation of the steepness of the start, as a share: assumed. */
    private static final double START_SPREAD = 0.2;

    private FlightShape() {}

    /** Height above the ground at share {@code u} (0 to 1) of the carry of a flight with this apex. */
    public static double heightMetres(double apexMetres, double u) {
        return 4 * apexMetres * u * (1 - u) * (1 + 0.6 * (u - 0.5));
    }

    /**
     * Height early in a flight, for the face of a bunker. There {@link #heightMetres} is too high: backspin holds a full
     * shot up later. A short shot starts as a parabola does, at 4 a / c for an apex a and a carry c; a full one at half of
     * that, by our own flight model (carries of 65 to 75 m: 0.65 to 0.8, of 115 to 130 m: 0.45 to 0.65, longer
     * ones 0.33 to 0.55).
     */
    static double startHeightMetres(double apexMetres, double carryMetres, double metres) {
        double share = Math.max(0.5, Math.min(1, 1 - (carryMetres - 30) / 180));
        double climb = 4 * apexMetres / carryMetres * share * metres;
        return Math.min(climb, heightMetres(apexMetres, metres / carryMetres));
    }

    /**
     * True if a flight passes over an edge that stands this far off and this high over the ball.
     *
     * @param z standard normal: how much steeper or flatter than usual this ball starts
     */
    public static boolean clears(
            double apexMetres, double carryMetres, double z, double edgeMetres, double edgeHeightMetres) {
        double height = startHeightMetres(apexMetres, carryMetres, edgeMetres) * (1 + START_SPREAD * z);
        return carryMetres > edgeMetres && height >= edgeHeightMetres;
    }

    /** Trees within this distance of a ball in the woods leave the chosen way out, by situation: assumed. */
    public static double openMetres(Situation situation) {
        return switch (situation) {
            case CLEAR, WINDOW -> 25;
            case SIDEWAYS_ONLY -> 12;
            default -> 0;
        };
    }
}
