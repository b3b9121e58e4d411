package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Players whose day effect and range-to-course widening are known, 20 rounds of 36 full swings each, struck by the strike
 * model with its own mishits: do the intervals hold the truth as often as they say?
 */
class DayLearningPropertyTest {
    private static final long SEED = 20260527;
    private static final int ROUNDS = 20;
    private static final int SWINGS = 36;

    /** A player drawn from the prior, and what he does. */
    private record Truth(double widening, double biasSd, double logSpreadSd) {
        static Truth draw(SplittableRandom random) {
            double sd = PriorTable.SESSION_SD_LOG_SD;
            return new Truth(
                    Math.exp(PriorTable.RANGE_WIDENING_LOG_SD * random.nextGaussian()),
                    DayEffect.ASSUMED.directionSdRadians() * Math.exp(sd * random.nextGaussian()),
                    DayEffect.ASSUMED.logSpreadSd() * Math.exp(sd * random.nextGaussian()));
        }
    }

    private static List<List<CourseSwing>> rounds(Truth truth, double level, SplittableRandom random, int rounds) {
        Player player = PlayerPrior.of(level, Player.Hand.RIGHT).player("A");
        List<Swing> swings = player.swings().stream().filter(Swing::isFull).toList();
        List<List<CourseSwing>> out = new ArrayList<>();
        DayEffect effect = new DayEffect(truth.biasSd(), truth.logSpreadSd());
        for (int r = 0; r < rounds; r++) {
            RoundDay day = effect.draw(random);
            Player today = new Player(player.name(), player.hand(), level, swings, List.of(), player.putting(), 0)
                    .on(new RoundDay(day.biasRadians(), day.spread() * truth.widening(), 1));
            StrikeModel strikes = new StrikeModel(today);
            List<CourseSwing> round = new ArrayList<>();
            for (int i = 0; i < SWINGS; i++) {
                int s = random.nextInt(swings.size());
                round.add(swing(strikes, s, swings.get(s).pattern(), random));
            }
            out.add(round);
        }
        return out;
    }

    private static CourseSwing swing(StrikeModel strikes, int s, ShotPattern planned, SplittableRandom random) {
        Landing landing = new Landing();
        strikes.strike(
                s,
                0,
                LieEffect.NONE,
                random.nextDouble(),
                random.nextGaussian(),
                random.nextGaussian(),
                random.nextGaussian(),
                landing);
        double off = Math.atan2(landing.rightMetres, landing.forwardMetres) - planned.directionRadians();
        return new CourseSwing(off, planned);
    }

    private static int[] covered(int players, int refits) {
        SplittableRandom random = new SplittableRandom(SEED);
        int[] held = new int[3];
        for (int p = 0; p < players; p++) {
            Truth truth = Truth.draw(random);
            double level = 75 + 35 * random.nextDouble();
            for (int i = 0; i < refits; i++) {
                LearnedDay learned = DayLearning.learn(rounds(truth, level, random, ROUNDS));
                held[0] += learned.widening().holds(truth.widening()) ? 1 : 0;
                held[1] += learned.directionSdRadians().holds(truth.biasSd()) ? 1 : 0;
                held[2] += learned.logSpreadSd().holds(truth.logSpreadSd()) ? 1 : 0;
            }
        }
        return held;
    }

    private static void assertCovers(int players, int refits) {
        int n = players * refits;
        int[] held = covered(players, refits);
        // refits of one player share his truth: as many independent trials as players, at three standard deviations
        double allowed = Math.max(0.03, 3 * Math.sqrt(0.9 * 0.1 / players));
        for (int i = 0; i < 3; i++) {
            assertThat((double) held[i] / n)
                    .as(
                            "widening, bias, spread: number %d, of %d refits, seed %d: %s",
                            i, n, SEED, List.of(held[0], held[1], held[2]))
                    .isBetween(0.90 - allowed, Math.min(1, 0.90 + allowed));
        }
    }

    @Test
    void intervalsHoldTheTruthNineTimesInTen() {
        assertCovers(48, 1);
    }

    /** The whole study: 200 players, 1,000 refits. */
    @Test
    @Tag("long")
    void intervalsHoldTheTruthOverAThousandRefits() {
        int[] held = covered(200, 5);
        System.out.printf(
                "90 %% intervals of 1,000 refits hold widening %d, bias %d, spread %d times%n",
                held[0], held[1], held[2]);
        for (int i = 0; i < 3; i++) {
            assertThat(held[i] / 1000.0)
                    .as("widening, bias, spread: %d %d %d of 1000, seed %d", held[0], held[1], held[2], SEED)
                    .isBetween(0.87, 0.93);
        }
    }

    @Test
    void nothingRecordedLeavesThePrior() {
        LearnedDay learned = DayLearning.learn(List.of());
        assertThat(learned.widening().holds(1)).isTrue();
        // 90 % of a normal law is 1.645 standard deviations either side; the grid's cells are half of one wide
        assertThat(Math.log(learned.widening().high() / learned.widening().low()))
                .isBetween(0.30, 0.37);
        assertThat(learned.rounds()).isZero();
    }

    @Test
    void manyRoundsFindAWidePlayer() {
        Truth truth = new Truth(1.25, Math.toRadians(3), 0.15);
        LearnedDay learned = DayLearning.learn(rounds(truth, 90, new SplittableRandom(SEED), 80));
        assertThat(learned.widening().low()).isGreaterThan(1.1);
        assertThat(learned.directionSdRadians().middle()).isBetween(Math.toRadians(2.2), Math.toRadians(4));
    }
}
