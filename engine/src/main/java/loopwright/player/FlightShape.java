package loopwright.player;

import loopwright.ground.Situation;

/**
 * The height of a flight over its ground line, as far as trees need it, and how much of a wood round the ball leaves a
 * way out. The curve h(u) = 4 a u (1 - u) (1 + 0.6 (u - 1/2)), u = 0 at the ball and 1 at the landing, has its apex a
 * little past the middle and comes down steeper than it rose, as flights with backspin do; its greatest value is
 * within 2.5 % of a.
 */
public final class FlightShape {
    private FlightShape() {}

    /** Height above the ground at share {@code u} (0 to 1) of the carry of a flight with this apex. */
    public static double heightMetres(double apexMetres, double u) {
        return 4 * apexMetres * u * (1 - u) * (1 + 0.6 * (u - 0.5));
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
