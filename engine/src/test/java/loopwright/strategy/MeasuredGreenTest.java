package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import loopwright.course.Course;
import loopwright.course.GreenSurvey;
import loopwright.course.Hole;
import loopwright.geo.Place;
import loopwright.ground.HeightField;
import loopwright.putting.GreenSurface;
import org.junit.jupiter.api.Test;

/** The green of the par 3 is a circle of 12 m round (0, 150); the hole plays north. */
class MeasuredGreenTest {
    private static final Course COURSE = TestCourses.parThree();

    private static Hole measured(GreenSurvey green) {
        Hole hole = COURSE.holes().get(0);
        return hole.withSurvey(hole.survey().withNotes(hole.survey().notes().withGreen(green)));
    }

    private static GreenSurface surface(GreenSurvey green) {
        return MeasuredGreen.find(COURSE, measured(green)).orElseThrow();
    }

    @Test
    void nothingMeasuredIsNothingKnown() {
        assertThat(MeasuredGreen.find(COURSE, measured(GreenSurvey.NOTHING))).isEmpty();
    }

    @Test
    void spotsOfAPlaneGiveThatPlane() {
        GreenSurvey green = GreenSurvey.NOTHING;
        for (double[] at : new double[][] {{-8, 145}, {8, 144}, {1, 158}, {0, 150}}) {
            double height = 20 + 0.02 * at[0] - 0.01 * at[1];
            green = green.withSpot(new GreenSurvey.Spot(new Place(at[0], at[1]), height));
        }
        // moving least squares give a plane back to the rounding of its equations
        assertThat(surface(green).slopeEast(2, 151)).isCloseTo(0.02, within(1e-9));
        assertThat(surface(green).slopeNorth(2, 151)).isCloseTo(-0.01, within(1e-9));
    }

    @Test
    void spotsOnOneLineAreNotEnough() {
        GreenSurvey green = GreenSurvey.NOTHING;
        for (int i = 0; i < 4; i++) {
            green = green.withSpot(new GreenSurvey.Spot(new Place(i, 150 + i), i));
        }
        assertThat(MeasuredGreen.find(COURSE, measured(green))).isEmpty();
    }

    @Test
    void anArrowIsAPlane() {
        GreenSurface surface = surface(
                GreenSurvey.NOTHING.withArrow(new GreenSurvey.Arrow(new Place(0, 150), 0.03, Math.toRadians(90))));
        assertThat(surface.slopeEast(5, 145)).isCloseTo(-0.03, within(1e-12));
        assertThat(surface.slopeNorth(5, 145)).isCloseTo(0, within(1e-12));
    }

    @Test
    void aSheetOfNineSpotsCoversTheGreenFrontRowFirst() {
        double[] slopes = new double[9];
        Arrays.fill(slopes, 0.02);
        slopes[0] = 0.05;
        GreenSurvey green = GreenSurvey.NOTHING.withNineSpots(COURSE.holes().get(0), slopes, new double[9]);
        List<GreenSurvey.Arrow> arrows = green.arrows();
        // thirds of a circle 24 m across: the outer rows lie 8 m from the middle one
        assertThat(arrows.get(0).place().x()).isCloseTo(-8, within(0.1));
        assertThat(arrows.get(0).place().y()).isCloseTo(142, within(0.1));
        assertThat(arrows.get(2).place().x()).isCloseTo(8, within(0.1));
        assertThat(arrows.get(6).place().y()).isCloseTo(158, within(0.1));
        assertThat(surface(green).slopeNorth(8, 158)).isCloseTo(-0.02, within(0.001));
    }

    @Test
    void heightsShowAGreenOnlyWhereTheyAreFineEnough() {
        assertThat(MeasuredGreen.find(
                        COURSE.withHeights(tilted(1)), COURSE.holes().get(0)))
                .get()
                .satisfies(s -> assertThat(s.slopeEast(0, 150)).isCloseTo(0.02, within(1e-6)));
        assertThat(MeasuredGreen.find(
                        COURSE.withHeights(tilted(30)), COURSE.holes().get(0)))
                .isEmpty();
    }

    /** Rises by 2 % to the east; nodes this far apart. */
    private static HeightField tilted(double metres) {
        int n = (int) (400 / metres) + 2;
        float[] heights = new float[n * n];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = (float) (0.02 * metres * (i % n));
        }
        return new HeightField(
                n, n, heights, new HeightField.Grid(200 / metres, 1 / metres, 0, 100 / metres, 0, 1 / metres));
    }
}
