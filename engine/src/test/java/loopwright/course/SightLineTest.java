package loopwright.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.HeightField;
import org.junit.jupiter.api.Test;

class SightLineTest {
    private static final Place BALL = new Place(0, 0);
    private static final Place AIM = new Place(0, 200);

    @Test
    void overLevelOpenGroundTheAimIsSeen() {
        assertThat(sight(List.of(), Optional.empty()).sees(BALL, AIM, 0)).isTrue();
    }

    @Test
    void aRidgeHidesTheGroundButNotATallPole() {
        // 5 m high at 100 m: the ray from the eyes (1.6 m) to 8.4 m above the aim passes exactly over it
        SightLine sight = sight(List.of(), Optional.of(ridge()));
        assertThat(sight.findObstacle(BALL, AIM, 2)).get().satisfies(o -> {
            assertThat(o.trees()).isFalse();
            assertThat(o.place().y()).isBetween(60.0, 105.0);
        });
        assertThat(sight.sees(BALL, AIM, 8.3)).isFalse();
        assertThat(sight.sees(BALL, AIM, 8.5)).isTrue();
    }

    @Test
    void aCrownHidesTheAimAndAClearTrunkDoesNot() {
        Tree tree = new Tree("t", new Place(0, 150), 5, 10);
        SightLine sight = sight(List.of(tree), Optional.empty());
        assertThat(sight.findObstacle(BALL, AIM, 6))
                .get()
                .satisfies(o -> assertThat(o.trees()).isTrue());
        // at 150 m the ray to the ground is 0.4 m high, below the lowest branches
        assertThat(sight.sees(BALL, AIM, 0)).isTrue();
    }

    private static HeightField ridge() {
        float[] heights = new float[2 * 41];
        heights[2 * 20] = 5;
        heights[2 * 20 + 1] = 5;
        // two columns 100 m apart, rows 10 m apart from y = -100: row 20 is y = 100
        return new HeightField(2, 41, heights, new HeightField.Grid(0.5, 0.01, 0, 10, 0, 0.1));
    }

    private static SightLine sight(List<Tree> trees, Optional<HeightField> heights) {
        Region green = Region.circle(AIM, 10);
        Hole hole = new Hole(
                1, 4, "tag", OptionalInt.empty(), new Line(List.of(BALL, AIM)), green, false, AIM, HoleSurvey.NOTHING);
        TeeSet tees = new TeeSet("back", 0, Map.of(1, new TeePlace(BALL, Optional.empty())));
        Course course = new Course(
                "test",
                new LatLon(0, 0),
                Optional.empty(),
                false,
                List.of(Area.of("green", AreaKind.GREEN, green)),
                trees,
                List.of(hole),
                List.of(tees),
                heights);
        return new SightLine(course, new CourseMap(course, hole));
    }
}
