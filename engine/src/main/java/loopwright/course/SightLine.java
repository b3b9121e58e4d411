package loopwright.course;

import java.util.Optional;
import loopwright.geo.Place;
import loopwright.ground.HeightField;

/**
 * Whether a player can see an aim from the ball: a straight ray from his eyes to a height above the aim, stopped by
 * the ground and by trees. Crowns hide what is behind them; between the ground and the lowest branches one can see
 * through. The curvature of the earth hides 1 cm at 350 m and is left out.
 *
 * @param course gives ground heights where it has them, else the ground is level
 */
public record SightLine(Course course, CourseMap map) {
    /** Height of a standing player's eyes: assumed. */
    public static final double EYE_METRES = 1.6;

    private static final double STEP_METRES = 2;
    /** The ground beside eye and aim is not in the way of itself. */
    private static final double FREE_METRES = 4;

    /** What hides an aim, and where. */
    public record Obstacle(boolean trees, Place place) {}

    /** The first thing that hides a point {@code aboveGroundMetres} over the aim, or empty if it can be seen. */
    public Optional<Obstacle> findObstacle(Place ball, Place aim, double aboveGroundMetres) {
        double length = ball.distanceTo(aim);
        double bearing = ball.bearingTo(aim);
        double eye = ground(ball)
                + EYE_METRES
                - map.bunkerSurveyAt(ball).depthMetres().orElse(0);
        double top = ground(aim) + aboveGroundMetres;
        for (double d = FREE_METRES; d < length - FREE_METRES; d += STEP_METRES) {
            Place at = ball.along(bearing, d);
            double above = eye + (top - eye) * d / length - ground(at);
            if (above < 0) {
                return Optional.of(new Obstacle(false, at));
            }
            TreeCover trees = map.findTreesAt(at.x(), at.y());
            if (trees != null && above >= trees.gapMetres() && above <= trees.heightMetres()) {
                return Optional.of(new Obstacle(true, at));
            }
        }
        return Optional.empty();
    }

    public boolean sees(Place ball, Place aim, double aboveGroundMetres) {
        return findObstacle(ball, aim, aboveGroundMetres).isEmpty();
    }

    private double ground(Place place) {
        return course.heights().map((HeightField h) -> h.heightMetres(place)).orElse(0.0);
    }
}
