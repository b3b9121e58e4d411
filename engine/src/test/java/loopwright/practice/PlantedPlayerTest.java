package loopwright.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.geo.Place;
import loopwright.numerics.Watch;
import loopwright.player.Habit;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.ScoreTable;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import loopwright.strategy.TestCourses;
import org.junit.jupiter.api.Test;

/** Invented players with one weakness each, on a par 4 with trouble: the hours go there. */
class PlantedPlayerTest {
    private static final Player USUAL = PlayerPrior.of(90, Player.Hand.RIGHT).player("invented");
    private static final GreenSpeed SPEED = GreenSpeed.ofRollMetres(3.048);
    private static final PracticeHours HOURS = new PracticeHours(
            8, 16, Map.of(Facility.RANGE, 16, Facility.SHORT_GAME_AREA, 16, Facility.GREEN, 16), Map.of(), 16);

    @Test
    void aWildDriverGoesToTheRangeWithHisDriver() {
        assertThat(firsts(Skill.DRIVER_DIRECTION.of(USUAL, 1.6))).contains(Skill.DRIVER_DIRECTION);
    }

    @Test
    void aPoorLagPutterWorksOnPace() {
        assertThat(firsts(Skill.PACE.of(USUAL, 2.2))).contains(Skill.PACE);
    }

    /** Weak with the wedges at any length: who pitches as usual plays pitches instead, and the pitch is worth the hours. */
    @Test
    void weakWedgesGetTheHours() {
        Player weak = Skill.PITCH.of(Skill.FULL_WEDGES.of(Skill.PARTIAL_WEDGES.of(USUAL, 2.0), 2.0), 2.0);
        assertThat(firsts(weak)).containsAnyOf(Skill.PARTIAL_WEDGES, Skill.FULL_WEDGES, Skill.PITCH);
    }

    /** The plan leaves a wild driver in the bag: by that plan alone mending it would be worth nothing. */
    @Test
    void mendingWhatAPlanDoesWithoutIsWorthWhatANewPlanMakesOfIt() {
        Player wild = Skill.DRIVER_DIRECTION.of(USUAL, 1.8);
        PracticeRound round = round(wild);
        double mended = SkillGradient.change(round, Skill.DRIVER_DIRECTION, 1 / 1.8, Watch.NONE)
                .expected();
        double today = round.at(SkillLevels.PLAN, Watch.NONE).expected();
        double renewed = round(Skill.DRIVER_DIRECTION.of(wild, 1 / 1.8))
                        .at(SkillLevels.PLAN, Watch.NONE)
                        .expected()
                - today;
        assertThat(LearningTable.weaknesses(wild)).containsExactly(Skill.DRIVER_DIRECTION);
        // two solutions and their clouds, each good to 0.02 strokes
        assertThat(mended).isLessThan(-0.1).isCloseTo(renewed, within(0.04));
    }

    /** The skill that most blocks go to, or several that share the first place. */
    private static List<Skill> firsts(Player player) {
        PracticeRound round = round(player);
        LearningTable curves = LearningTable.assumed(player);
        Map<Skill, List<RoundOdds>> changes = new EnumMap<>(Skill.class);
        for (Skill skill : curves.curves().keySet()) {
            changes.put(
                    skill,
                    SkillResponse.levels(skill, curves.get(skill).floor()).stream()
                            .map(left -> SkillGradient.change(round, skill, left, Watch.NONE))
                            .toList());
        }
        TimeSplit split = new SplitSearch(HOURS, curves, SkillResponse.of(round, curves, changes)).best();
        int most = curves.curves().keySet().stream().mapToInt(split::of).max().orElseThrow();
        return curves.curves().keySet().stream()
                .filter(s -> split.of(s) == most)
                .toList();
    }

    private static PracticeRound round(Player player) {
        LevelGreenOdds odds = new LevelGreenOdds(player.putting(), SPEED);
        Ability ability = new Ability(new StrikeModel(player), odds, 1);
        MeanSolution solution = solved(ability);
        PracticeHole hole = new PracticeHole(
                solution.evaluate(Watch.NONE),
                new HabitPlay(solution, Habit.USUAL).evaluate(Watch.NONE),
                ScoreTable.strokes(),
                ability,
                Watch.NONE);
        if (!LearningTable.weaknesses(player).isEmpty()) {
            Ability mended = new Ability(new StrikeModel(LearningTable.mended(player)), odds, 1);
            hole = hole.withMended(solved(mended).evaluate(Watch.NONE), ability, Watch.NONE);
        }
        return new PracticeRound(List.of(hole), player, ability, SPEED, 1, 5);
    }

    private static MeanSolution solved(Ability ability) {
        Course course = TestCourses.parFour();
        return MeanSolver.solve(
                new HoleProblem(
                        new CourseMap(course, course.holes().get(0)),
                        new Place(0, 0),
                        ability,
                        SolverSettings.FOR_COMPARISON,
                        ShotRules.FREE),
                Watch.NONE);
    }
}
