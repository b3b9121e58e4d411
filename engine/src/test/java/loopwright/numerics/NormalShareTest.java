package loopwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class NormalShareTest {

    @Test
    void agreesWithTheErrorFunction() {
        for (double z = -10; z <= 10; z += 0.037) {
            // the error the source states
            assertThat(NormalShare.below(z)).isCloseTo(Erf.erfc(-z / Math.sqrt(2)) / 2, within(7.5e-8));
        }
    }
}
