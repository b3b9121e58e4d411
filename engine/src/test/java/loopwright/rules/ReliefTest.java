package loopwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.course.CourseMap;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.strategy.TestCourses;
import org.junit.jupiter.api.Test;

class ReliefTest {
    private final CourseMap lakeHole =
            new CourseMap(TestCourses.parThree(), TestCourses.parThree().holes().get(0));
    private final Place hole = lakeHole.hole().holeLocation();
    /** On the near edge of the lake, short of the green. */
    private final Place crossing = new Place(3, 59.9);

    @Test
    void yellowPenaltyAreaAllowsOnlyBackOnTheLineForOneStroke() {
        List<Relief.Option> options = Relief.fromPenaltyArea(lakeHole, crossing, Surface.YELLOW_PENALTY_AREA);
        assertThat(options).isNotEmpty().allSatisfy(o -> {
            assertThat(o.kind()).isEqualTo(Relief.Kind.BACK_ON_THE_LINE);
            assertThat(o.penaltyStrokes()).isEqualTo(1);
            assertThat(o.rule()).startsWith("17.1d");
        });
    }

    @Test
    void redPenaltyAreaAllowsLateralReliefWithinTwoClubLengths() {
        List<Relief.Option> lateral = Relief.fromPenaltyArea(lakeHole, crossing, Surface.RED_PENALTY_AREA).stream()
                .filter(o -> o.kind() == Relief.Kind.LATERAL)
                .toList();
        assertThat(lateral)
                .isNotEmpty()
                .allSatisfy(o -> assertThat(o.place().distanceTo(crossing))
                        .isLessThanOrEqualTo(Relief.TWO_CLUB_LENGTHS_METRES + 1e-9));
    }

    @Test
    void noDropIsNearerTheHoleOrInThePenaltyArea() {
        assertThat(Relief.fromPenaltyArea(lakeHole, crossing, Surface.RED_PENALTY_AREA))
                .allSatisfy(o -> {
                    // 1e-6 m: far below anything measurable, above the rounding of coordinates of some hundred metres
                    assertThat(o.place().distanceTo(hole)).isGreaterThanOrEqualTo(crossing.distanceTo(hole) - 1e-6);
                    assertThat(lakeHole.surfaceAt(o.place()).isPlayable()).isTrue();
                });
    }

    @Test
    void backOnTheLineKeepsTheCrossingBetweenHoleAndDrop() {
        assertThat(Relief.fromPenaltyArea(lakeHole, crossing, Surface.YELLOW_PENALTY_AREA))
                .allSatisfy(o -> assertThat(hole.distanceTo(o.place()))
                        .isCloseTo(
                                hole.distanceTo(crossing) + crossing.distanceTo(o.place()),
                                org.assertj.core.api.Assertions.within(1e-6)));
    }

    @Test
    void anUnplayableBallLeavesABunkerOnlyForTwoStrokes() {
        Place inSand = new Place(-18, 152);
        List<Relief.Option> options = Relief.unplayable(lakeHole, inSand, Surface.BUNKER);
        assertThat(options).isNotEmpty().allSatisfy(o -> {
            boolean staysIn = lakeHole.surfaceAt(o.place()) == Surface.BUNKER;
            assertThat(o.penaltyStrokes()).isEqualTo(staysIn ? 1 : 2);
        });
        assertThat(options).anyMatch(o -> o.penaltyStrokes() == 2);
    }
}
