package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.numerics.Watch;
import loopwright.player.Club;
import loopwright.player.Evidence;
import loopwright.player.Mishit;
import loopwright.player.Player;
import loopwright.player.ShotPattern;
import loopwright.player.StrikeModel;
import loopwright.player.Swing;
import loopwright.putting.PuttingOdds;
import loopwright.putting.PuttingSkillPrior;

/**
 * A hole on which the whole solver plays Hardy's game. Small fairways lie a stride of 40 yd apart on a line, out of
 * bounds everywhere else, and the club moves the ball one stride, two (good) or none (bad), to the millimetre. A ball
 * {@code par} strides on has found the green and is putted out with one putt. From the tee alone a second club finds a
 * far corner of the green for certain, from where {@code safe} putts are needed. Taking one stroke off for the putt, the
 * hole is Hardy's; the far corner is a safe score.
 */
final class TinyHole {
    private static final double STRIDE = 40 * HoleRaster.CELL_METRES;
    private static final double EXACTLY = 1e-9;

    private final int par;
    private final int safe;
    private final double good;
    private final double bad;

    TinyHole(int par, int safe, double good, double bad) {
        this.par = par;
        this.safe = safe;
        this.good = good;
        this.bad = bad;
    }

    private static ShotPattern pattern(double strides, List<Mishit> mishits) {
        return new ShotPattern(strides * STRIDE, EXACTLY, 0, EXACTLY, 0, 0, 20, 0.7, mishits);
    }

    /** Clubs for the tee alone: the far one, Hardy's and a steady one; for the fairway Hardy's and a steady one. */
    private Player player() {
        List<Swing> swings = List.of(
                swing("far", Club.Family.DRIVER, par + 3, List.of()),
                swing("tee", Club.Family.DRIVER, 1, luck()),
                swing("fairway", Club.Family.IRON, 1, luck()),
                swing("steady tee", Club.Family.DRIVER, 1, List.of()),
                swing("steady fairway", Club.Family.IRON, 1, List.of()));
        return new Player("test", Player.Hand.RIGHT, 80, swings, List.of(), PuttingSkillPrior.ofLevel(80), -1);
    }

    private static Swing swing(String name, Club.Family family, double strides, List<Mishit> mishits) {
        return new Swing(new Club(name, family), Swing.FULL, pattern(strides, mishits), Evidence.ASSUMED);
    }

    private List<Mishit> luck() {
        return List.of(
                new Mishit(Mishit.Kind.THIN, good, 2, 0, 0, 0, false),
                new Mishit(Mishit.Kind.FAT, bad, 0, 0, 0, 0, false));
    }

    /** One putt from near the hole, {@code safe} from the far corner. */
    private PuttingOdds odds() {
        double near = 1.5 * STRIDE;
        return new PuttingOdds() {
            @Override
            public double expectedPutts(double metres) {
                return metres < near ? 1 : safe;
            }

            @Override
            public double probability(double metres, int putts) {
                return putts == (metres < near ? 1 : safe) ? 1 : 0;
            }
        };
    }

    /** Fairways and green, joined by strips too thin to hold the centre of a cell. */
    private Region inBounds() {
        double half = 3 * HoleRaster.CELL_METRES;
        double thin = 0.01;
        List<Place> right = new ArrayList<>();
        for (int i = 0; i < par; i++) {
            right.add(new Place(thin, i * STRIDE - half));
            right.add(new Place(half, i * STRIDE - half));
            right.add(new Place(half, i * STRIDE + half));
            right.add(new Place(thin, i * STRIDE + half));
        }
        right.add(new Place(thin, (par - 0.4) * STRIDE));
        right.add(new Place(20, (par - 0.4) * STRIDE));
        right.add(new Place(20, (par + 3.4) * STRIDE));
        List<Place> all = new ArrayList<>(right);
        for (int i = right.size() - 1; i >= 0; i--) {
            all.add(new Place(-right.get(i).x(), right.get(i).y()));
        }
        return Region.of(all);
    }

    private Course course() {
        double half = 3 * HoleRaster.CELL_METRES;
        List<loopwright.course.Area> areas = new ArrayList<>();
        for (int i = 0; i < par; i++) {
            areas.add(TestCourses.area(
                    "fairway-" + i,
                    AreaKind.FAIRWAY,
                    TestCourses.rectangle(-half, i * STRIDE - half, half, i * STRIDE + half)));
        }
        Place hole = new Place(0, (par + 0.5) * STRIDE);
        Region green = TestCourses.rectangle(-20, (par - 0.4) * STRIDE, 20, (par + 3.4) * STRIDE);
        return TestCourses.courseWithGreen(areas, List.of(new Place(0, 0), hole), Math.max(3, par), inBounds(), green);
    }

    private HoleProblem problem(Set<Integer> forbidden) {
        Course course = course();
        return new HoleProblem(
                new CourseMap(course, course.holes().get(0)),
                new Place(0, 0),
                new Ability(new StrikeModel(player()), odds(), 1),
                SolverSettings.STANDARD.onNodesAlone(),
                new ShotRules(forbidden, Set.of(0, 1, 3)));
    }

    /** The hole with both ways to play it. */
    TargetHole withSafety(ScoreTable table) {
        return solved(Set.of(3, 4), table);
    }

    /** Hardy's game alone. */
    TargetHole hardy(ScoreTable table) {
        return solved(Set.of(0, 3, 4), table);
    }

    /** Hardy's game in which every stroke may also be played steadily: always one stride. */
    TargetHole strokeByStroke(ScoreTable table) {
        return solved(Set.of(0), table);
    }

    private TargetHole solved(Set<Integer> forbidden, ScoreTable table) {
        MeanSolution mean = MeanSolver.solve(problem(forbidden), Watch.NONE);
        return new TargetHole(mean, mean.evaluate(Watch.NONE), table);
    }
}
