package loopwright.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.strategy.TestCourses;
import org.junit.jupiter.api.Test;

/** A square bunker of 20 m around the ball, the hole 50 m to the north. */
class BunkerFaceTest {
    private static final Place BALL = new Place(0, 100);

    private static CourseMap map(AreaSurvey survey) {
        Region square = TestCourses.rectangle(-10, 90, 10, 110);
        Course course = TestCourses.course(
                List.of(new Area("pot", AreaKind.BUNKER, square, 0, survey)),
                List.of(new Place(0, 0), new Place(0, 150)),
                3,
                TestCourses.rectangle(-90, -60, 90, 230));
        return new CourseMap(course, course.holes().get(0));
    }

    @Test
    void aBunkerThatNobodyMeasuredHasNone() {
        assertThat(BunkerFace.find(map(AreaSurvey.NOTHING), BALL)).isEmpty();
        assertThat(BunkerFace.find(map(AreaSurvey.NOTHING.withBunker(2, 1)), new Place(30, 100)))
                .isEmpty();
    }

    @Test
    void theLipStandsOnTheSideOfTheHole() {
        BunkerFace face = BunkerFace.find(map(AreaSurvey.NOTHING.withBunker(1.2, 0.5)), BALL)
                .orElseThrow();
        assertThat(face.heightMetres(0)).isEqualTo(1.7);
        assertThat(face.heightMetres(Math.toRadians(80))).isEqualTo(1.7);
        assertThat(face.heightMetres(Math.toRadians(100))).isEqualTo(1.2);
        assertThat(face.heightMetres(Math.PI)).isEqualTo(1.2);
    }

    @Test
    void theEdgeIsFoundInEveryDirectionAndNeverNearerThanABallComesToRest() {
        CourseMap map = map(AreaSurvey.NOTHING.withBunker(1, 0));
        BunkerFace face = BunkerFace.find(map, BALL).orElseThrow();
        // looked for in steps of a quarter of a metre
        assertThat(face.distanceMetres(0)).isCloseTo(10, within(0.26));
        assertThat(face.distanceMetres(Math.toRadians(45))).isCloseTo(10 * Math.sqrt(2), within(0.26));
        BunkerFace near = BunkerFace.find(map, new Place(0, 109.9)).orElseThrow();
        assertThat(near.distanceMetres(0)).isEqualTo(BunkerFace.NEAREST_METRES);
    }
}
