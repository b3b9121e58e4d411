package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import loopwright.putting.SlopeArrows.Arrow;
import loopwright.putting.SpotHeights.Spot;
import org.junit.jupiter.api.Test;

class GreenSurfaceTest {
    private static final double ROUNDING = 1e-9;

    private static void assertPlane(GreenSurface surface, double east, double north) {
        for (double x = -12; x < 12; x += 3.7) {
            for (double y = -12; y < 12; y += 3.7) {
                assertThat(surface.slopeEast(x, y)).isCloseTo(east, within(ROUNDING));
                assertThat(surface.slopeNorth(x, y)).isCloseTo(north, within(ROUNDING));
            }
        }
    }

    @Test
    void heightsOfAPlaneGiveThePlane() {
        double[][] heights = new double[7][9];
        for (int r = 0; r < 7; r++) {
            for (int c = 0; c < 9; c++) {
                heights[r][c] = 100 + 0.02 * (c * 2.0 - 8) - 0.01 * (r * 2.0 - 6);
            }
        }
        assertPlane(SlopeGrid.ofHeights(-8, -6, 2, heights), 0.02, -0.01);
    }

    @Test
    void spotsOfAPlaneGiveThePlane() {
        List<Spot> spots = new ArrayList<>();
        for (double[] p : new double[][] {{-5, -4}, {6, -3}, {0, 5}, {3, 1}, {-4, 3}}) {
            spots.add(new Spot(p[0], p[1], 2 + 0.015 * p[0] + 0.03 * p[1]));
        }
        assertPlane(SpotHeights.of(spots), 0.015, 0.03);
        assertPlane(SpotHeights.of(spots.subList(0, 3)), 0.015, 0.03);
    }

    @Test
    void aRidgeOfSpotsFallsToBothSides() {
        List<Spot> spots = new ArrayList<>();
        for (double x = -6; x <= 6; x += 2) {
            for (double y = -6; y <= 6; y += 2) {
                spots.add(new Spot(x, y, -0.02 * Math.abs(x)));
            }
        }
        GreenSurface ridge = SpotHeights.of(spots);
        // a plane fitted over neighbours two metres apart softens the ridge within a few metres of it
        assertThat(ridge.slopeEast(5, 0)).isCloseTo(-0.02, within(0.004));
        assertThat(ridge.slopeEast(-5, 0)).isCloseTo(0.02, within(0.004));
        assertThat(ridge.slopeEast(0, 0)).isCloseTo(0, within(1e-3));
    }

    @Test
    void spotsOnOneLineAreRefused() {
        List<Spot> line = List.of(new Spot(0, 0, 0), new Spot(1, 1, 0.1), new Spot(2, 2, 0.2));
        assertThatThrownBy(() -> SpotHeights.of(line)).hasMessageContaining("one line");
    }

    @Test
    void oneArrowIsAPlaneThatFallsItsWay() {
        // falls to the east: the slope towards east is negative
        assertPlane(SlopeArrows.of(List.of(new Arrow(1, 1, 0.03, Math.PI / 2))), -0.03, 0);
    }

    @Test
    void nineSpotsReadFrontToBackAndLeftToRight() {
        double[] slopes = {0.04, 0, 0, 0, 0, 0, 0, 0, 0.02};
        double[] south = new double[9];
        java.util.Arrays.fill(south, Math.PI);
        GreenSurface sheet = SlopeArrows.nineSpots(0, 0, 0, 18, 24, slopes, south);
        // front left falls to the front (south) steeply, back right gently, the rest not
        assertThat(sheet.slopeNorth(-6, -8)).isGreaterThan(0.035);
        assertThat(sheet.slopeNorth(6, 8)).isBetween(0.015, 0.025);
        assertThat(sheet.slopeNorth(0, 0)).isLessThan(0.005);
    }

    @Test
    void aHeightGridOfAPlanePuttsLikeThePlane() {
        double[][] heights = new double[21][21];
        for (int r = 0; r < 21; r++) {
            for (int c = 0; c < 21; c++) {
                heights[r][c] = 0.02 * c;
            }
        }
        PuttingSkill skill = PuttingSkillPrior.ofLevel(85);
        PuttAdvice grid = new SlopedGreenOdds(SlopeGrid.ofHeights(-10, -10, 1, heights), Anchors.TEN_FEET, skill, 0, 0)
                .advice(0, -4);
        PuttAdvice plane = new SlopedGreenOdds(new PlaneGreen(0.02, 0), Anchors.TEN_FEET, skill, 0, 0).advice(0, -4);
        assertThat(grid.expectedPutts()).isCloseTo(plane.expectedPutts(), within(1e-6)); // rounding of the gradient
        assertThat(grid.best().startRadians()).isCloseTo(plane.best().startRadians(), within(1e-6));
    }
}
