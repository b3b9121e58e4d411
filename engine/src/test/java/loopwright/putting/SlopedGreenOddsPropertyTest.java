package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The table against balls rolled with fresh draws, against the level green, against its own mirror image. */
class SlopedGreenOddsPropertyTest {
    private static final PuttingSkill NINETY = PuttingSkillPrior.ofLevel(90);
    private static final GreenSpeed TEN = Anchors.TEN_FEET;
    private static final double FOOT = 0.3048;
    private static final int ROLLS = 4_000;

    @ParameterizedTest
    @CsvSource({
        "0.02,0,6",
        "0.02,0,20",
        "0.04,0,2",
        "0.04,0,12",
        "0.03,0.02,6",
        "0.03,-0.03,12",
        "0,-0.04,10",
        "0,0.04,10"
    })
    void ballsRolledWithFreshDrawsDropAsOften(double east, double north, double feet) {
        GreenSurface plane = new PlaneGreen(east, north);
        SlopedPutt putt = new SlopedPutt(plane, TEN, NINETY, 0, 0);
        double y = -feet * FOOT;
        PuttFrom from = new PuttFrom(new GreenRoll(plane, TEN), NINETY, 0, y, 0, 0);
        for (SlopedPace pace : from.paces(new PolarNodes(0, 0))) {
            RandomGenerator random = new SplittableRandom(5);
            int holed = 0;
            for (int i = 0; i < ROLLS; i++) {
                holed += putt.play(
                                        0,
                                        y,
                                        pace.startRadians(),
                                        pace.startSpeed(),
                                        random.nextGaussian(),
                                        random.nextGaussian())
                                .holed()
                        ? 1
                        : 0;
            }
            double p = pace.holed();
            // four standard errors of the rolls, and 1.5 points for the patches (worst seen on 4 % and a dying ball:
            // 1.2)
            double allowed = 4 * Math.sqrt(p * (1 - p) / ROLLS) + 0.015;
            assertThat(holed / (double) ROLLS)
                    .as("%s m past", pace.overshootMetres())
                    .isCloseTo(p, within(allowed));
        }
    }

