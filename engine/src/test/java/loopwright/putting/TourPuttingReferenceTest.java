package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Broadie's closed form (Interfaces 2012) against the averages he printed in "Putts Gained" (2011). */
class TourPuttingReferenceTest {
    private static final double FOOT = 0.3048;
    private final TourPutting tour = new TourPutting();

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/putting/broadie-2011-average-putts.csv", numLinesToSkip = 3)
    void averagesRoundToThePrintedOnes(double feet, double putts) {
        // two printed digits
        assertThat(tour.expectedPutts(feet * FOOT)).isCloseTo(putts, within(0.005));
    }

    @Test
    void theThreeAnchorsOfThePaperFollow() {
        // 8 ft, 33 ft and 40 ft in the text; the decimals were computed from the formula elsewhere
        assertThat(Anchors.halfHoledFeet(tour)).isCloseTo(8.06, within(0.05));
        assertThat(Anchors.twoPuttFeet(tour)).isCloseTo(32.76, within(0.1));
        assertThat(Anchors.threePuttFeet(tour, 0.10)).isCloseTo(39.95, within(0.1));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/putting/broadie-2011-average-putts.csv", numLinesToSkip = 3)
    void oddsSumToOne(double feet, double ignored) {
        double sum = 0;
        for (int k = 1; k <= 4; k++) {
            sum += tour.probability(feet * FOOT, k);
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
    }
}
