package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.osm.SharedFiles;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.geo.Place;
import loopwright.numerics.Watch;
import loopwright.player.DayEffect;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.RoundDay;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.scoring.GreenPlay;
import loopwright.scoring.LevelGreenPlay;
import loopwright.scoring.PlayOut;
import loopwright.scoring.TargetGreenPlay;
import loopwright.strategy.Ability;
import loopwright.strategy.DayAbility;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.HoleTarget;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.Policy;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ScoreTable;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import loopwright.strategy.TargetHole;
import loopwright.strategy.TargetSolution;
import loopwright.strategy.TargetSolver;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Chances of mean play and of target play against rounds played out with fresh draws, each on a day of its own: within
 * four standard errors.
 */
class TargetStudyIT {
    private static final Path DEMO = Path.of("..", "demo", "course.geojson");
    private static final DayEffect DAY = DayEffect.ASSUMED;

    private final Player player = PlayerPrior.of(82, Player.Hand.RIGHT).player("test");
    private final LevelGreenOdds odds = new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3.048));
    private final List<DayAbility> days = DAY.days().stream()
            .map(d -> new DayAbility(new Ability(new StrikeModel(player.on(d)), odds, 1), d))
            .toList();

    private record PlayedHole(CourseMap map, Place tee, Policy mean) {}

    @Test
    void twoHolesOfTheDemoAgree() {
        Played round = solve(new OsmCourseFiles().read(DEMO).course(), 2);
        int usual = (int) Math.round(round.solution.meanPlay().mean());
        round.compare(usual - 1, 4_000);
        round.compare(usual, 4_000);
    }

    @Test
    @Tag("long")
    void theDemoAgreesOverAHundredThousandRounds() {
        Played round = solve(new OsmCourseFiles().read(DEMO).course(), 18);
        round.compareThreeTargets();
    }

    @Test
    @Tag("long")
    void theIslandCourseAgreesOverAHundredThousandRounds() {
        Played round = solve(
                new OsmCourseFiles().read(SharedFiles.course("island-18.osm")).course(), 18);
        round.compareThreeTargets();
    }

    private Played solve(Course course, int count) {
        List<TargetHole> solved = course.holes().subList(0, count).parallelStream()
                .map(h -> solve(course, h))
                .toList();
        List<PlayedHole> holes = new ArrayList<>();
        for (TargetHole hole : solved) {
            HoleProblem problem = hole.mean().problem();
            holes.add(new PlayedHole(problem.map(), problem.tee(), hole.mean().policy(hole.evaluation())));
        }
        return new Played(course.name(), holes, TargetSolver.solve(solved, days, Watch.NONE));
    }

    private TargetHole solve(Course course, Hole hole) {
        Place tee = course.teeSets().get(0).getPlace(hole.number()).place();
        HoleProblem problem = new HoleProblem(
                new CourseMap(course, hole), tee, days.get(0).ability(), SolverSettings.STANDARD, ShotRules.FREE);
        MeanSolution mean = MeanSolver.solve(problem, Watch.NONE);
        PolicyEvaluation evaluation = mean.evaluate(Watch.NONE);
        evaluation.forgetRows();
        return new TargetHole(mean, evaluation, ScoreTable.strokes());
    }

    /** A solved round and the referee's. */
    private final class Played {
        private final String name;
        private final List<PlayedHole> holes;
        private final TargetSolution solution;

        Played(String name, List<PlayedHole> holes, TargetSolution solution) {
            this.name = name;
            this.holes = holes;
            this.solution = solution;
        }

        void compareThreeTargets() {
            int usual = (int) Math.round(solution.meanPlay().mean());
            compare(usual - 5, 100_000);
            compare(usual, 100_000);
            compare(usual + 5, 100_000);
        }

        void compare(int limit, int rounds) {
            SplittableRandom random = new SplittableRandom(limit);
            int forTarget = 0;
            int forMean = 0;
            for (int i = 0; i < rounds; i++) {
                RoundDay day = DAY.draw(random);
                StrikeModel today = new StrikeModel(player.on(day));
                forTarget += playForTarget(limit, today, random) >= 0 ? 1 : 0;
                forMean += playForMean(limit, today, random) >= 0 ? 1 : 0;
            }
            double target = (double) forTarget / rounds;
            double mean = (double) forMean / rounds;
            System.out.printf(
                    "%s, %d or better: target play %.4f (solver %.4f), mean play %.4f (solver %.4f), +- %.4f%n",
                    name,
                    limit,
                    target,
                    solution.targetPlay(limit),
                    mean,
                    solution.meanPlay(limit),
                    Math.sqrt(target * (1 - target) / rounds));
            assertThat(solution.targetPlay(limit))
                    .isCloseTo(target, within(4 * Math.sqrt(target * (1 - target) / rounds)));
            assertThat(solution.meanPlay(limit)).isCloseTo(mean, within(4 * Math.sqrt(mean * (1 - mean) / rounds)));
        }

        private int playForTarget(int limit, StrikeModel today, RandomGenerator random) {
            int inHand = limit;
            for (int i = 0; i < holes.size(); i++) {
                HoleTarget hole = solution.holes().get(i);
                GreenPlay green = new TargetGreenPlay(odds.putt(), hole, inHand);
                inHand -= play(i, today, green, hole.policy(inHand), random);
            }
            return inHand;
        }

        private int playForMean(int limit, StrikeModel today, RandomGenerator random) {
            int inHand = limit;
            for (int i = 0; i < holes.size(); i++) {
                inHand -= play(i, today, new LevelGreenPlay(odds), holes.get(i).mean, random);
            }
            return inHand;
        }

        private int play(int i, StrikeModel today, GreenPlay green, Policy policy, RandomGenerator random) {
            PlayedHole hole = holes.get(i);
            return new PlayOut(hole.map, hole.tee, today, green, policy)
                    .play(random)
                    .strokes();
        }
    }
}
