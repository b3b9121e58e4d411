package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.player.Mishit;
import loopwright.player.ShotPattern;
import org.junit.jupiter.api.Test;

class PatternDensityTest {
    private static final ShotPattern PATTERN = new ShotPattern(
            130, 7, 0.02, 0.05, 0.3, 8, 25, 0.8, List.of(new Mishit(Mishit.Kind.FAT, 0.06, 0.6, 0.1, 0, 0.06, false)));

    @Test
    void holdsEveryBallOnce() {
        double sum = 0;
        double solid = 0;
        double cell = 0.5;
        PatternDensity density = new PatternDensity(PATTERN);
        for (double x = 20; x < 200; x += cell) {
            for (double y = -80; y < 80; y += cell) {
                sum += density.whole(x, y) * cell * cell;
                solid += density.solid(x, y) * cell * cell;
            }
        }
        // Both components lie more than 6 standard deviations inside the grid; a step of a 14th of the smallest
        // standard deviation integrates a smooth bell to better than 1e-6.
        assertThat(sum).isBetween(1 - 1e-5, 1 + 1e-5);
        assertThat(solid).isBetween(0.94 - 1e-5, 0.94 + 1e-5);
    }

    @Test
    void aBallAtTheMeanIsSolidAndAShortOneAMishit() {
        PatternDensity density = new PatternDensity(PATTERN);
        assertThat(density.likelyMishit(130, 2.6)).isFalse();
        assertThat(density.likelyMishit(80, 0)).isTrue();
    }

    @Test
    void theLevelOfAShareHoldsThatShare() {
        double[][] values = {{0.1, 0.2}, {0.3, 0.4}};
        assertThat(PatternDensity.levelHolding(0.7, values, 1)).isEqualTo(0.3);
        assertThat(PatternDensity.levelHolding(0.71, values, 1)).isEqualTo(0.2);
        assertThat(PatternDensity.levelHolding(0.4, values, 1)).isEqualTo(0.4);
    }
}
