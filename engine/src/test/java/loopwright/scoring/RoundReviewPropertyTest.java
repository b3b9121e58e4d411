package loopwright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is written down and however thin: the rows of a review add up. */
class RoundReviewPropertyTest {
    private static final double TELESCOPE = 1e-9; // sums of a hundred numbers below 10
    private final TourBaseline tour = new TourBaseline();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void rowsTelescopeInRoundsOfEveryTier(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20; i++) {
            RoundReview review = RoundReview.of(RandomRounds.anyTier(random), tour);
            assertThat(review.total()).isCloseTo(review.start() - review.end() - review.strokes(), within(TELESCOPE));
            for (HoleGains hole : review.holes()) {
                assertThat(hole.total()).isCloseTo(hole.start() - hole.end() - hole.strokes(), within(TELESCOPE));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void aRoundThatWasHoledOutSumsToTheBaselineLessItsScore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        RoundRecord round = RandomRounds.holedOut(random);
        RoundReview review = RoundReview.of(round, tour);
        double fromTees = round.holes().stream()
                .mapToDouble(
                        h -> tour.strokesToHoleOut(Lie.TEE, h.shots().get(0).toHole()))
                .sum();
        assertThat(review.total()).isCloseTo(fromTees - round.score().orElseThrow(), within(TELESCOPE));
        assertThat(review.leftOut()).isEmpty();
    }
}
