package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.geo.Place;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.scoring.LevelGreenPlay;
import loopwright.scoring.PlayOut;
import org.junit.jupiter.api.Test;

class MeanSolverTest {
    private static final int HOLES = 20_000;
    /** Solver error allowed on one hole: a third of the 0.05 strokes a round that 18 holes may be off, plus noise. */
    private static final double SOLVER_ERROR = 0.01;

    private final Player player = PlayerPrior.of(80, Player.Hand.RIGHT).player("test");
    private final StrikeModel strikes = new StrikeModel(player);
    private final LevelGreenOdds odds = new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3));

    @Test
    void theRefereeAgreesOnAParThreeOverWater() {
        Course course = TestCourses.parThree();
        CourseMap map = new CourseMap(course, course.holes().get(0));
        MeanSolution solution = MeanSolver.solve(problem(map), Watch.NONE);
        PolicyEvaluation evaluation = solution.evaluate(Watch.NONE);
        PlayOut referee =
                new PlayOut(map, new Place(0, 0), strikes, new LevelGreenPlay(odds), solution.policy(evaluation));
        SplittableRandom random = new SplittableRandom(11);
        double sum = 0;
        double squares = 0;
        int clean = 0;
        for (int i = 0; i < HOLES; i++) {
            PlayOut.HoleScore score = referee.play(random);
            sum += score.strokes();
            squares += score.strokes() * score.strokes();
            clean += score.penaltyStrokes() == 0 ? 1 : 0;
        }
        double mean = sum / HOLES;
        double error = Math.sqrt((squares / HOLES - mean * mean) / HOLES);
        assertThat(evaluation.expected()).isCloseTo(mean, within(4 * error + SOLVER_ERROR));
        double share = (double) clean / HOLES;
        assertThat(evaluation.withoutPenalty())
                .isCloseTo(share, within(4 * Math.sqrt(share * (1 - share) / HOLES) + SOLVER_ERROR));
    }

    @Test
    void theScoresHaveTheExpectedScoreAsTheirMean() {
        Course course = TestCourses.parThree();
        MeanSolution solution =
                MeanSolver.solve(problem(new CourseMap(course, course.holes().get(0))), Watch.NONE);
        PolicyEvaluation evaluation = solution.evaluate(Watch.NONE);
        double[] scores = evaluation.scores();
        double mean = IntStream.range(0, scores.length)
                .mapToDouble(k -> k * scores[k])
                .sum();
        // Lanes are kept as floats and putts beyond the eighth are cut off: both far below a thousandth of a stroke.
        assertThat(mean).isCloseTo(evaluation.expected(), within(1e-3));
    }

    @Test
    void oneCoreAndFourComeToTheSameAnswerToTheBit() throws Exception {
        PolicyEvaluation alone = onCores(1);
        PolicyEvaluation together = onCores(4);
        assertThat(together.value).isEqualTo(alone.value);
        assertThat(together.scores()).isEqualTo(alone.scores());
    }

    /** Streams that go on all cores stay in the pool they are started from. */
    private PolicyEvaluation onCores(int cores) throws Exception {
        Course course = TestCourses.parThree();
        ForkJoinPool pool = new ForkJoinPool(cores);
        try {
            return pool.submit(() -> MeanSolver.solve(
                                    problem(new CourseMap(course, course.holes().get(0))), Watch.NONE)
                            .evaluate(Watch.NONE))
                    .get();
        } finally {
            pool.shutdown();
        }
    }

    private HoleProblem problem(CourseMap map) {
        Ability ability = new Ability(strikes, odds, 1);
        return new HoleProblem(map, new Place(0, 0), ability, SolverSettings.STANDARD, ShotRules.FREE);
    }
}
