package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.player.TouchShot;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.scoring.LevelGreenPlay;
import loopwright.scoring.PlayOut;
import loopwright.scoring.PlayedMean;
import org.junit.jupiter.api.Test;

/** Putts from a narrow fringe with sand and rough behind it: nobody putts them out of the sand. */
class FringeValueTest {
    private static final int BALLS = 4_000;
    /** A node stands for balls up to a yard nearer or farther, which is worth 0.05 strokes either way; twice that. */
    private static final double YARD = 0.1;

    private final Player player = PlayerPrior.of(82, Player.Hand.RIGHT).player("test");
    private final StrikeModel strikes = new StrikeModel(player);
    private final LevelGreenOdds odds = new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3));

    @Test
    void aPuttFromTheLastYardOfTheFringeIsWorthWhatTheRefereeSays() {
        Course course = TestCourses.course(
                List.of(
                        TestCourses.area("sand", AreaKind.BUNKER, Region.circle(new Place(0, 168), 4.5)),
                        TestCourses.area("fringe", AreaKind.FAIRWAY, Region.circle(new Place(0, 150), 15))),
                List.of(new Place(0, 0), new Place(0, 150)),
                3,
                TestCourses.rectangle(-90, -60, 90, 230));
        CourseMap map = new CourseMap(course, course.holes().get(0));
        HoleProblem problem = new HoleProblem(
                map, new Place(0, 0), new Ability(strikes, odds, 1), SolverSettings.STANDARD, ShotRules.FREE);
        MeanSolution solution = MeanSolver.solve(problem, Watch.NONE);
        PolicyEvaluation evaluation = solution.evaluate(Watch.NONE);
        PlayOut referee =
                new PlayOut(map, new Place(0, 0), strikes, new LevelGreenPlay(odds), solution.policy(evaluation));
        List<Spot> lastYard = IntStream.range(0, solution.nodes.states)
                .filter(s -> isPuttedFromTheFringe(solution, s) && reachesIntoTheSand(solution, s))
                .mapToObj(s -> solution.spots[s])
                .toList();
        assertThat(lastYard).isNotEmpty();
        SplittableRandom random = new SplittableRandom(3);
        for (Spot spot : lastYard) {
            Place ball = problem.raster.place(spot.column(), spot.row());
            PlayedMean played = PlayedMean.of(
                    BALLS,
                    () -> referee.playFrom(ball, Surface.FAIRWAY, Situation.ORDINARY, random)
                            .strokes());
            int state = solution.state(ball, Surface.FAIRWAY, Situation.ORDINARY);
            assertThat(evaluation.value[state]).isCloseTo(played.mean(), within(YARD + 4 * played.standardError()));
        }
    }

    private boolean isPuttedFromTheFringe(MeanSolution solution, int state) {
        Option o = solution.choices.option(state);
        return !o.isDrop()
                && strikes.isTouch(o.shot())
                && strikes.touch(o.shot()).kind() == TouchShot.Kind.FRINGE_PUTT
                && solution.spots[state].surface() == Surface.FAIRWAY;
    }

    private static boolean reachesIntoTheSand(MeanSolution solution, int state) {
        HoleRaster raster = solution.problem.raster;
        return IntStream.range(0, Spot.PARTS)
                .mapToObj(solution.spots[state]::part)
                .anyMatch(p -> raster.surface(raster.cell(p.column(), p.row())) == Surface.BUNKER);
    }
}
