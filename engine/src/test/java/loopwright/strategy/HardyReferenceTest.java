package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Hardy 1945, Cohen 2002, van der Ven 2012: closed forms, and values computed exactly from the published model. */
class HardyReferenceTest {
    /** Values printed to six decimals. */
    private static final double SIX_DIGITS = 0.5e-6 + 1e-12;

    @ParameterizedTest
    @CsvSource({".05, .128750, .15978125", ".10, .22, .2565", ".20, .32, .344"})
    void chancesAgainstAnAllParPlayerAreThePublishedPolynomials(double x, double win, double lose) {
        ScoreDistribution hardy = HardyGame.strokes(4, x, x);
        // 1e-9: exact recursion, the tail is cut at 1e-15
        assertThat(hardy.probabilityAtMost(3)).isCloseTo(3 * x - 9 * x * x + 10 * x * x * x, within(1e-9));
        assertThat(1 - hardy.probabilityAtMost(4))
                .isCloseTo(4 * x - 18 * x * x + 40 * x * x * x - 35 * x * x * x * x, within(1e-9));
        assertThat(hardy.probabilityAtMost(3)).isCloseTo(win, within(1e-9));
        assertThat(1 - hardy.probabilityAtMost(4)).isCloseTo(lose, within(1e-9));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/strategy/hardy-par-4-pmf.csv", numLinesToSkip = 1)
    void distributionOfAParFour(int strokes, double probability) {
        assertThat(HardyGame.strokes(4, 0.1, 0.1).probability(strokes)).isCloseTo(probability, within(SIX_DIGITS));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/strategy/hardy-moments.csv", numLinesToSkip = 1)
    void meanAndVariance(int par, double good, double bad, double mean, double variance) {
        ScoreDistribution hardy = HardyGame.strokes(par, good, bad);
        assertThat(hardy.mean()).isCloseTo(mean, within(SIX_DIGITS));
        assertThat(hardy.variance()).isCloseTo(variance, within(SIX_DIGITS));
    }

    @Test
    void eighteenHolesHaveTheirMeanAndSpread() {
        ScoreDistribution round = HardyGame.strokes(4, 0.1, 0.1).repeated(18);
        assertThat(round.mean()).isCloseTo(73.79973, within(0.5e-5)); // printed to five decimals
        assertThat(round.standardDeviation()).isCloseTo(3.67452, within(0.5e-5));
    }

    @ParameterizedTest
    @CsvSource({"70, .184092", "71, .269774", "72, .370192", "75, .687565", "79, .935917"})
    void totalsOfEighteenHoles(int total, double probability) {
        ScoreDistribution round = HardyGame.strokes(4, 0.1, 0.1).repeated(18);
        assertThat(round.probabilityAtMost(total)).isCloseTo(probability, within(SIX_DIGITS));
    }

    @Test
    void theNormalCurveWouldNotDo() {
        ScoreDistribution round = HardyGame.strokes(4, 0.1, 0.1).repeated(18);
        double worst = 0;
        for (int total = 60; total <= 95; total++) {
            double z = (total + 0.5 - round.mean()) / round.standardDeviation();
            worst = Math.max(worst, Math.abs(round.probabilityAtMost(total) - normal(z)));
        }
        // The source prints "up to 0.0115"; statistics check 5 asks for at least .004.
        assertThat(worst).isBetween(0.0110, 0.0120);
    }

    /** The normal integral by Simpson's rule; 400 steps are good to 1e-9 here. */
    private static double normal(double z) {
        int steps = 400;
        double h = z / steps;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.exp(-0.5 * i * h * i * h);
        }
        return 0.5 + sum * h / 3 / Math.sqrt(2 * Math.PI);
    }
}
