package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.AreaSurvey;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.LocalRule;
import loopwright.course.TreeCover;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.rules.Relief;
import loopwright.scoring.LevelGreenPlay;
import loopwright.scoring.PlayOut;
import loopwright.scoring.PlayedMean;
import org.junit.jupiter.api.Test;

/**
 * Local rules and the survey, solver and referee on the same tiny cases, solved by hand. In the solver every ball found
 * off the green is worth the same number; the referee's policy puts the ball on the green by hand.
 */
class LocalRuleTest {
    /** Rounding of a few hundred additions of numbers below ten. */
    private static final double EXACT = 1e-9;

    private static final Set<LocalRule> E5 = Set.of(LocalRule.DROP_INSTEAD_OF_STROKE_AND_DISTANCE);
    private static final Place TEE = new Place(0, 0);

    private final Player player = PlayerPrior.of(90, Player.Hand.RIGHT).player("test");
    private final StrikeModel strikes = new StrikeModel(player);
    private final LevelGreenOdds odds = new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3));

    private static CourseMap map(Course course, Set<LocalRule> rules) {
        Course ruled = TestCourses.withLocalRules(course, rules);
        return new CourseMap(ruled, ruled.holes().get(0));
    }

    /** A hole whose bounds end 3 m right of the tee and that has nothing else in it. */
    private static Course besideTheBounds() {
        return TestCourses.course(
                List.of(), List.of(TEE, new Place(0, 360)), 4, TestCourses.rectangle(-300, -60, 3, 430));
    }

    /** The same with a ball lost a quarter of the time, wherever it lies. */
    private static Course lostAQuarter() {
        Area thick = new Area("thick", AreaKind.DEEP_ROUGH, TestCourses.rectangle(-300, -60, 300, 430), 0.25);
        return TestCourses.course(
                List.of(thick), List.of(TEE, new Place(0, 360)), 4, TestCourses.rectangle(-300, -60, 300, 430));
    }

    /** Expected strokes of a stroke with the longest club at a place, every ball found counting {@code found}. */
    private double solved(CourseMap map, Place ball, Surface lie, int shot, Place target, double found) {
        Ability ability = new Ability(strikes, odds, 1);
        HoleProblem problem = new HoleProblem(map, TEE, ability, SolverSettings.STANDARD, ShotRules.FREE);
        ValueField field = problem.values(new NodeSet(problem.raster, problem.line, 16));
        Arrays.fill(field.nodeValue, found);
        Evaluator evaluator = new Evaluator(problem);
        double column = problem.raster.column(ball);
        double row = problem.raster.row(ball);
        Spot spot = new Spot(
                column,
                row,
                lie,
                Situation.ORDINARY,
                lie == Surface.TEE,
                problem.treesFrom(column, row, lie, Situation.ORDINARY));
        evaluator.play(spot, Option.stroke(shot, problem.raster.column(target), problem.raster.row(target)), 64);
        field.refreshAll();
        return evaluator.value(field, 4);
    }

    /** The referee's score of a first stroke; from then on the policy places the ball on the green, two putts away. */
    private PlayOut.HoleScore refereed(CourseMap map, Place ball, Surface lie, Choice.Stroke first, long seed) {
        PlayOut referee = new PlayOut(map, TEE, strikes, (from, cup, random) -> 2, new ByHand());
        return referee.playFirst(first, ball, lie, Situation.ORDINARY, new SplittableRandom(seed));
    }

    /** Prefers the nearest drop over a replay, and then puts the ball on the green for nothing. */
    private static class ByHand implements Policy {
        @Override
        public Choice choose(Place ball, Surface surface, Situation situation) {
            return new Choice.Unplayable(
                    new Relief.Option(Relief.Kind.LATERAL, new Place(0, 355), 0, "placed by the test"));
        }

        @Override
        public double value(Place ball, Surface surface, Situation situation) {
            return 100;
        }

        @Override
        public double valueOfDrop(Place place, Surface surface) {
            return place.distanceTo(new Place(0, 360)) / 1000;
        }
    }

    private static final Place RIGHT = new Place(200, 20);

    @Test
    void aBallOutOfBoundsCostsTheStrokeTwoMoreAndTheDrop() {
        // v = 1 + min(2 + 3, 1 + v) = 6: the stroke, two penalty strokes, three from the drop
        assertThat(solved(map(besideTheBounds(), E5), TEE, Surface.TEE, 0, RIGHT, 3))
                .isCloseTo(6, within(EXACT));
        // the stroke, two penalty strokes, two putts
        var score = refereed(map(besideTheBounds(), E5), TEE, Surface.TEE, new Choice.Stroke(0, RIGHT), 1);
        assertThat(score.strokes()).isEqualTo(5);
        assertThat(score.penaltyStrokes()).isEqualTo(2);
    }

    @Test
    void withoutTheRuleTheSameBallIsReplayed() {
        assertThat(solved(map(besideTheBounds(), Set.of()), TEE, Surface.TEE, 0, RIGHT, 3))
                .isInfinite();
        // the stroke, one penalty stroke, two putts
        var score = refereed(map(besideTheBounds(), Set.of()), TEE, Surface.TEE, new Choice.Stroke(0, RIGHT), 1);
        assertThat(score.strokes()).isEqualTo(4);
        assertThat(score.penaltyStrokes()).isEqualTo(1);
    }

    @Test
    void aBallLostAQuarterOfTheTimeIsWeighedByIt() {
        Place ahead = new Place(0, 300);
        // v = 1 + 3/4 * 3 + 1/4 * (2 + 3)
        assertThat(solved(map(lostAQuarter(), E5), TEE, Surface.TEE, 0, ahead, 3))
                .isCloseTo(4.5, within(EXACT));
        // v = 1 + 3/4 * 3 + 1/4 * (1 + v), so v = 3.5 / 0.75
        assertThat(solved(map(lostAQuarter(), Set.of()), TEE, Surface.TEE, 0, ahead, 3))
                .isCloseTo(3.5 / 0.75, within(EXACT));
        int lost = 0;
        for (int seed = 0; seed < 4000; seed++) {
            var score = refereed(map(lostAQuarter(), E5), TEE, Surface.TEE, new Choice.Stroke(0, ahead), seed);
            assertThat(score.strokes()).isEqualTo(3 + score.penaltyStrokes());
            assertThat(score.penaltyStrokes()).isIn(0, 2);
            lost += score.penaltyStrokes() / 2;
        }
        // four standard errors of 4,000 draws of a quarter
        assertThat(lost / 4000.0).isCloseTo(0.25, within(4 * Math.sqrt(0.25 * 0.75 / 4000)));
    }

    @Test
    void strokeAndDistanceStaysOpenWhereItIsBetter() {
        // found balls are worth 0.2, so a replay costs 1 + v = 2.2 and the local rule 2.2 as well; a dearer drop loses
        double v = solved(map(lostAQuarter(), E5), TEE, Surface.TEE, 0, new Place(0, 300), 0.2);
        assertThat(v).isCloseTo(1 + 0.75 * 0.2 + 0.25 * Math.min(2.2, 1 + v), within(EXACT));
    }

    @Test
    void aDroppingZoneIsTakenForOneStroke() {
        Course water = TestCourses.course(
                List.of(TestCourses.area("lake", AreaKind.YELLOW_PENALTY_AREA, TestCourses.rectangle(-90, 5, 90, 330))),
                List.of(TEE, new Place(0, 360)),
                4,
                TestCourses.rectangle(-90, -60, 90, 430));
        Place zone = new Place(20, 335);
        Course zoned = TestCourses.withLocalRules(water, Set.of(LocalRule.DROP_ZONE));
        zoned = zoned.withHoles(zoned.holes().stream()
                .map(h -> h.withSurvey(h.survey().withNotes(h.survey().notes().withDropZone(zone))))
                .toList());
        CourseMap map = new CourseMap(zoned, zoned.holes().get(0));
        List<Relief.Option> options = Relief.fromPenaltyArea(map, new Place(0, 4.9), Surface.YELLOW_PENALTY_AREA);
        assertThat(options)
                .filteredOn(o -> o.place().equals(zone))
                .singleElement()
                .satisfies(o -> {
                    assertThat(o.penaltyStrokes()).isEqualTo(1);
                    assertThat(o.rule()).isEqualTo("MLR E-1");
                });
        Place ahead = new Place(0, 300);
        // v = 1 + 1 + 3: the stroke, the penalty stroke, three from the drop
        assertThat(solved(map, TEE, Surface.TEE, 0, ahead, 3)).isCloseTo(5, within(EXACT));
        var score = refereed(map, TEE, Surface.TEE, new Choice.Stroke(0, ahead), 1);
        assertThat(score.strokes()).isEqualTo(4);
        assertThat(score.penaltyStrokes()).isEqualTo(1);
    }

    @Test
    void aBallThatDoesNotClearTheFaceLiesWhereItLay() {
        Course course = TestCourses.course(
                List.of(new Area(
                        "pit",
                        AreaKind.BUNKER,
                        TestCourses.rectangle(-6, 300, 6, 312),
                        0,
                        AreaSurvey.NOTHING.withBunker(10, 2))),
                List.of(TEE, new Place(0, 360)),
                4,
                TestCourses.rectangle(-90, -60, 90, 430));
        CourseMap map = map(course, Set.of());
        Place ball = new Place(0.3, 306.2);
        int bunkerShot = shot("bunker shot");
        assertThat(solved(map, ball, Surface.BUNKER, bunkerShot, new Place(0, 330), 3))
                .isCloseTo(4, within(EXACT));
        for (int seed = 0; seed < 50; seed++) {
            Watching watching = new Watching();
            new PlayOut(map, TEE, strikes, (from, cup, random) -> 2, watching)
                    .playFirst(
                            new Choice.Stroke(bunkerShot, new Place(0, 330)),
                            ball,
                            Surface.BUNKER,
                            Situation.ORDINARY,
                            new SplittableRandom(seed));
            assertThat(watching.places).containsExactly(ball);
        }
    }

    /** Plays by hand and notes where from. */
    private static final class Watching extends ByHand {
        private final List<Place> places = new ArrayList<>();
        private final List<Situation> situations = new ArrayList<>();

        @Override
        public Choice choose(Place at, Surface surface, Situation situation) {
            places.add(at);
            situations.add(situation);
            return super.choose(at, surface, situation);
        }
    }

    private int shot(String label) {
        for (int s = 0; s < strikes.shots(); s++) {
            if (strikes.label(s).equals(label)) {
                return s;
            }
        }
        throw new IllegalArgumentException(label);
    }

    @Test
    void withPreferredLiesEveryBallInTheFairwayIsPlaced() {
        Course open = TestCourses.course(
                List.of(TestCourses.area("fairway", AreaKind.FAIRWAY, TestCourses.rectangle(-80, 5, 80, 420))),
                List.of(TEE, new Place(0, 360)),
                4,
                TestCourses.rectangle(-90, -60, 90, 430));
        CourseMap map = map(open, Set.of(LocalRule.PREFERRED_LIES));
        HoleProblem problem =
                new HoleProblem(map, TEE, new Ability(strikes, odds, 1), SolverSettings.STANDARD, ShotRules.FREE);
        NodeSet nodes = new NodeSet(problem.raster, problem.line, 16);
        for (int s = 0; s < nodes.states; s++) {
            if (nodes.surface[nodes.nodeOfState[s]] == Surface.FAIRWAY) {
                assertThat(nodes.situation[s]).isEqualTo(Situation.SITTING_UP);
                assertThat(nodes.probability[s]).isEqualTo(1);
            }
        }
        Watching watching = new Watching();
        new PlayOut(map, TEE, strikes, (from, cup, random) -> 2, watching)
                .playFirst(
                        new Choice.Stroke(0, new Place(0, 300)),
                        TEE,
                        Surface.TEE,
                        Situation.ORDINARY,
                        new SplittableRandom(1));
        assertThat(watching.situations).containsExactly(Situation.SITTING_UP);
        int iron = shot("7-iron");
        double ordinary = strikes.mishitRate(iron, 0, strikes.lie(iron, Surface.FAIRWAY, Situation.ORDINARY));
        assertThat(strikes.mishitRate(iron, 0, strikes.lie(iron, Surface.FAIRWAY, Situation.SITTING_UP)))
                .isCloseTo(0.9 * ordinary, within(EXACT));
    }

    @Test
    void theTreesOfTheSurveyAreThoseOfTheMap() {
        Course course = TestCourses.parFour();
        TreeCover hedge = new TreeCover(5, 0.5, 3);
        Course surveyed = course.withAreas(course.areas().stream()
                .map(a -> a.id().equals("wood") ? a.withSurvey(a.survey().withTrees(hedge)) : a)
                .toList());
        CourseMap map = map(surveyed, Set.of());
        HoleProblem problem =
                new HoleProblem(map, TEE, new Ability(strikes, odds, 1), SolverSettings.STANDARD, ShotRules.FREE);
        int cell = problem.raster.cell(new Place(40, 150));
        assertThat(problem.raster.trees(cell)).isEqualTo(hedge).isEqualTo(map.findTreesAt(40, 150));
    }

    @Test
    void theRefereeAgreesOnAHoleWithAllOfIt() {
        Course course = TestCourses.parFour();
        List<Area> areas = new ArrayList<>();
        for (Area a : course.areas()) {
            areas.add(
                    switch (a.kind()) {
                        case BUNKER -> a.withSurvey(AreaSurvey.NOTHING.withBunker(1.5, 0.5));
                        case WOODS ->
                            a.withSurvey(AreaSurvey.NOTHING.withTrees(new TreeCover(8, 1, 2)))
                                    .withNotFoundChance(0.3);
                        default -> a;
                    });
        }
        CourseMap map = map(
                course.withAreas(areas),
                Set.of(LocalRule.DROP_INSTEAD_OF_STROKE_AND_DISTANCE, LocalRule.PREFERRED_LIES));
        Ability ability = new Ability(strikes, odds, 1);
        MeanSolution solution = MeanSolver.solve(
                new HoleProblem(map, TEE, ability, SolverSettings.STANDARD, ShotRules.FREE), Watch.NONE);
        PolicyEvaluation evaluation = solution.evaluate(Watch.NONE);
        PlayOut referee = new PlayOut(map, TEE, strikes, new LevelGreenPlay(odds), solution.policy(evaluation));
        SplittableRandom random = new SplittableRandom(7);
        PlayedMean played = PlayedMean.of(8_000, () -> referee.play(random).strokes());
        // a hundredth of a stroke is what the solver may be off on one hole, as in MeanSolverTest
        assertThat(evaluation.expected()).isCloseTo(played.mean(), within(4 * played.standardError() + 0.01));
        double[] scores = evaluation.scores();
        double lanes = 0;
        for (int k = 0; k < scores.length; k++) {
            lanes += k * scores[k];
        }
        // lanes are kept as floats and cut off at twenty strokes
        assertThat(lanes).isCloseTo(evaluation.expected(), within(2e-3));
    }
}
