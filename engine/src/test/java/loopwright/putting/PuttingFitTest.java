package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import loopwright.putting.LoggedPutt.Side;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PuttingFitTest {
    private static final PuttingSkill PRIOR = PuttingSkillPrior.ofLevel(90);
    private static final LevelGreenOdds USUAL = new LevelGreenOdds(PRIOR, Anchors.TEN_FEET);
    private static final double DIRECTION = Math.toRadians(1.9);
    private static final double PACE = 0.13;

    @Test
    void noPuttsReturnThePrior() {
        PuttingFit fit = PuttingFit.of(List.of(), PRIOR, USUAL);
        // the optimiser's own tolerance
        assertThat(fit.direction().value()).isCloseTo(PRIOR.directionSdRadians(), within(1e-6));
        assertThat(fit.pace().value()).isCloseTo(PRIOR.paceSd(), within(1e-6));
        assertThat(fit.direction().assumedShare()).isCloseTo(1, within(1e-6));
        assertThat(fit.skill().readingSd()).isCloseTo(PRIOR.readingSd(), within(1e-5));
        assertThat(fit.findStartLine()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {6, 30, 100, 1000})
    void recoversAKnownSkillWithinThreeStandardErrors(int count) {
        PuttingFit fit = PuttingFit.of(record(new SplittableRandom(count), count, true), PRIOR, USUAL);
        assertThat(standardErrors(fit.direction(), DIRECTION)).isBetween(-3.0, 3.0);
        assertThat(standardErrors(fit.pace(), PACE)).isBetween(-3.0, 3.0);
    }

    @Test
    void morePuttsLeaveLessAssumed() {
        PuttingFit few = PuttingFit.of(record(new SplittableRandom(1), 20, true), PRIOR, USUAL);
        PuttingFit many = PuttingFit.of(record(new SplittableRandom(1), 300, true), PRIOR, USUAL);
        assertThat(many.direction().assumedShare()).isLessThan(few.direction().assumedShare());
        // some 150 leaves give log pace an error of 1 / sqrt(300) = 0.06 against 0.30 before: a share of 0.04, more as
        // the habit of length is
        // fitted too
        assertThat(many.pace().assumedShare()).isLessThan(0.1);
    }

    @Test
    void aStraightDrillSeparatesStartLineFromReading() {
        RandomGenerator random = new SplittableRandom(7);
        List<LoggedPutt> putts = new ArrayList<>(record(random, 400, true));
        LevelPutt straight = new LevelPutt(Math.toRadians(1.2), PACE, Anchors.TEN_FEET.deceleration());
        for (int i = 0; i < 400; i++) {
            putts.add(play(straight, 2.4, random, true).inStraightDrill());
        }
        PuttingFit fit = PuttingFit.of(putts, PRIOR, USUAL);
        PuttingFit.Estimate start = fit.findStartLine().orElseThrow();
        assertThat(standardErrors(start, Math.toRadians(1.2))).isBetween(-3.0, 3.0);
        // the skill keeps the two parts so that together they are the direction spread again
        assertThat(fit.skill().directionSdRadians()).isCloseTo(fit.direction().value(), within(1e-12));
        assertThat(fit.skill().startLineSdRadians()).isLessThan(fit.direction().value());
    }

    @Test
    void aHabitOfLeavingItShortIsTakenForAHabitAndNotForSpread() {
        RandomGenerator random = new SplittableRandom(21);
        LevelPutt truth = new LevelPutt(DIRECTION, PACE, Anchors.TEN_FEET.deceleration());
        List<LoggedPutt> putts = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            double metres = 1 + 9 * random.nextDouble();
            double overshoot = 0.94 * (metres + USUAL.bestOvershootMetres(metres)) - metres;
            double left = truth.play(metres, overshoot, random.nextGaussian(), random.nextGaussian());
            putts.add(
                    left == 0
                            ? LoggedPutt.holed(metres)
                            : LoggedPutt.missed(metres, Math.max(Cup.RADIUS_METRES, left)));
        }
        PuttingFit fit = PuttingFit.of(putts, PRIOR, USUAL);
        assertThat(fit.length().value()).isBetween(-0.09, -0.02);
        assertThat(fit.length().high()).isNegative();
    }

    @Test
    void sidesAreCounted() {
        List<LoggedPutt> putts = List.of(
                LoggedPutt.missed(2, 0.3).withSide(Side.LEFT),
                LoggedPutt.missed(3).withSide(Side.SHORT));
        PuttingFit fit = PuttingFit.of(putts, PRIOR, USUAL);
        assertThat(fit.misses(Side.LEFT)).isEqualTo(1);
        assertThat(fit.misses(Side.SHORT)).isEqualTo(1);
        assertThat(fit.misses(Side.RIGHT)).isZero();
    }

    @Test
    void theDensityOfLeavesAndTheChanceToHoleSumToOne() {
        LevelPutt putt = new LevelPutt(DIRECTION, PACE, Anchors.TEN_FEET.deceleration());
        for (double metres : new double[] {1, 3, 8}) {
            double[] sum = {HoledChance.of(putt, metres, 0.3)};
            for (double from = Cup.RADIUS_METRES; from < metres; from += 0.1) {
                Panel.forEach(
                        from,
                        Math.min(metres, from + 0.1),
                        (l, w) -> sum[0] += w * LeaveDensity.of(putt, metres, 0.3, l, Side.NOT_NOTED));
            }
            // the arc that drops is cut at the offset's first order, and leaves under the radius are not counted
            assertThat(sum[0]).as("from %s m", metres).isCloseTo(1, within(0.01));
        }
    }

    /** 1,000 synthetic players drawn from the prior: do the 90 % intervals hold the truth 90 % of the time? */
    @Test
    @Tag("long")
    void ninetyPercentIntervalsCoverOverAThousandPlayers() {
        // 87 to 93 %: three standard errors of a share of 1,000
        double[] covered = coverage(1000);
        assertThat(covered[0]).as("direction").isBetween(0.87, 0.93);
        assertThat(covered[1]).as("pace").isBetween(0.87, 0.93);
    }

    @Test
    void ninetyPercentIntervalsCoverOverASeededShare() {
        // 40 players: three standard errors are 14 %
        double[] covered = coverage(40);
        assertThat(covered[0]).as("direction").isGreaterThanOrEqualTo(0.76);
        assertThat(covered[1]).as("pace").isGreaterThanOrEqualTo(0.76);
    }

    private static double[] coverage(int players) {
        double[] covered = new double[2];
        for (int i = 0; i < players; i++) {
            RandomGenerator random = new SplittableRandom(1000 + i);
            double direction = PRIOR.directionSdRadians() * Math.exp(0.25 * random.nextGaussian());
            double pace = PRIOR.paceSd() * Math.exp(0.30 * random.nextGaussian());
            LevelPutt truth = new LevelPutt(direction, pace, Anchors.TEN_FEET.deceleration());
            List<LoggedPutt> putts = new ArrayList<>();
            for (int k = 0; k < 60; k++) {
                putts.add(play(truth, 1 + 9 * random.nextDouble(), random, true));
            }
            PuttingFit fit = PuttingFit.of(putts, PRIOR, USUAL);
            covered[0] += holds(fit.direction(), direction) ? 1.0 / players : 0;
            covered[1] += holds(fit.pace(), pace) ? 1.0 / players : 0;
        }
        return covered;
    }

    private static boolean holds(PuttingFit.Estimate estimate, double truth) {
        return estimate.low() <= truth && truth <= estimate.high();
    }

    private static List<LoggedPutt> record(RandomGenerator random, int count, boolean leaves) {
        LevelPutt truth = new LevelPutt(DIRECTION, PACE, Anchors.TEN_FEET.deceleration());
        List<LoggedPutt> putts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            putts.add(play(truth, 1 + 9 * random.nextDouble(), random, leaves));
        }
        return putts;
    }

    private static LoggedPutt play(LevelPutt truth, double metres, RandomGenerator random, boolean leaves) {
        double left =
                truth.play(metres, USUAL.bestOvershootMetres(metres), random.nextGaussian(), random.nextGaussian());
        if (left == 0) {
            return LoggedPutt.holed(metres);
        }
        return leaves && left >= Cup.RADIUS_METRES ? LoggedPutt.missed(metres, left) : LoggedPutt.missed(metres);
    }

    private static double standardErrors(PuttingFit.Estimate estimate, double truth) {
        double error = Math.log(estimate.high() / estimate.low()) / (2 * 1.6449);
        return Math.log(estimate.value() / truth) / error;
    }
}
