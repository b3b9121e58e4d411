package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScoreDistributionTest {
    private static final double ULPS = 1e-15; // a handful of additions of numbers below 1

    @Test
    void twoCoinsAddUpToOneTwoOne() {
        ScoreDistribution coin = ScoreDistribution.of(3, 0.5, 0.5);
        assertThat(coin.plus(coin)).isEqualTo(ScoreDistribution.of(6, 0.25, 0.5, 0.25));
    }

    @Test
    void momentsOfAHandSolvedCase() {
        ScoreDistribution hole = ScoreDistribution.of(3, 0.25, 0.5, 0.25);
        assertThat(hole.mean()).isEqualTo(4);
        assertThat(hole.variance()).isEqualTo(0.5);
    }

    @Test
    void saturatesExactlyAtBothEnds() {
        ScoreDistribution hole = ScoreDistribution.of(3, 0.1, 0.2, 0.7);
        assertThat(hole.probabilityAtMost(2)).isZero();
        assertThat(hole.probabilityAtMost(5)).isEqualTo(1);
        assertThat(hole.probability(9)).isZero();
    }

    @Test
    void leavesOutScoresThatCannotHappen() {
        ScoreDistribution hole = ScoreDistribution.of(1, 0, 0, 1, 0);
        assertThat(hole.lowest()).isEqualTo(3);
        assertThat(hole.highest()).isEqualTo(3);
    }

    @Test
    void aMixtureIsOneOfItsParts() {
        ScoreDistribution day = ScoreDistribution.mixtureOf(
                List.of(ScoreDistribution.certain(4), ScoreDistribution.of(5, 0.5, 0.5)), 0.25, 0.75);
        assertThat(day.probability(4)).isCloseTo(0.25, within(ULPS));
        assertThat(day.probability(6)).isCloseTo(0.375, within(ULPS));
    }

    @Test
    void stablefordCountsPointsBelowZeroAndStopsAtNone() {
        ScoreDistribution hole = ScoreDistribution.of(3, 0.1, 0.2, 0.3, 0.2, 0.1, 0.1);
        ScoreDistribution points = hole.countedBy(ScoreTable.stableford(4, 1));
        assertThat(points.probability(-4)).isCloseTo(0.1, within(ULPS)); // 3 on a par 4 with a stroke: net eagle
        assertThat(points.probability(0)).isCloseTo(0.2, within(ULPS)); // 7 and 8
    }

    @Test
    void aMaximumCutsTheTail() {
        ScoreDistribution cut = ScoreDistribution.of(5, 0.5, 0.3, 0.1, 0.1).countedBy(ScoreTable.maximum(6));
        assertThat(cut.highest()).isEqualTo(6);
        assertThat(cut.probability(6)).isCloseTo(0.5, within(ULPS));
    }

    @Test
    void refusesWhatIsNoDistribution() {
        assertThatThrownBy(() -> ScoreDistribution.of(3, 0.5, 0.4)).hasMessageContaining("sum to 1");
        assertThatThrownBy(() -> ScoreDistribution.of(3, Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> ScoreDistribution.of(3, 1.5, -0.5)).hasMessageContaining("zero or more");
    }
}
