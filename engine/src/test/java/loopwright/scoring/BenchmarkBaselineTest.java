package loopwright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.geo.Place;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import loopwright.strategy.TestCourses;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;

/** A benchmark player of our own engine, and the player's own past, as baselines. */
class BenchmarkBaselineTest {
    private static final double TELESCOPE = 1e-9; // sums of a hundred numbers below 10
    /** A curve is a mean over places within some yards of the distance asked for. */
    private static final double OVER_PLACES = 0.15;

    private static final HoleProblem PROBLEM = problem();
    private static final PolicyEvaluation EVALUATION =
            MeanSolver.solve(PROBLEM, Watch.NONE).evaluate(Watch.NONE);
    private static final BenchmarkTable TABLE = table();

    private static HoleProblem problem() {
        Course course = TestCourses.parFour();
        Player player = PlayerPrior.of(80, Player.Hand.RIGHT).player("benchmark");
        Ability ability = new Ability(
                new StrikeModel(player), new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(10 * 0.3048)), 1);
        return new HoleProblem(
                new CourseMap(course, course.getHole(1)),
                new Place(0, 0),
                ability,
                new SolverSettings(16, 8, 8, 32, 64, 256),
                ShotRules.FREE);
    }

    private static BenchmarkTable table() {
        BenchmarkMaker maker = new BenchmarkMaker();
        maker.add(PROBLEM, EVALUATION);
        return maker.table("a benchmark", PROBLEM.ability().putting());
    }

    @Test
    void fromTheTeeItIsTheSolvedHole() {
        StrokesBaseline hole = new BenchmarkBaseline(TABLE).forHole(1);
        assertThat(hole.strokesToHoleOut(Lie.TEE, Distance.ofMetres(360)))
                .isCloseTo(EVALUATION.expected(), within(1e-9));
        assertThat(hole.isPublished(Lie.TEE, Distance.ofMetres(360))).isTrue();
        assertThat(hole.strokesToHoleOut(Lie.TEE, Distance.ofMetres(330)))
                .isBetween(EVALUATION.expected() - 0.4, EVALUATION.expected());
    }

    @Test
    void fromTheFairwayItIsWhatThePlacesThereAreWorth() {
        StrokesBaseline baseline = new BenchmarkBaseline(TABLE);
        for (double metres : new double[] {30, 60, 100, 150}) {
            double place = EVALUATION.expectedFrom(new Place(0, 360 - metres));
            assertThat(baseline.strokesToHoleOut(Lie.FAIRWAY, Distance.ofMetres(metres)))
                    .as("%s m", metres)
                    .isCloseTo(place, within(OVER_PLACES));
        }
        assertThat(baseline.strokesToHoleOut(Lie.ROUGH, Distance.ofMetres(100)))
                .isGreaterThan(baseline.strokesToHoleOut(Lie.FAIRWAY, Distance.ofMetres(100)));
        assertThat(baseline.strokesToHoleOut(Lie.GREEN, Distance.ofFeet(1))).isBetween(1.0, 1.05);
        assertThat(baseline.strokesToHoleOut(Lie.GREEN, Distance.ofFeet(30)))
                .isCloseTo(PROBLEM.ability().putting().expectedPutts(30 * 0.3048), within(1e-9));
    }

    @Test
    void roundsTelescopeAgainstBenchmarkAndOwnPast() {
        SplittableRandom random = new SplittableRandom(7);
        List<RoundRecord> past = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            past.add(RandomRounds.anyTier(random));
        }
        List<StrokesBaseline> baselines =
                List.of(new BenchmarkBaseline(TABLE), OwnPast.of(past).orElseThrow());
        for (StrokesBaseline baseline : baselines) {
            for (int i = 0; i < 20; i++) {
                RoundReview review = RoundReview.of(RandomRounds.anyTier(random), baseline);
                assertThat(review.total())
                        .isCloseTo(review.start() - review.end() - review.strokes(), within(TELESCOPE));
            }
        }
    }

    @Test
    void aRoundLikeAllOthersGainsNothingOnTheOwnPast() {
        HoleRecord hole = Records.ofShots(
                1,
                4,
                Records.shot(Lie.TEE, 400, 0),
                Records.shot(Lie.ROUGH, 180, 0),
                Records.shot(Lie.FAIRWAY, 25, 0),
                Records.putt(12),
                Records.putt(3));
        RoundRecord round = Records.round(List.of(hole));
        List<RoundRecord> past = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            past.add(round);
        }
        StrokesBaseline own = OwnPast.of(past).orElseThrow();
        // 60 holes against 20 strokes' worth of all parts: each part is within a few hundredths of itself
        assertThat(RoundReview.of(round, own).total()).isCloseTo(0, within(0.1));
        assertThat(own.strokesToHoleOut(Lie.TEE, Distance.ofYards(400))).isCloseTo(5, within(0.1));
        assertThat(OwnPast.of(List.of())).isEmpty();
        assertThat(own.name()).isEqualTo("your own 60 rounds before");
    }

    @Test
    void theGapOfSyntheticRoundsIsFoundOnlyWithEnoughRounds() {
        SplittableRandom random = new SplittableRandom(3);
        List<Map<Obstacle, Double>> costs = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            costs.add(Map.of(
                    Obstacle.PENALTIES, 2.5 + random.nextGaussian(),
                    Obstacle.THREE_PUTTS, 0.5 + random.nextGaussian(),
                    Obstacle.TEE, 0.2 + random.nextGaussian()));
        }
        ScoreGap few = ScoreGap.ofCosts(costs.subList(0, 4));
        assertThat(few.separated()).isFalse();
        ScoreGap many = ScoreGap.ofCosts(costs);
        assertThat(many.separated()).isTrue();
        assertThat(many.rows().get(0).obstacle()).isEqualTo(Obstacle.PENALTIES);
        assertThat(many.rows().get(0).low()).isLessThan(2.5);
        assertThat(many.rows().get(0).high()).isGreaterThan(2.5);
    }

    @Test
    void equalCostsStayTiedAndSayHowManyRoundsMore() {
        SplittableRandom random = new SplittableRandom(5);
        int separated = 0;
        int needed = 0;
        for (int seed = 0; seed < 200; seed++) {
            List<Map<Obstacle, Double>> costs = new ArrayList<>();
            for (int i = 0; i < 15; i++) {
                costs.add(Map.of(Obstacle.WEDGES, random.nextGaussian(), Obstacle.TEE, random.nextGaussian()));
            }
            ScoreGap gap = ScoreGap.ofCosts(costs);
            separated += gap.separated() ? 1 : 0;
            needed += gap.roundsNeeded() > 15 ? 1 : 0;
        }
        // whichever is ahead is told apart by chance in 10 of 100; three standard errors of 200 trials are 6
        assertThat(separated).isLessThan(2 * (10 + 6));
        assertThat(needed).isGreaterThan(200 - 2 * (10 + 6));
    }

    @Test
    void obstaclesAreCountedAgainstTheBenchmark() {
        HoleRecord bad = Records.ofShots(
                1,
                4,
                Records.shot(Lie.TEE, 394, 1),
                Records.shot(Lie.TEE, 394, 0),
                Records.shot(Lie.FAIRWAY, 100, 0),
                Records.shot(Lie.ROUGH, 15, 0),
                Records.putt(12),
                Records.putt(4),
                Records.putt(2));
        Map<Obstacle, Double> costs = ObstacleCount.of(Records.round(List.of(bad)), TABLE);
        BenchmarkTable.Hole hole = Optional.ofNullable(TABLE.holes().get(1)).orElseThrow();
        assertThat(costs.get(Obstacle.PENALTIES)).isCloseTo(18 * (1 - hole.penalties()), within(1e-9));
        assertThat(costs.get(Obstacle.DOUBLES)).isCloseTo(18 * (3 - hole.beyondBogey()), within(1e-9));
        assertThat(costs.get(Obstacle.THREE_PUTTS)).isBetween(18 * 0.8, 18.0);
        assertThat(costs.get(Obstacle.SHORT_PUTTS)).isBetween(18 * 0.3, 18.0);
        assertThat(costs.get(Obstacle.UP_AND_DOWNS)).isPositive();
        assertThat(costs.keySet()).containsAll(List.of(Obstacle.WEDGES, Obstacle.TEE));
    }
}
