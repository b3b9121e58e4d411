package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import loopwright.strategy.ScoreDistribution;
import org.junit.jupiter.api.Test;

class CalibrationTest {
    /** Mean 90, standard deviation 4: each of 86 and 94 half the time. */
    private static final ScoreDistribution MODEL = ScoreDistribution.of(86, 0.5, 0, 0, 0, 0, 0, 0, 0, 0.5);

    @Test
    void withoutScoresNothingIsClaimed() {
        Calibration c = Calibration.of(List.of(), MODEL);
        assertThat(c.verdict()).isEqualTo(Calibration.Verdict.NO_SCORES);
        assertThat(c.mark()).startsWith("not yet calibrated");
        assertThat(Calibration.NONE.isCalibrated()).isFalse();
    }

    @Test
    void theIntervalIsThatOfAMean() {
        List<Double> scores =
                IntStream.range(0, 36).mapToObj(i -> i % 2 == 0 ? 87.0 : 95.0).toList();
        Calibration c = Calibration.of(scores, MODEL);
        // 36 deviations of 4 and five rounds' worth of variance 16 over 40 degrees of freedom
        double half = 1.6449 * Math.sqrt((36 * 16 + 5 * 16) / 40.0 / 36);
        assertThat(c.gap()).isCloseTo(1, within(1e-12));
        assertThat(c.gapHigh() - c.gapLow()).isCloseTo(2 * half, within(1e-9));
    }

    @Test
    void manyScoresNearTheModelCalibrateIt() {
        Calibration c = Calibration.of(Collections.nCopies(30, 90.3), MODEL);
        assertThat(c.isCalibrated()).isTrue();
        assertThat(c.mark()).startsWith("calibrated on 30 real scores (gap +0.3");
    }

    @Test
    void aGapIsNamedWithItsSideAndSize() {
        Calibration c = Calibration.of(Collections.nCopies(10, 95.0), MODEL);
        assertThat(c.verdict()).isEqualTo(Calibration.Verdict.GAP);
        assertThat(c.mark()).contains("10 real scores run 5.0 strokes higher than modelled");
        assertThat(Calibration.of(Collections.nCopies(10, 84.0), MODEL).mark()).contains("6.0 strokes lower");
    }

    @Test
    void threeScoresNearTheModelAreTooFew() {
        Calibration c = Calibration.of(List.of(88.0, 90.0, 93.0), MODEL);
        assertThat(c.verdict()).isEqualTo(Calibration.Verdict.TOO_FEW);
    }

    @Test
    void theIntervalHoldsTheTrueGapNineTimesInTen() {
        SplittableRandom random = new SplittableRandom(7);
        int held = 0;
        int studies = 4000;
        for (int i = 0; i < studies; i++) {
            List<Double> scores = IntStream.range(0, 6)
                    .mapToObj(k -> 92 + 4 * random.nextGaussian())
                    .toList();
            Calibration c = Calibration.of(scores, MODEL);
            held += c.gapLow() <= 2 && 2 <= c.gapHigh() ? 1 : 0;
        }
        // Student's law with ten degrees of freedom: 0.869 inside 1.645; the standard error of 4,000 studies is 0.005
        assertThat((double) held / studies).isBetween(0.85, 0.92);
    }
}
