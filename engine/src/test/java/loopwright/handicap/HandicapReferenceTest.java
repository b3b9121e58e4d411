package loopwright.handicap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of the governing bodies and of handicap pages; each names where it was read. */
class HandicapReferenceTest {
    private static final TeeRating STANDARD_NINE = new TeeRating(33.7, 113);

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/handicap/rounding.csv", numLinesToSkip = 1)
    void differentialsAreRoundedUpwardFromAHalf(double exact, double rounded) {
        assertThat(Rounding.toTenth(exact)).isEqualTo(rounded);
    }

    /** R&A, Rules of Handicapping, interpretations: examples with 3 and 6 scores. The first list is the example. */
    @ParameterizedTest
    @CsvSource({"15.3 15.2 16.6, 13.2", "40.7 42.4 36.1, 34.1"})
    void anIndexFromThreeScores(String differentials, double index) {
        List<Double> values =
                Stream.of(differentials.split(" ")).map(Double::valueOf).toList();
        assertThat(Averaging.of(values).index()).isEqualTo(index);
    }

    /** USGA local guidance R5b (11.6 and 6.5), USGA questions and answers (13.4 and 10.0); the others by the rule. */
    @ParameterizedTest
    @CsvSource({
        "11.6, 6.5, 10.6",
        "13.4, 10.0, 13.2",
        "13.0, 10.0, 13.0",
        "13.1, 10.0, 13.1",
        "17.0, 10.0, 15.0",
        "17.1, 10.0, 15.0",
        "25.0, 10.0, 15.0",
        "9.0, 10.0, 9.0"
    })
    void softAndHardCap(double calculated, double low, double index) {
        assertThat(Caps.of(calculated, low).index()).isEqualTo(index);
    }

    /** A club's handicap page: 94 on a course of 73.0 and slope 125. */
    @Test
    void aDifferentialOfEighteenHoles() {
        TeeRating rating = new TeeRating(73.0, 125);
        assertThat(ScoreDifferential.eighteenExact(94, rating, 0)).isCloseTo(18.984, within(1e-12));
        assertThat(ScoreDifferential.eighteen(94, rating, 0)).isEqualTo(19.0);
    }

    /**
     * A handicap page's two examples (miamivalleygolf.org, allocation formula): slope 129, rating 71.1, par 72,
     * allowance 85 %. Printed cut off after three decimals, not rounded.
     */
    @ParameterizedTest
    @CsvSource({"7.9, 8.118, 6.900, 7", "27.7, 30.722, 26.113, 26"})
    void courseAndPlayingHandicapKeepFullPrecisionUntilTheEnd(
            double index, double course, double timesAllowance, int playing) {
        CourseHandicap handicap = CourseHandicap.eighteen(index, new TeeRating(71.1, 129), 72);
        assertThat(Math.floor(handicap.exact() * 1000) / 1000).isEqualTo(course);
        assertThat(Math.floor(handicap.exact() * 0.85 * 1000) / 1000).isEqualTo(timesAllowance);
        assertThat(handicap.playing(0.85)).isEqualTo(playing);
    }

    /** Test of a public program, not official: 45 on a nine of 33.7 and slope 113, index 10.0. */
    @Test
    void aDifferentialOfNineHoles() {
        assertThat(ScoreDifferential.ninePart(45, STANDARD_NINE, 0)).isCloseTo(11.3, within(1e-12));
        assertThat(ScoreDifferential.expectedNine(10.0)).isCloseTo(6.397, within(1e-12));
        assertThat(ScoreDifferential.nine(45, STANDARD_NINE, 0, 10.0)).isEqualTo(17.7);
    }

    /** A public table of expected nine-hole differentials; the Rules publish no formula, so a tenth is allowed. */
    @ParameterizedTest
    @CsvSource({"30, 16.8", "36, 20.0", "54, 29.3"})
    void theExpectedDifferentialOfNineHoles(double index, double table) {
        assertThat(ScoreDifferential.expectedNine(index)).isCloseTo(table, within(0.1));
    }

    /** Golf association's questions and answers: 7.0 to 9.9 below takes 1, 10.0 or more takes 2. */
    @ParameterizedTest
    @CsvSource({"6.9, 0", "7.0, -1", "9.9, -1", "10.0, -2", "14.2, -2", "-3.0, 0"})
    void exceptionalScores(double below, double adjustment) {
        for (double index = -2.0; index < 54; index += 0.7) {
            assertThat(ExceptionalScore.adjustment(index - below, index)).isEqualTo(adjustment);
        }
    }
}
