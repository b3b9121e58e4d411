package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The table against {@link LevelPutt} played with fresh draws, and the laws every table must keep. */
class LevelGreenOddsPropertyTest {
    private static final int GAMES = 40_000;
    private static final LevelGreenOdds ODDS = new LevelGreenOdds(PuttingSkillPrior.ofLevel(90), Anchors.TEN_FEET);

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 1.0, 1.52, 3.3, 7.7, 19.4})
    void puttingOutWithFreshDrawsTakesTheExpectedPutts(double metres) {
        RandomGenerator random = new SplittableRandom(20260101L + Math.round(100 * metres));
        double sum = 0;
        double squares = 0;
        int[] counts = new int[LevelGreenOdds.MOST_PUTTS + 1];
        for (int i = 0; i < GAMES; i++) {
            int putts = puttOut(metres, random);
            sum += putts;
            squares += putts * putts;
            counts[Math.min(putts, LevelGreenOdds.MOST_PUTTS)]++;
        }
        double mean = sum / GAMES;
        double error = Math.sqrt((squares / GAMES - mean * mean) / GAMES);
        // four standard errors of the played mean plus 0.001 for linear interpolation between nodes 5 cm or 4 % apart
        assertThat(ODDS.expectedPutts(metres)).isCloseTo(mean, within(4 * error + 0.001));
        for (int k = 1; k <= 3; k++) {
            double p = ODDS.probability(metres, k);
            double allowed = 4 * Math.sqrt(p * (1 - p) / GAMES) + 0.001;
            assertThat(counts[k] / (double) GAMES).as("%s putts", k).isCloseTo(p, within(allowed));
        }
    }

    private static int puttOut(double metres, RandomGenerator random) {
        double left = metres;
        for (int putts = 1; ; putts++) {
            left = ODDS.putt().play(left, ODDS.bestOvershootMetres(left), random.nextGaussian(), random.nextGaussian());
            if (left == 0) {
                return putts;
            }
        }
    }

    @Test
    void fromInsideTheHoleOnePuttIsCertain() {
        assertThat(ODDS.expectedPutts(0)).isEqualTo(1);
        assertThat(ODDS.probability(0, 1)).isEqualTo(1);
    }

    @Test
    void expectedPuttsNeverFallWithDistance() {
        for (double metres = 0; metres < 70; metres += 0.013) {
            assertThat(ODDS.expectedPutts(metres + 0.013))
                    .isGreaterThanOrEqualTo(ODDS.expectedPutts(metres) - 1e-12); // rounding of the interpolation
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 3, 12.34, 40, 80})
    void theOddsSumToOneAndGiveTheMean(double metres) {
        double sum = 0;
        double mean = 0;
        for (int k = 1; k <= LevelGreenOdds.MOST_PUTTS; k++) {
            sum += ODDS.probability(metres, k);
            mean += k * ODDS.probability(metres, k);
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        // more than eight putts are folded into eight, which costs less than this from 80 m
        assertThat(mean).isCloseTo(ODDS.expectedPutts(metres), within(2e-3));
    }

    @Test
    void everyPaceAccountsForAllItsBalls() {
        double[] ones = ODDS.nodes();
        java.util.Arrays.fill(ones, 1);
        for (int node = 0; node < ones.length; node++) {
            for (LevelPace pace : ODDS.paces(node)) {
                assertThat(pace.holed() + pace.expectedOverLeaves(ones)).isCloseTo(1, within(1e-12));
            }
        }
    }

    @Test
    void farPuttsOfferAtLeastThreePaces() {
        for (int node = ODDS.nearestNode(0.2); node < ODDS.nodes().length; node++) {
            assertThat(ODDS.paces(node)).hasSizeGreaterThanOrEqualTo(3);
        }
    }

    @Test
    void sameInputsGiveTheSameTable() {
        LevelGreenOdds again = new LevelGreenOdds(PuttingSkillPrior.ofLevel(90), Anchors.TEN_FEET);
        for (double metres = 0; metres < 60; metres += 0.37) {
            assertThat(again.expectedPutts(metres)).isEqualTo(ODDS.expectedPutts(metres));
        }
    }
}
