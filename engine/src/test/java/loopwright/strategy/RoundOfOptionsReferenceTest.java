package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The table of exact answers for safe or risky holes, reference/strategy/target-play.csv. */
class RoundOfOptionsReferenceTest {
    private static final int SAFE = 0;
    private static final int RISKY = 1;
    private static final double SIX_DIGITS = 0.5e-6 + 1e-12; // printed to six decimals

    private static RoundOfOptions holes(int n) {
        HoleOptions hole = new HoleOptions(
                ScoreTable.strokes(), List.of(ScoreDistribution.certain(4), HardyGame.strokes(4, 0.2, 0.2)));
        return new RoundOfOptions(Collections.nCopies(n, hole));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/strategy/target-play.csv", numLinesToSkip = 1)
    void bestPlayAndAlwaysRisky(int n, int d, double best, double risky) {
        RoundOfOptions round = holes(n);
        assertThat(round.targetPlay().chance(4 * n + d)).isCloseTo(best, within(SIX_DIGITS));
        assertThat(round.distribution(Collections.nCopies(n, RISKY)).probabilityAtMost(4 * n + d))
                .isCloseTo(risky, within(SIX_DIGITS));
    }

    @Test
    void meanPlayIsSafeEverywhereAndNeverBeatsPar() {
        RoundOfOptions round = holes(18);
        assertThat(HardyGame.strokes(4, 0.2, 0.2).mean()).isCloseTo(4.19922, within(0.5e-5)); // as printed
        assertThat(round.meanPlay()).containsOnly(SAFE);
        assertThat(round.distribution(round.meanPlay()).probabilityAtMost(71)).isZero();
    }

    @Test
    void aPlayerAheadPlaysSafeAndOneBehindTakesTheRisk() {
        TargetPlay play = holes(2).targetPlay();
        assertThat(play.choice(1, 4)).isEqualTo(SAFE);
        assertThat(play.choice(1, 3)).isEqualTo(RISKY);
    }
}
