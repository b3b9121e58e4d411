package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** What the level model predicts away from the two anchors of each level it was set by. */
class LevelGreenOddsReferenceTest {
    private static final LevelGreenOdds TOUR = odds(71);
    private static final LevelGreenOdds SCRATCH = odds(76);
    private static final LevelGreenOdds EIGHTY = odds(80);
    private static final LevelGreenOdds NINETY = odds(90);

    private static LevelGreenOdds odds(double level) {
        return new LevelGreenOdds(PuttingSkillPrior.ofLevel(level), Anchors.TEN_FEET);
    }

    /** Broadie, "Putts Gained", 2011, Fig. 1. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/putting/broadie-2011-average-putts.csv", numLinesToSkip = 3)
    void tourAveragesAreFollowed(double feet, double putts) {
        // real greens slope and putts of 60 ft are read, not only struck: a twentieth of a stroke is a fifth of what
        // parts the tour from a 90-golfer at 30 ft
        assertThat(TOUR.expectedPutts(feet * Anchors.FOOT)).isCloseTo(putts, within(0.05));
    }

    /** Broadie as quoted: tour three-putts 2 % at 20 ft, 6 % at 32 ft, 10 % at 40 ft. */
    @ParameterizedTest
    @CsvSource({"20, 0.02", "32, 0.06", "40, 0.10"})
    void tourThreePutts(double feet, double share) {
        assertThat(TOUR.probability(feet * Anchors.FOOT, 3)).isCloseTo(share, within(0.015)); // printed to whole points
    }

    /**
     * 8 ft holed: tour 50 %, scratch 41 %, 90-golfer 27 % (Broadie 2014 as quoted). A scratch player's average score is
     * taken as 76 (from memory: some four above the rating, which is the mean of the better half).
     */
    @Test
    void eightFeetByLevel() {
        // four points: the spread of the quotations
        assertThat(TOUR.probability(8 * Anchors.FOOT, 1)).isCloseTo(0.50, within(0.04));
        assertThat(SCRATCH.probability(8 * Anchors.FOOT, 1)).isCloseTo(0.41, within(0.04));
        assertThat(NINETY.probability(8 * Anchors.FOOT, 1)).isCloseTo(0.27, within(0.04));
    }

    /** Hoadley 1994: aim past the hole by about 2 ft times the chance to make it. */
    @Test
    void overshootIsWithinAFootOfHoadleysRule() {
        for (LevelGreenOdds odds : new LevelGreenOdds[] {TOUR, EIGHTY, NINETY}) {
            for (double feet = 5; feet <= 15; feet++) {
                double past = odds.bestOvershootMetres(feet * Anchors.FOOT) / Anchors.FOOT;
                double hoadley = 2 * odds.probability(feet * Anchors.FOOT, 1);
                assertThat(past).as("%s ft", feet).isCloseTo(hoadley, within(1.0));
            }
        }
    }

    /** Broadie's reply of 2014: an 80-golfer lies pretty much in the middle of 70- and 90-golfers. */
    @Test
    void anEightyGolferIsInTheMiddle() {
        for (double feet : new double[] {5, 10, 20, 33}) {
            double middle = (TOUR.expectedPutts(feet * Anchors.FOOT) + NINETY.expectedPutts(feet * Anchors.FOOT)) / 2;
            assertThat(EIGHTY.expectedPutts(feet * Anchors.FOOT))
                    .isCloseTo(middle, within(0.03)); // "pretty much": a tenth of what parts the two at most
        }
    }
}
