package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.geo.Box;
import loopwright.geo.Place;
import loopwright.ground.HeightField;
import org.junit.jupiter.api.Test;

class GroundHeightsTest {
    private static final int PLACES = 2000;
    private static final Box BOX = new Box(-90, -60, 90, 230);

    @Test
    void aTiltedPlaneIsThatPlane() {
        HoleRaster raster = raster();
        GroundHeights heights = new GroundHeights(raster, field((x, y) -> 300 + 0.05 * x - 0.08 * y));
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < PLACES; i++) {
            float column = (float) (random.nextDouble() * raster.columns);
            float row = (float) (random.nextDouble() * raster.rows);
            Place place = raster.place(column, row);
            // floats of 300 m, and planes told from the frame's corner
            assertThat(heights.metresAt(column, row))
                    .isCloseTo((float) (300 + 0.05 * place.x() - 0.08 * place.y()), within(1e-3f));
            int plane = heights.planeAt(column, row);
            assertThat(heights.slope(plane, 0.6f, 0.8f) / HoleRaster.CELL_METRES)
                    .isCloseTo(0.6 * 0.05 - 0.8 * 0.08, within(1e-4));
        }
    }

    @Test
    void rollingGroundIsFollowedToWhatItBendsWithinASquare() {
        HoleRaster raster = raster();
        double bend = 0.01; // per metre: two metres of height in waves of 90 m
        DoubleBinaryOperator waves = (x, y) -> 2 * Math.sin(x * Math.sqrt(bend / 2));
        GroundHeights heights = new GroundHeights(raster, field(waves));
        SplittableRandom random = new SplittableRandom(2);
        double half = 4 * HoleRaster.CELL_METRES;
        for (int i = 0; i < PLACES; i++) {
            float column = (float) (random.nextDouble() * raster.columns);
            float row = (float) (random.nextDouble() * raster.rows);
            Place place = raster.place(column, row);
            // from the middle to the edge a parabola leaves its chord by no more, nor the field's nodes each other
            assertThat((double) heights.metresAt(column, row))
                    .isCloseTo(waves.applyAsDouble(place.x(), place.y()), within(bend * half * half / 2));
        }
    }

    @Test
    void beyondTheRasterTheOutermostPlaneHolds() {
        HoleRaster raster = raster();
        GroundHeights heights = new GroundHeights(raster, field((x, y) -> 0.1 * x));
        assertThat(heights.planeAt(-5, -5)).isEqualTo(heights.plane(0, 0));
        assertThat(heights.planeAt(raster.columns + 9f, raster.rows + 9f))
                .isEqualTo(heights.plane(raster.columns - 1, raster.rows - 1));
    }

    private static HoleRaster raster() {
        Course course = TestCourses.parThree();
        return new HoleRaster(new CourseMap(course, course.holes().get(0)), BOX);
    }

    private static HeightField field(DoubleBinaryOperator height) {
        return TestCourses.heights(new Place(-200, -150), 200, 2, height);
    }
}
