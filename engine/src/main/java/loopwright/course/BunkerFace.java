package loopwright.course;

import java.util.Optional;
import loopwright.geo.Place;
import loopwright.ground.Surface;

/**
 * The face in front of a ball in a bunker that somebody has measured: how high its edge stands over the ball, and how
 * far off, in any direction. The edge stands the bunker's depth above the sand all round, and its lip higher on the
 * side of the hole.
 */
public final class BunkerFace {
    /** Sand slopes up to a face and a ball rolls back from it, so none lies nearer: assumed. */
    public static final double NEAREST_METRES = 1.5;

    private static final double STEP_METRES = 0.25;
    /** Beyond this the edge is in nobody's way. */
    private static final double FURTHEST_METRES = 40;

    private final CourseMap map;
    private final Place ball;
    private final double depthMetres;
    private final double lipMetres;
    private final double toHole;

    private BunkerFace(CourseMap map, Place ball, AreaSurvey survey) {
        this.map = map;
        this.ball = ball;
        depthMetres = survey.depthMetres().orElse(0);
        lipMetres = survey.lipMetres().orElse(0);
        toHole = ball.bearingTo(map.hole().holeLocation());
    }

    /** The face round a ball; empty if it lies in no bunker, or in one that nobody has measured. */
    public static Optional<BunkerFace> find(CourseMap map, Place ball) {
        AreaSurvey survey = map.bunkerSurveyAt(ball);
        boolean flat = survey.depthMetres().orElse(0) + survey.lipMetres().orElse(0) == 0;
        return flat ? Optional.empty() : Optional.of(new BunkerFace(map, ball, survey));
    }

    /** Height of the edge over the ball in a direction. */
    public double heightMetres(double bearing) {
        return depthMetres + (Math.cos(bearing - toHole) > 0 ? lipMetres : 0);
    }

    /** Distance to the edge in a direction, at least {@link #NEAREST_METRES}. */
    public double distanceMetres(double bearing) {
        double d = NEAREST_METRES;
        while (d < FURTHEST_METRES && map.surfaceAt(ball.along(bearing, d)) == Surface.BUNKER) {
            d += STEP_METRES;
        }
        return d;
    }
}