    /** Waves up to 0.3 m and a step across the green, steeper in places than a ball holds on. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void ballsRolledOnRandomBumpyGreensDropAsAdvised(long seed) {
        RandomGenerator random = new SplittableRandom(seed);
        GreenSurface green = bumpy(random);
        SlopedGreenOdds odds = new SlopedGreenOdds(green, TEN, NINETY, 14, 15);
        SlopedPutt putt = new SlopedPutt(green, TEN, NINETY, 14, 15);
        for (int place = 0; place < 4; place++) {
            double x = 2 + 26 * random.nextDouble();
            double y = 2 + 26 * random.nextDouble();
            PuttAdvice advice = odds.advice(x, y);
            SlopedPace best = advice.best();
            int holed = 0;
            for (int i = 0; i < ROLLS / 2; i++) {
                SlopedPutt.Finish finish = putt.play(
                        x, y, best.startRadians(), best.startSpeed(), random.nextGaussian(), random.nextGaussian());
                holed += finish.holed() ? 1 : 0;
            }
            double p = advice.one();
            // as above
            double allowed = 4 * Math.sqrt(p * (1 - p) / (ROLLS / 2)) + 0.015;
            assertThat(holed / (ROLLS / 2.0)).as("from %s, %s", x, y).isCloseTo(p, within(allowed));
        }
    }

    private static GreenSurface bumpy(RandomGenerator random) {
        double high = 0.1 + 0.2 * random.nextDouble();
        double across = 3 + 6 * random.nextDouble();
        double along = 3 + 6 * random.nextDouble();
        double[][] heights = new double[31][31];
        for (int r = 0; r < 31; r++) {
            for (int c = 0; c < 31; c++) {
                heights[r][c] =
                        0.02 * r + high * Math.sin(c / across) * Math.cos(r / along) + 0.3 / (1 + Math.exp(18 - r));
            }
        }
        return SlopeGrid.ofHeights(0, 0, 1, heights);
    }

    @Test
    void aLevelPlaneGivesTheLevelOdds() {
        PuttingSkill straight = new PuttingSkill(NINETY.directionSdRadians(), NINETY.paceSd(), 0, 0);
        SlopedGreenOdds sloped = new SlopedGreenOdds(PlaneGreen.LEVEL, TEN, straight, 0, 0);
        LevelGreenOdds level = new LevelGreenOdds(straight, TEN);
        for (double feet : new double[] {1, 2, 3, 5, 8, 12, 20, 33, 60}) {
            // fewer paces to choose from, wider nodes: up to 0.01 strokes
            assertThat(sloped.advice(0, -feet * FOOT).expectedPutts())
                    .as("%s ft", feet)
                    .isCloseTo(level.expectedPutts(feet * FOOT), within(0.01));
            assertThat(sloped.expectedPutts(feet * FOOT, 0)).isCloseTo(level.expectedPutts(feet * FOOT), within(0.01));
        }
    }

    @Test
    void mirroredGreensGiveMirroredAdvice() {
        SlopedGreenOdds left = new SlopedGreenOdds(new PlaneGreen(0.025, 0.01), TEN, NINETY, 0, 0);
        SlopedGreenOdds right = new SlopedGreenOdds(new PlaneGreen(-0.025, 0.01), TEN, NINETY, 0, 0);
        for (double feet : new double[] {3, 9, 25}) {
            PuttAdvice one = left.advice(0, -feet * FOOT);
            PuttAdvice other = right.advice(0, -feet * FOOT);
            // the search for the line stops within 2e-3 rad of the place it comes from, from either side
            assertThat(other.best().startRadians()).isCloseTo(-one.best().startRadians(), within(5e-4));
            assertThat(other.one()).isCloseTo(one.one(), within(1e-3));
            assertThat(other.expectedPutts()).isCloseTo(one.expectedPutts(), within(1e-3));
        }
    }

    @Test
    void everyNodeOffersAtLeastThreePacesThatAccountForAllBalls() {
        SlopedGreenOdds odds = new SlopedGreenOdds(new PlaneGreen(0.03, 0.01), TEN, NINETY, 0, 0);
        double[] ones = new double[odds.nodes().count()];
        java.util.Arrays.fill(ones, 1);
        for (int node = 0; node < ones.length; node++) {
            if (odds.nodes().metres(node) > 0.2) {
                assertThat(odds.paces(node)).hasSizeGreaterThanOrEqualTo(3);
            }
            for (SlopedPace pace : odds.paces(node)) {
                assertThat(pace.holed() + pace.expectedOverLeaves(ones)).isCloseTo(1, within(1e-9));
            }
        }
    }

    @Test
    void downhillAndSidehillPuttsCostMoreThanTheSameUphill() {
        SlopedGreenOdds odds = new SlopedGreenOdds(new PlaneGreen(0, 0.03), TEN, NINETY, 0, 0);
        double twenty = 20 * FOOT;
        // the green rises to the north: a ball south of the hole putts uphill
        double side = odds.expectedPutts(twenty, 0);
        assertThat(side).isGreaterThan(odds.expectedPutts(0, -twenty));
        assertThat(side).isGreaterThan(odds.expectedPutts(0, twenty));
    }

    @Test
    void theSameInputsGiveTheSameTable() {
        SlopedGreenOdds once = new SlopedGreenOdds(new PlaneGreen(0.02, 0.01), TEN, NINETY, 3, 4);
        SlopedGreenOdds again = new SlopedGreenOdds(new PlaneGreen(0.02, 0.01), TEN, NINETY, 3, 4);
        for (int node = 0; node < once.nodes().count(); node++) {
            assertThat(again.expectedPutts(node)).isEqualTo(once.expectedPutts(node));
        }
    }

    @Test
    void theOddsSumToOne() {
        SlopedGreenOdds odds = new SlopedGreenOdds(new PlaneGreen(0.02, -0.02), TEN, NINETY, 0, 0);
        double sum = 0;
        for (int k = 1; k <= LevelGreenOdds.MOST_PUTTS; k++) {
            sum += odds.probability(4.2, -1.7, k);
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        PuttAdvice advice = odds.advice(4.2, -1.7);
        assertThat(advice.one() + advice.two() + advice.threeOrMore()).isCloseTo(1, within(1e-9));
    }
}
