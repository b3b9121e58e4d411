package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NormalTableTest {
    @Test
    void agreesWithTheLibrary() {
        for (double z = -9; z < 9; z += 0.00137) {
            // cubic Hermite error h^4 / 384 max |f''''| = (1/32)^4 / 384 * 0.55
            assertThat(NormalTable.below(z)).isCloseTo(NormalLaw.below(z), within(1e-8));
        }
    }

    @Test
    void farOutItIsZeroAndOne() {
        assertThat(NormalTable.below(-50)).isZero();
        assertThat(NormalTable.below(50)).isEqualTo(1);
    }
}
