package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.Landing;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.player.TouchShot;
import loopwright.putting.ChipIn;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Chips to a hole near the edge of the green: cells must not blur where the ball comes to rest. */
class ChipValueTest {
    private static final Place HOLE = new Place(0.3, 141.2);
    private static final int BALLS = 200_000;
    /** What fine cells may still blur: a tenth of the 0.05 strokes allowed in a round. */
    private static final double BLUR = 0.005;

    private final Player player = PlayerPrior.of(82, Player.Hand.RIGHT).player("test");
    private final StrikeModel strikes = new StrikeModel(player);
    private final CourseMap map = map();
    private final LevelGreenOdds odds = new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3));

    @ParameterizedTest
    @CsvSource({"4.5", "6", "8.5"})
    void aChipIsWorthWhatItsBallsAreWorth(double metres) {
        HoleProblem problem = new HoleProblem(
                map, new Place(0, 0), new Ability(strikes, odds, 1), SolverSettings.STANDARD, ShotRules.FREE);
        HoleRaster raster = problem.raster;
        Place ball = HOLE.offset(0, -metres, 0);
        double column = raster.column(ball);
        double row = raster.row(ball);
        TreeFan trees = problem.treesFrom(column, row, Surface.FAIRWAY, Situation.ORDINARY);
        Spot spot = new Spot(column, row, Surface.FAIRWAY, Situation.ORDINARY, false, trees);
        Evaluator evaluator = new Evaluator(problem);
        evaluator.report(spot, Option.stroke(chip(), raster.column(HOLE), raster.row(HOLE)), 32_768, 0);
        ValueField field = problem.values(new NodeSet(raster, problem.line, 4));
        double[] exact = expectedPutts(metres, raster);
        // Only balls on the green are compared: the value of the others hangs on the rest of the hole.
        assertThat(onTheGreen(evaluator, field, raster)).isCloseTo(exact[0], within(BLUR + 4 * exact[1]));
    }

    private int chip() {
        return IntStream.range(0, strikes.shots())
                .filter(s -> strikes.isTouch(s) && strikes.touch(s).kind() == TouchShot.Kind.CHIP)
                .findFirst()
                .orElseThrow();
    }

    private static double onTheGreen(Evaluator evaluator, ValueField field, HoleRaster raster) {
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < evaluator.size; i++) {
            if (raster.surface(evaluator.code[i]) == Surface.GREEN) {
                sum += evaluator.weight[i] * field.found[evaluator.code[i]];
                weight += evaluator.weight[i];
            }
        }
        return sum / weight;
    }

    /**
     * Mean putts of balls that come to rest on the green, none where one drops in, and its standard error. The edge of the
     * green is the raster's, a yard coarse: which balls reach the green is not what is compared here, and by the polygon
     * one in a hundred of them, three metres from the hole, would be left out.
     */
    private double[] expectedPutts(double metres, HoleRaster raster) {
        SplittableRandom random = new SplittableRandom(5);
        Landing landing = new Landing();
        double sum = 0;
        double squares = 0;
        int n = 0;
        for (int i = 0; i < BALLS; i++) {
            strikes.strike(
                    chip(),
                    metres,
                    strikes.lie(chip(), Surface.FAIRWAY, Situation.ORDINARY),
                    random.nextDouble(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    landing);
            double carry = Math.hypot(landing.forwardMetres, landing.rightMetres);
            double grown = carry > 0 ? (carry + landing.runMetres) / carry : 0;
            double past = landing.forwardMetres * grown - metres;
            double distance = Math.hypot(past, landing.rightMetres * grown);
            Place rest = HOLE.offset(0, past, landing.rightMetres * grown);
            if (raster.surface(raster.cell(raster.column(rest), raster.row(rest))) == Surface.GREEN) {
                double putts = distance <= ChipIn.RADIUS_METRES ? 0 : odds.expectedPutts(distance);
                sum += putts;
                squares += putts * putts;
                n++;
            }
        }
        double mean = sum / n;
        return new double[] {mean, Math.sqrt((squares / n - mean * mean) / n)};
    }

    private static CourseMap map() {
        Line line = new Line(List.of(new Place(0, 0), HOLE));
        Region green = Region.circle(new Place(0, 150), 12);
        HoleSurvey survey = new HoleSurvey(true, true, true, true);
        Hole hole = new Hole(1, 3, "tag", OptionalInt.empty(), line, green, false, HOLE, survey);
        List<Area> areas = List.of(TestCourses.area("collar", AreaKind.FAIRWAY, Region.circle(HOLE, 30)));
        Course course = TestCourses.course(areas, line.places(), 3, TestCourses.rectangle(-90, -60, 90, 230));
        return new CourseMap(course, hole);
    }
}
