package loopwright.flight;

/**
 * The end of a flight as a parabola, to move a landing to ground higher or lower than the one it was found on: z = - t x -
 * c g x^2 / (2 v^2), x along the travel from the landing, t the tangent of the descent, v the level speed at landing.
 *
 * <p>Drag does not bend the path; lift does, and at the end of a golf shot it holds about half of gravity: c =
 * {@value #FALLING_SHARE} fits full swings from 20 m down to 10 m up to a twelfth of the height, at most ({@code
 * ResponseSurfaceTest}); the straight line alone is off by a fifth.
 */
public final class Descent {
    private static final double FALLING_SHARE = 0.5;
    private static final double GRAVITY = 9.80665;
    /** Flatter landings are taken for this steep, or a hillside would take them anywhere. */
    private static final double FLATTEST_TANGENT = 0.1;

    private Descent() {}

    /** Tangent of a descent below the horizontal, as the shift uses it. */
    public static double steepness(double descentRadians) {
        return Math.max(FLATTEST_TANGENT, Math.tan(descentRadians));
    }

    /** How quickly the path steepens, per metre; 0 (straight) where the speed at landing is not known, given as 0. */
    public static double bend(double landingSpeed, double descentRadians) {
        double level = landingSpeed * Math.cos(descentRadians);
        return level > 0 ? FALLING_SHARE * GRAVITY / (level * level) : 0;
    }

    /** How much shorter the flight is, metres, on ground higher by {@code rise} metres; as far as its top at most. */
    public static double backMetres(double rise, double steepness, double bend) {
        double root = Math.sqrt(Math.max(0, steepness * steepness - 2 * bend * rise));
        return 2 * rise / (steepness + root);
    }
}
