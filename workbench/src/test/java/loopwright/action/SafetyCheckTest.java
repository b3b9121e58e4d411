package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.numerics.Watch;
import loopwright.player.DayEffect;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayerProfile;
import org.junit.jupiter.api.Test;

/** A plan must warn where people may be: a road along a hole on which drives finish. */
class SafetyCheckTest {
    private static final Place TEE = new Place(0, 0);
    private static final Place GREEN = new Place(0, 330);

    private final PlayerProfile player =
            new PlayerProfile(PlayerPrior.of(95, Player.Hand.RIGHT).player("test"), DayEffect.ASSUMED);

    @Test
    void aRoadInPlayIsFlagged() {
        List<RoundPlan.Risk> risks = teeShotBeside(14);
        assertThat(risks).anySatisfy(r -> {
            assertThat(r.where()).isEqualTo("on or by a road");
            assertThat(r.isFlagged()).as("chance %s", r.chance()).isTrue();
        });
    }

    /** A shot over a road is no finish on it, and yet everybody on it is under the ball. */
    @Test
    void aRoadThatIsPlayedOverIsFlagged() {
        Course course = course(new Place(-60, 150), new Place(60, 156));
        SafetyCheck check = new SafetyCheck(new CourseMap(course, course.holes().get(0)));
        List<RoundPlan.Risk> risks =
                check.of(TEE, List.of(new Place(0, 200), new Place(5, 140), new Place(100, 200), new Place(0, 153)));
        // over it; short, 10 m off; round its end; on it
        assertThat(risks)
                .containsExactlyInAnyOrder(
                        new RoundPlan.Risk("across a road", 0.25, 0.005),
                        new RoundPlan.Risk("on or by a road", 0.25, 0.005));
    }

    @Test
    void besideARoadIsAsGoodAsOnIt() {
        Course course = course(new Place(14, -20), new Place(22, 400));
        SafetyCheck check = new SafetyCheck(new CourseMap(course, course.holes().get(0)));
        // the map is off by some 4 yd, and people stand at the kerb
        assertThat(check.of(TEE, List.of(new Place(11, 200), new Place(9, 200))))
                .containsExactly(new RoundPlan.Risk("on or by a road", 0.5, 0.005));
    }

    /** Two balls of four hundred beside a road are told; on one of the course's own paths it takes twenty. */
    @Test
    void aRoadIsWarnedOfFromOneInTwoHundredAPathFromOneInTwenty() {
        assertThat(flagged(AreaKind.ROAD, 2)).containsExactly("on or by a road");
        assertThat(flagged(AreaKind.ROAD, 1)).isEmpty();
        assertThat(flagged(AreaKind.PATH, 20)).containsExactly("on a path");
        assertThat(flagged(AreaKind.PATH, 19)).isEmpty();
    }

    private static List<String> flagged(AreaKind kind, int on) {
        Course course = course(kind, new Place(14, -20), new Place(22, 400));
        SafetyCheck check = new SafetyCheck(new CourseMap(course, course.holes().get(0)));
        List<Place> finishes = new ArrayList<>(Collections.nCopies(on, new Place(18, 200)));
        finishes.addAll(Collections.nCopies(400 - on, new Place(0, 200)));
        return check.of(TEE, finishes).stream()
                .filter(RoundPlan.Risk::isFlagged)
                .map(RoundPlan.Risk::where)
                .toList();
    }

    @Test
    void aRoadOutOfReachIsNot() {
        assertThat(teeShotBeside(200)).noneMatch(RoundPlan.Risk::isFlagged);
    }

    /** Risks of the planned tee shot where a road 8 m wide runs along the hole, so far right of its line. */
    private List<RoundPlan.Risk> teeShotBeside(double metres) {
        Course course = course(new Place(metres, -20), new Place(metres + 8, 400));
        CourseFiles courses = new OneCourse(course);
        PlanRound planning = new PlanRound(courses, new OnePlayer(player), (p, t) -> {}, folder -> {
            throw new IllegalStateException("no audit is asked for");
        });
        Path none = Path.of("none");
        PlanRequest request = PlanRequest.usual(none, none, "back", 5, "", List.of(), List.of(), List.of(), 1);
        return planning.plan(request, Watch.NONE).holes().get(0).shots().get(0).risks();
    }

    private static Course course(Place southWest, Place northEast) {
        return course(AreaKind.ROAD, southWest, northEast);
    }

    /** A hole, and a road or path between two corners. */
    private static Course course(AreaKind kind, Place southWest, Place northEast) {
        List<Area> areas = new ArrayList<>();
        areas.add(Area.of("fairway", AreaKind.FAIRWAY, box(-15, 100, 12, 330)));
        areas.add(Area.of("road", kind, box(southWest.x(), southWest.y(), northEast.x(), northEast.y())));
        Hole hole = new Hole(
                1,
                4,
                "tag",
                OptionalInt.empty(),
                new Line(List.of(TEE, GREEN)),
                Region.circle(GREEN, 12),
                false,
                GREEN,
                new HoleSurvey(true, true, true, true));
        TeeSet tees = new TeeSet("tees", 0, Map.of(1, new TeePlace(TEE, Optional.empty())));
        return new Course(
                "by the road",
                new LatLon(0, 0),
                Optional.empty(),
                false,
                areas,
                List.of(),
                List.of(hole),
                List.of(tees));
    }

    private static Region box(double west, double south, double east, double north) {
        return Region.of(List.of(
                new Place(west, south), new Place(east, south), new Place(east, north), new Place(west, north)));
    }

    private record OneCourse(Course course) implements CourseFiles {
        @Override
        public CourseImport read(Path file, CourseChoice choice) {
            return new CourseImport(course, List.of());
        }

        @Override
        public List<CourseListing> listCourses(Path file) {
            return List.of();
        }

        @Override
        public void write(Course written, Path target) {
            throw new IllegalStateException("nothing is written");
        }
    }

    private record OnePlayer(PlayerProfile profile) implements PlayerFiles {
        @Override
        public PlayerProfile read(Path file) {
            return profile;
        }

        @Override
        public void write(PlayerProfile written, Path target) {
            throw new IllegalStateException("nothing is written");
        }
    }
}
