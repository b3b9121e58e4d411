package loopwright.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DescentTest {
    /** Metres: floats of some tens of metres. */
    private static final double ROUNDING = 1e-4;

    private static final float STEEPNESS = Descent.steepness(Math.toRadians(40));
    private static final float BEND = Descent.bend(25, Math.toRadians(40));

    @Test
    void theBallMeetsThePlane() {
        for (float rise : new float[] {-15, -3, 0, 2, 8}) {
            for (float slope : new float[] {-0.3f, -0.05f, 0, 0.1f, 0.4f}) {
                float back = Descent.back(rise, slope, STEEPNESS, BEND);
                double path = STEEPNESS * back - 0.5 * BEND * back * back;
                assertThat(path).as("%s, %s", rise, slope).isCloseTo(rise - slope * back, within(ROUNDING));
            }
        }
    }

    @Test
    void unitsAlongTheTravelAreFree() {
        float yard = 0.9144f;
        float metres = Descent.back(6, 0.05f, STEEPNESS, BEND);
        float yards = Descent.back(6, 0.05f * yard, STEEPNESS * yard, BEND * yard * yard);
        assertThat(yards * yard).isCloseTo(metres, within((float) ROUNDING));
    }

    @Test
    void groundAboveTheTopStopsTheBallThere() {
        float top = STEEPNESS * STEEPNESS / (2 * BEND);
        float back = Descent.back(top + 5, 0, STEEPNESS, BEND);
        assertThat(back).isCloseTo(2 * (top + 5) / STEEPNESS, within((float) ROUNDING));
    }

    @Test
    void groundThatFallsAwayAsFastAsTheBallIsMetAllTheSame() {
        float back = Descent.back(-2, -2 * STEEPNESS, STEEPNESS, 0);
        assertThat(back).isCloseTo(-2 / (STEEPNESS / 2), within((float) ROUNDING));
    }
}
