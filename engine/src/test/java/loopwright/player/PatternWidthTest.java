package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PatternWidthTest {

    @Test
    void narrowPatternWithoutMishitsIsTheNormalWidth() {
        ShotPattern p = new ShotPattern(100, 1e-3, 0.02, 0.01, 0, 0, 20, 0.7, List.of());

        // 1.28155 standard deviations either side; sin is linear to 1e-4 at this size
        assertThat(PatternWidth.metres(p, 0.8)).isCloseTo(2 * 1.28155, within(0.02));
        assertThat(PatternWidth.sideMetres(p, 0.5)).isCloseTo(2.0, within(0.02));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.8, 0.95})
    void agreesWithDraws(double share) {
        ShotPattern p = PlayerPrior.of(100, Player.Hand.RIGHT).pattern(ClubTable.DRIVER, Swing.FULL);
        double[] sides = SyntheticShots.sides(p, 400_000, new SplittableRandom(5));
        Arrays.sort(sides);
        double drawn = sides[(int) ((1 + share) / 2 * sides.length)] - sides[(int) ((1 - share) / 2 * sides.length)];

        // standard error of a width from 400,000 draws is under 0.3 %; the quadrature adds 0.2 %
        assertThat(PatternWidth.metres(p, share)).isCloseTo(drawn, within(0.012 * drawn));
    }
}
