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

    /** A hillside that falls away as a ball descends is met no later than at this share of its steepness. */
    private static final float SLOWEST_CLOSING = 0.5f;

    private Descent() {}

    /** Tangent of a descent below the horizontal, as the shift uses it. */
    public static float steepness(double descentRadians) {
        return (float) Math.max(FLATTEST_TANGENT, Math.tan(descentRadians));
    }

    /** How quickly the path steepens, per metre; 0 (straight) where the speed at landing is not known, given as 0. */
    public static float bend(double landingSpeed, double descentRadians) {
        double level = landingSpeed * Math.cos(descentRadians);
        return level > 0 ? (float) (FALLING_SHARE * GRAVITY / (level * level)) : 0;
    }

    /**
     * How much shorter the flight is, as far as its top at most, on ground that is a plane. Lengths along the travel may be
     * in any unit that steepness, bend and slope are per. In floats, which halve the time of a loop over strikes.
     *
     * @param rise of the ground where the ball would come down on level ground, above what it was struck from, metres
     * @param slope rise of the ground along the travel
     */
    public static float back(float rise, float slope, float steepness, float bend) {
        float closing = Math.max(SLOWEST_CLOSING * steepness, steepness + slope);
        float square = closing * closing - 2 * bend * rise;
        return 2 * rise / (closing + (square > 0 ? (float) Math.sqrt(square) : 0));
    }
}
