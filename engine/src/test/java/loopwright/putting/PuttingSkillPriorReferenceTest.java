package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Anchors: Broadie 2012, Interfaces 42(2), section 3.3 (tour: half holed at 8 ft, two putts at 33 ft; the closed form gives
 * 8.06 and 32.76) and Broadie 2014, Every Shot Counts, as transcribed (90-golfer: 5 ft and 19 ft).
 */
class PuttingSkillPriorReferenceTest {
    @Test
    void theTourHolesHalfAtEightFeetAndTwoPuttsAtThirtyThree() {
        LevelGreenOdds tour = new LevelGreenOdds(PuttingSkillPrior.ofLevel(71), Anchors.TEN_FEET);
        // The constants are written to three digits; one unit of the last moves these by up to 0.01 and 0.1 ft.
        assertThat(Anchors.halfHoledFeet(tour)).isCloseTo(8.06, within(0.05));
        assertThat(Anchors.twoPuttFeet(tour)).isCloseTo(32.76, within(0.1));
    }

    @Test
    void aNinetyGolferHolesHalfAtFiveFeetAndTwoPuttsAtNineteen() {
        LevelGreenOdds ninety = new LevelGreenOdds(PuttingSkillPrior.ofLevel(90), Anchors.TEN_FEET);
        assertThat(Anchors.halfHoledFeet(ninety)).isCloseTo(5, within(0.05));
        assertThat(Anchors.twoPuttFeet(ninety)).isCloseTo(19, within(0.1));
    }

    @Test
    void betterLevelsPuttBetterEverywhere() {
        LevelGreenOdds better = new LevelGreenOdds(PuttingSkillPrior.ofLevel(71), Anchors.TEN_FEET);
        for (double level : new double[] {80, 90, 100, 115, 130}) {
            LevelGreenOdds worse = new LevelGreenOdds(PuttingSkillPrior.ofLevel(level), Anchors.TEN_FEET);
            for (double feet = 2; feet <= 90; feet += 1) {
                assertThat(worse.expectedPutts(feet * Anchors.FOOT))
                        .as("level %s at %s ft", level, feet)
                        .isGreaterThan(better.expectedPutts(feet * Anchors.FOOT));
            }
            better = worse;
        }
    }
}
