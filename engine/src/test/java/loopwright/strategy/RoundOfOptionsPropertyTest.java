package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The backward pass against a search of every history on small random rounds; laws on longer ones. */
class RoundOfOptionsPropertyTest {
    /** Sums of a few hundred products of doubles. */
    private static final double EXACT = 1e-9;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyTableAgreesWithASearchOfEveryHistory(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (ScoreTable table : tables(random)) {
            List<HoleOptions> holes = randomHoles(random, 3, table);
            TargetPlay play = new RoundOfOptions(holes).targetPlay();
            for (int limit = -12; limit <= 25; limit++) {
                double best = bestOfEveryHistory(holes, 0, limit, 0);
                assertThat(play.chance(limit)).as("%s, limit %d", table, limit).isCloseTo(best, within(EXACT));
                assertThat(play.distribution(limit).probabilityAtMost(limit)).isCloseTo(best, within(EXACT));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void targetPlayIsNeverBelowMeanPlayAndRisesWithTheStrokesInHand(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        RoundOfOptions round = new RoundOfOptions(randomHoles(random, 18, ScoreTable.strokes()));
        TargetPlay play = round.targetPlay();
        ScoreDistribution mean = round.distribution(round.meanPlay());
        for (int limit = 18; limit <= 170; limit++) {
            assertThat(play.chance(limit)).isGreaterThanOrEqualTo(mean.probabilityAtMost(limit) - EXACT);
            assertThat(play.chance(limit)).isGreaterThanOrEqualTo(play.chance(limit - 1));
        }
        assertThat(play.chance(17)).isZero();
        assertThat(play.chance(200)).isEqualTo(1);
    }

    /** All choices, all outcomes, the running sum in the open: no table of values, no saturation, no early end. */
    private static double bestOfEveryHistory(List<HoleOptions> holes, int hole, int limit, int sum) {
        if (hole == holes.size()) {
            return sum <= limit ? 1 : 0;
        }
        double best = 0;
        for (ScoreDistribution option : holes.get(hole).options()) {
            double chance = 0;
            for (int s = option.lowest(); s <= option.highest(); s++) {
                int then = sum + holes.get(hole).table().counts(s);
                chance += option.probability(s) * bestOfEveryHistory(holes, hole + 1, limit, then);
            }
            best = Math.max(best, chance);
        }
        return best;
    }

    private static List<ScoreTable> tables(SplittableRandom random) {
        return List.of(
                ScoreTable.strokes(),
                ScoreTable.net(random.nextInt(-1, 3)),
                ScoreTable.maximum(6),
                ScoreTable.maximum(6, random.nextInt(-1, 3)),
                ScoreTable.stableford(random.nextInt(3, 6), random.nextInt(-1, 3)));
    }

    private static List<HoleOptions> randomHoles(SplittableRandom random, int n, ScoreTable table) {
        List<HoleOptions> holes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            List<ScoreDistribution> options = new ArrayList<>();
            for (int o = random.nextInt(1, 4); o > 0; o--) {
                options.add(randomScore(random));
            }
            holes.add(new HoleOptions(table, options));
        }
        return holes;
    }

    private static ScoreDistribution randomScore(SplittableRandom random) {
        double[] weight = random.doubles(random.nextInt(2, 7)).toArray();
        double sum = 0;
        for (double w : weight) {
            sum += w;
        }
        for (int i = 0; i < weight.length; i++) {
            weight[i] /= sum;
        }
        return ScoreDistribution.of(random.nextInt(2, 5), weight);
    }
}
