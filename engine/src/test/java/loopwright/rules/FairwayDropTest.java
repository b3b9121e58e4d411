package loopwright.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.LocalRule;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.strategy.TestCourses;
import org.junit.jupiter.api.Test;

/** The par 4 plays north to a hole at (0, 360); its fairway is 32 m wide from y = 130 to 345, out of bounds is x > 75. */
class FairwayDropTest {
    /** Where a ball went out on the right. */
    private static final Place OUT = new Place(75, 200);

    private final CourseMap map = map(TestCourses.parFour());
    private final Place hole = map.hole().holeLocation();

    private static CourseMap map(Course course) {
        Course ruled = TestCourses.withLocalRules(course, Set.of(LocalRule.DROP_INSTEAD_OF_STROKE_AND_DISTANCE));
        return new CourseMap(ruled, ruled.holes().get(0));
    }

    private static FairwayDrop drop(CourseMap map) {
        return FairwayDrop.find(map).orElseThrow();
    }

    @Test
    void withoutTheLocalRuleThereIsNone() {
        Course course = TestCourses.parFour();
        assertThat(FairwayDrop.find(new CourseMap(course, course.holes().get(0))))
                .isEmpty();
    }

    @Test
    void theFairwayReferenceIsWhereTheCircleRoundTheHoleMeetsTheFairway() {
        // r^2 = 75^2 + 160^2; beside the ball the fairway's edge is nearer the hole, so the point lies further back
        double y = 360 - Math.sqrt(75 * 75 + 160 * 160 - 16 * 16);
        Place reference = drop(map).fairwayReference(OUT);
        // rounding of coordinates of some hundred metres
        assertThat(reference.x()).isCloseTo(16, within(1e-9));
        assertThat(reference.y()).isCloseTo(y, within(1e-9));
    }

    @Test
    void aBallLostInTheFairwayIsItsOwnReference() {
        Place lost = new Place(3, 250);
        assertThat(drop(map).fairwayReference(lost)).isEqualTo(lost);
    }

    @Test
    void farBehindTheFairwayTheTeeStandsIn() {
        assertThat(drop(map).fairwayReference(new Place(40, 2))).isEqualTo(new Place(0, 0));
    }

    @Test
    void everyDropCostsTwoNamesTheRuleAndLiesInTheReliefArea() {
        List<Relief.Option> options = drop(map).from(OUT);
        double r = hole.distanceTo(OUT);
        double toBall = hole.bearingTo(OUT);
        double toFairway = hole.bearingTo(drop(map).fairwayReference(OUT));
        assertThat(options).isNotEmpty().allSatisfy(o -> {
            assertThat(o.penaltyStrokes()).isEqualTo(2);
            assertThat(o.rule()).isEqualTo("MLR E-5");
            assertThat(o.kind()).isEqualTo(Relief.Kind.BESIDE_THE_FAIRWAY);
            double distance = hole.distanceTo(o.place());
            assertThat(distance).isGreaterThanOrEqualTo(r);
            double outside = Relief.TWO_CLUB_LENGTHS_METRES / distance + 1e-9;
            assertThat(hole.bearingTo(o.place())).isBetween(toBall - outside, toFairway + outside);
            assertThat(map.surfaceAt(o.place()))
                    .isNotIn(
                            Surface.BUNKER,
                            Surface.GREEN,
                            Surface.OUT_OF_BOUNDS,
                            Surface.RED_PENALTY_AREA,
                            Surface.YELLOW_PENALTY_AREA);
        });
        assertThat(options).anyMatch(o -> map.surfaceAt(o.place()) == Surface.FAIRWAY);
    }

    @Test
    void theFairwayOfAnotherHoleDoesNotCount() {
        Area other = TestCourses.area("other", AreaKind.FAIRWAY, TestCourses.rectangle(60, 150, 70, 300));
        Course course = TestCourses.parFour();
        List<Area> areas = new java.util.ArrayList<>(course.areas());
        areas.add(other);
        assertThat(drop(map(course.withAreas(areas))).fairwayReference(OUT).x()).isCloseTo(16, within(1e-9));
    }
}
