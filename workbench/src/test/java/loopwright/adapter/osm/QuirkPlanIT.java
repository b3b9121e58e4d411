package loopwright.adapter.osm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import loopwright.action.CourseChoice;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.Choice;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A harmless quirk gives not only the expected record but the very same plan: the same choice from the tee and the same
 * values to the last bit, on the hole of the enriched synthetic map that the quirk touches. Solved coarsely: what is compared is
 * whether anything differs, not how good the plan is. Quirks that give the very same course file ({@link QuirkIT}) are
 * stood for by one of them, the line drawn from the green.
 */
class QuirkPlanIT {
    private static final SolverSettings COARSE = new SolverSettings(32, 16, 16, 16, 16, 32);
    private static final Player PLAYER = PlayerPrior.of(88, Player.Hand.RIGHT).player("test");
    private static final Ability ABILITY =
            new Ability(new StrikeModel(PLAYER), new LevelGreenOdds(PLAYER.putting(), GreenSpeed.ofRollMetres(3)), 1);

    /** Plans of the clean map by hole. */
    private static final Map<Integer, Plan> CLEAN = new TreeMap<>();

    @TempDir
    Path folder;

    /** What a hole's plan consists of. */
    private record Plan(double expected, List<Double> scores, Choice fromTee) {}

    static Stream<Arguments> harmless() {
        return Stream.of(
                mutant("line drawn from the green", 12, m -> Collections.reverse(m.hole(12).nodes)),
                mutant("no pins", 12, m -> m.nodes.values().forEach(n -> n.tags.remove("golf", "pin"))),
                mutant("tee colours in a list", 12, m -> m.golf("tee").forEach(t -> t.tags.put("tee", "gold;white"))),
                mutant("green cut out of its fairway", 1, IslandSketch::cutGreenOut),
                mutant("relation with a missing member", 12, QuirkPlanIT::missingMember),
                mutant("rough that crosses itself", 1, QuirkPlanIT::crossingRough),
                mutant("two courses in one file", 12, QuirkPlanIT::secondCourse));
    }

    private static Arguments mutant(String name, int hole, Consumer<MapSketch> change) {
        return Arguments.of(name, hole, change);
    }

    private static void missingMember(MapSketch m) {
        m.addRelation(
                List.of(
                        new OsmVisitor.Member("way", IslandSketch.GREEN_12, "outer"),
                        new OsmVisitor.Member("way", 1234567, "outer")),
                Map.of("type", "multipolygon", "golf", "rough"));
    }

    private static void crossingRough(MapSketch m) {
        int[][] crossing = {{3000, 3000}, {5000, 5000}, {5000, 3000}, {3000, 5000}, {3000, 3000}};
        m.closedWay(m.hole(1).nodes.get(0), crossing, Map.of("golf", "rough"));
    }

    private static void secondCourse(MapSketch m) {
        m.addCopy(500_000, 1L << 40);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("harmless")
    void theSamePlan(String name, int hole, Consumer<MapSketch> change) throws IOException {
        MapSketch mutant = IslandSketch.enriched();
        change.accept(mutant);
        assertThat(plan(mutant, hole)).isEqualTo(clean(hole));
    }

    private Plan clean(int hole) throws IOException {
        Plan made = CLEAN.get(hole);
        if (made == null) {
            made = plan(IslandSketch.enriched(), hole);
            CLEAN.put(hole, made);
        }
        return made;
    }

    private Plan plan(MapSketch sketch, int hole) throws IOException {
        Path file = Files.writeString(folder.resolve("map.osm"), sketch.toXml(false));
        return plan(new OsmCourseFiles().read(file, CourseChoice.numbered(1)).course(), hole);
    }

    private static Plan plan(Course course, int number) {
        Hole hole = course.getHole(number);
        Place tee = course.teeSets().get(0).getPlace(number).place();
        HoleProblem problem = new HoleProblem(new CourseMap(course, hole), tee, ABILITY, COARSE, ShotRules.FREE);
        MeanSolution solution = MeanSolver.solve(problem, Watch.NONE);
        PolicyEvaluation evaluation = solution.evaluate(Watch.NONE);
        return new Plan(
                evaluation.expected(),
                java.util.Arrays.stream(evaluation.scores()).boxed().toList(),
                solution.policy(evaluation).choose(tee, Surface.TEE, Situation.ORDINARY));
    }
}
