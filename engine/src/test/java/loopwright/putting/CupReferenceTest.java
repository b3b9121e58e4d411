package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holmes 1991 as fitted in Penner 2002: v(b) = 1.63 (1 - (b / R)^2). */
class CupReferenceTest {
    @ParameterizedTest
    @CsvSource({"0, 1.630", "0.01, 1.574", "0.02, 1.406", "0.03, 1.127", "0.04, 0.736", "0.05, 0.233"})
    void captureSpeedByOffset(double offset, double speed) {
        assertThat(Cup.maxSpeedMetresPerSecond(offset)).isCloseTo(speed, within(0.0006)); // three printed digits
    }

    @Test
    void halfTheHoleIsLeftAtEightTenthsOfAMetreASecond() {
        assertThat(Cup.widestOffsetMetres(0.8)).isCloseTo(0.0385, within(0.00005)); // 38.5 mm as printed
    }

    @Test
    void theCentreHoldsMoreThanFreeFall() {
        // free fall over the hole: (2 R - r) sqrt(g / (2 r)) = 1.314 m/s
        assertThat(Cup.maxSpeedMetresPerSecond(0)).isGreaterThan(1.314);
    }

    /** The same limits met by balls that are rolled: just inside drops, just outside rolls on. */
    @ParameterizedTest
    @CsvSource({"0, 1.630", "0.01, 1.574", "0.02, 1.406", "0.03, 1.127", "0.04, 0.736", "0.05, 0.233"})
    void rolledBallsDropUpToTheCaptureSpeed(double offset, double rimSpeed) {
        assertThat(drops(offset, rimSpeed * 0.99)).isTrue();
        assertThat(drops(offset, rimSpeed * 1.01)).isFalse(); // printed digits and the step error are 0.5 % at most
    }

    private static boolean drops(double offset, double rimSpeed) {
        double a = Anchors.TEN_FEET.deceleration();
        double toRim = 2 - Cup.halfChordMetres(offset);
        RollWorkspace ball = new RollWorkspace(0, 2);
        new GreenRoll(PlaneGreen.LEVEL, Anchors.TEN_FEET)
                .roll(offset, 0, 0, Math.sqrt(rimSpeed * rimSpeed + 2 * a * toRim), ball);
        return Cup.drops(ball.speedSquared, ball.deceleration, Math.abs(ball.offset));
    }
}
