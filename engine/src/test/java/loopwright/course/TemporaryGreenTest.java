package loopwright.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.strategy.TestCourses;
import org.junit.jupiter.api.Test;

/** A hole of 360 m to the north with a bend at 200 m; its green has a radius of 12 m. */
class TemporaryGreenTest {
    private static final Course COURSE = TestCourses.course(
            List.of(TestCourses.area("fairway", AreaKind.FAIRWAY, TestCourses.rectangle(-20, 130, 20, 345))),
            List.of(new Place(0, 0), new Place(5, 200), new Place(0, 360)),
            4,
            TestCourses.rectangle(-90, -60, 90, 430));

    private static Hole played(HoleNotes notes) {
        Hole hole = COURSE.holes().get(0);
        return TemporaryGreen.inPlay(
                        COURSE.withHoles(List.of(hole.withSurvey(hole.survey().withNotes(notes)))))
                .holes()
                .get(0);
    }

    @Test
    void withoutTheRuleNothingChanges() {
        assertThat(played(HoleNotes.NOTHING)).isEqualTo(COURSE.holes().get(0));
    }

    @Test
    void itLiesThirtyMetresShortOfTheGreenWhereNobodySaysWhere() {
        Hole hole = played(HoleNotes.NOTHING.withLocalRules(Set.of(LocalRule.TEMPORARY_GREEN)));
        // the line meets the green 12 m before its middle; it is searched in steps of a metre
        assertThat(hole.holeLocation().y()).isCloseTo(360 - 12 - 30, within(1.5));
        assertThat(hole.line().lengthMetres())
                .isCloseTo(COURSE.holes().get(0).line().lengthMetres() - 42, within(1.5));
        assertThat(hole.line().places()).hasSize(3);
        assertThat(hole.greenAssumed()).isFalse();
    }

    @Test
    void itLiesWhereTheSurveySays() {
        Place wanted = new Place(4, 180);
        Hole hole = played(HoleNotes.NOTHING.withTemporaryGreen(wanted));
        assertThat(hole.holeLocation()).isEqualTo(wanted);
        assertThat(hole.green().contains(new Place(4, 185.4))).isTrue();
        assertThat(hole.green().contains(new Place(4, 185.6))).isFalse();
        assertThat(hole.line().places()).hasSize(2);
    }

    @Test
    void theClosedGreenIsFairway() {
        Hole hole = COURSE.holes().get(0);
        Course withArea = COURSE.withAreas(List.of(Area.of("green", AreaKind.GREEN, hole.green())));
        Hole played = played(HoleNotes.NOTHING.withTemporaryGreen(new Place(0, 300)));
        CourseMap map = new CourseMap(withArea.withHoles(List.of(played)), played);
        assertThat(map.surfaceAt(new Place(0, 360))).isEqualTo(Surface.FAIRWAY);
        assertThat(map.surfaceAt(new Place(0, 300))).isEqualTo(Surface.GREEN);
    }
}
