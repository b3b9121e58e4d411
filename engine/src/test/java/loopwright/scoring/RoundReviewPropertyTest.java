package loopwright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import loopwright.units.Distance;
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
            RoundReview review = RoundReview.of(randomRound(random, true), tour);
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
        RoundRecord round = randomRound(random, false);
        RoundReview review = RoundReview.of(round, tour);
        double fromTees = round.holes().stream()
                .mapToDouble(
                        h -> tour.strokesToHoleOut(Lie.TEE, h.shots().get(0).toHole()))
                .sum();
        assertThat(review.total()).isCloseTo(fromTees - round.score().orElseThrow(), within(TELESCOPE));
        assertThat(review.leftOut()).isEmpty();
    }

    private static RoundRecord randomRound(SplittableRandom random, boolean anyTier) {
        List<HoleRecord> holes = new ArrayList<>();
        for (int number = 1; number <= 18; number++) {
            holes.add(
                    anyTier && random.nextInt(3) == 0
                            ? randomCounts(random, number)
                            : randomShots(random, number, anyTier));
        }
        return Records.round(holes);
    }

    private static HoleRecord randomCounts(SplittableRandom random, int number) {
        int putts = random.nextInt(4);
        HoleCounts counts =
                Records.counts(random.nextInt(2), random.nextInt(2), putts > 0 ? random.nextDouble(1, 80) : 0, putts);
        double length = random.nextInt(3) == 0 ? 0 : random.nextDouble(90, 600);
        return Records.ofCounts(number, random.nextInt(3, 6), length, putts + random.nextInt(1, 6), counts);
    }

    private static HoleRecord randomShots(SplittableRandom random, int number, boolean anyEnd) {
        List<ShotRecord> shots = new ArrayList<>();
        shots.add(Records.shot(Lie.TEE, random.nextDouble(90, 600), random.nextInt(2)));
        for (int n = random.nextInt(8); n > 0; n--) {
            Lie lie = Lie.values()[random.nextInt(Lie.values().length)];
            shots.add(Records.shot(lie, random.nextDouble(0.3, 400), random.nextInt(8) / 7));
        }
        HoleEnd end = anyEnd ? HoleEnd.values()[random.nextInt(3)] : HoleEnd.HOLED;
        Optional<Stroke> conceded = end == HoleEnd.CONCEDED
                ? Optional.of(new Stroke(Lie.GREEN, Distance.ofFeet(random.nextDouble(1, 4)), 0))
                : Optional.empty();
        return Records.ofShots(number, random.nextInt(3, 6), end, conceded, shots);
    }
}
