package loopwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class SpreadSequenceTest {
    @Test
    void normalQuantilesAreThoseOfTheInverseErrorFunction() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 20_000; i++) {
            double u = i % 2 == 0 ? random.nextDouble() : Math.pow(10, -8 * random.nextDouble());
            // 2 u - 1 has lost digits near 0: one unit in the last place of 1 is 1e-16 / u of the quantile's slope
            double lost = 1e-14 + 2e-16 / u;
            assertThat(SpreadSequence.normal(u)).isCloseTo(Math.sqrt(2) * Erf.erfInv(2 * u - 1), within(lost));
        }
    }

    @Test
    void publishedQuantiles() {
        // Wichura 1988: his test values, at 0.25, 0.001 and 1e-20; ours is held at 1e-9
        assertThat(SpreadSequence.normal(0.25)).isCloseTo(-0.6744897501960817, within(1e-15));
        assertThat(SpreadSequence.normal(0.001)).isCloseTo(-3.090232306167814, within(2e-15));
        assertThat(SpreadSequence.normal(1e-20)).isEqualTo(SpreadSequence.normal(1e-9));
    }

    @Test
    void meansOfSmoothFunctionsComeFasterThanByChance() {
        SpreadSequence points = new SpreadSequence(7, new SplittableRandom(3));
        double[] u = new double[7];
        double sum = 0;
        int n = 2048;
        for (int i = 0; i < n; i++) {
            points.next(u);
            for (double x : u) {
                sum += SpreadSequence.normal(x);
            }
        }
        // seven independent draws: a deviation of sqrt(7 / n) = 0.058 of the mean; a fifth of it here
        assertThat(Math.abs(sum / n)).isLessThan(0.012);
    }
}
