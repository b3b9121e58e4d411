package loopwright.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.strategy.TestCourses;
import org.junit.jupiter.api.Test;

class CourseMapTest {
    /** A sea of 400 km beside the hole, which no grid could hold: 10,000 million cells of 4 m. */
    private static Course byTheSea() {
        List<Area> areas = new ArrayList<>(TestCourses.parFour().areas());
        areas.add(TestCourses.area(
                "sea", AreaKind.RED_PENALTY_AREA, TestCourses.rectangle(-400_000, -200_000, -100, 200_000)));
        return TestCourses.parFour().withAreas(areas);
    }

    private static CourseMap map(Course course) {
        return new CourseMap(course, course.holes().get(0));
    }

    @Test
    void aSeaBesideTheHoleCostsNoMoreThanTheHole() {
        CourseMap map = map(byTheSea().withBoundary(Optional.empty()));
        assertThat(map.surfaceAt(0, 200)).isEqualTo(Surface.FAIRWAY);
        assertThat(map.surfaceAt(-110, 200)).isEqualTo(Surface.RED_PENALTY_AREA);
        assertThat(map.surfaceAt(-99, 200)).isEqualTo(Surface.ROUGH);
    }

    @Test
    void beyondTheGridThePolygonsAnswerAsWell() {
        CourseMap open = map(byTheSea().withBoundary(Optional.empty()));
        assertThat(open.surfaceAt(-300_000, 100_000)).isEqualTo(Surface.RED_PENALTY_AREA);
        assertThat(open.surfaceAt(-500_000, 0)).isEqualTo(Surface.ROUGH);
        assertThat(open.findTreesAt(-500_000, 0)).isNull();
        CourseMap bounded = map(byTheSea());
        assertThat(bounded.surfaceAt(-300_000, 100_000)).isEqualTo(Surface.OUT_OF_BOUNDS);
        assertThat(bounded.surfaceAt(new Place(0, 5_000))).isEqualTo(Surface.OUT_OF_BOUNDS);
    }
}
