package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.HoleNotes;
import loopwright.course.HoleSurvey;
import loopwright.course.SkylineTarget;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.HeightField;
import org.junit.jupiter.api.Test;

/** A hole of 400 m to the north; shots are aimed at a place 200 m ahead. */
class LandmarksTest {
    private static final Place TEE = new Place(0, 0);
    private static final Place AIM = new Place(0, 200);

    private static HeightField ridge() {
        return ridge(100);
    }

    /** Level but for a ridge 6 m high across the line, this far on. */
    private static HeightField ridge(int metres) {
        float[] heights = new float[2 * 61];
        // two columns 100 m apart, rows 10 m apart from y = -100
        int row = (metres + 100) / 10;
        heights[2 * row] = 6;
        heights[2 * row + 1] = 6;
        return new HeightField(2, 61, heights, new HeightField.Grid(0.5, 0.01, 0, 10, 0, 0.1));
    }

    private static Landmarks landmarks(List<Area> areas, Optional<HeightField> heights, SkylineTarget... skyline) {
        HoleNotes notes = HoleNotes.NOTHING;
        for (SkylineTarget t : skyline) {
            notes = notes.withSkylineTarget(t);
        }
        Place end = new Place(0, 400);
        Hole hole = new Hole(
                1,
                4,
                "tag",
                OptionalInt.empty(),
                new Line(List.of(TEE, end)),
                Region.circle(end, 10),
                false,
                end,
                HoleSurvey.NOTHING.withNotes(notes));
        TeeSet tees = new TeeSet("back", 0, Map.of(1, new TeePlace(TEE, Optional.empty())));
        Course course = new Course(
                "test", new LatLon(50, 10), Optional.empty(), true, areas, List.of(), List.of(hole), List.of(tees));
        Course placed = heights.map(course::withHeights).orElse(course);
        return new Landmarks(new CourseMap(placed, hole));
    }

    private static Area area(AreaKind kind, double minX, double minY, double maxX, double maxY) {
        return Area.of(
                kind.name(),
                kind,
                Region.of(List.of(
                        new Place(minX, minY), new Place(maxX, minY), new Place(maxX, maxY), new Place(minX, maxY))));
    }

    @Test
    void overOpenGroundTheAimIsSeenAndTheFlagIsTheLine() {
        Landmarks.Line line = landmarks(List.of(), Optional.empty()).line(TEE, AIM, 0);
        assertThat(line.blind()).isFalse();
        assertThat(line.words()).isEqualTo("the hole");
    }

    @Test
    void overARidgeTheLineIsOverTheRiseThatHidesIt() {
        Landmarks.Line line = landmarks(List.of(), Optional.of(ridge())).line(TEE, AIM, 0);
        assertThat(line.blind()).isTrue();
        // the ridge starts to rise at 90 m and meets the line of sight some metres short of its top: 98 to 109 yd
        assertThat(line.words()).matches("over the rise (9[89]|10\\d) yd ahead, bearing 000");
    }

    @Test
    void aShotAtTheFlagIsNotBlindWhereTheFlagIsSeen() {
        // the aim lies 18 m past the hole, behind a ridge; the flag stands in front of it
        Landmarks.Line line =
                landmarks(List.of(), Optional.of(ridge(410))).line(new Place(0, 300), new Place(0, 418), 0);
        assertThat(line.blind()).isFalse();
        assertThat(line.words()).isEqualTo("the hole");
    }

    @Test
    void aSkylineTargetOnTheLineIsTheLine() {
        Landmarks.Line line = landmarks(
                        List.of(), Optional.of(ridge()), new SkylineTarget("the red chimney", new Place(10, 900)))
                .line(TEE, AIM, 0);
        assertThat(line.blind()).isTrue();
        assertThat(line.words()).isEqualTo("the red chimney");
    }

    @Test
    void aSkylineTargetBesideTheLineIsSaidWithTheAngle() {
        // 900 m on and 79 m to the right: 5 degrees
        Landmarks.Line line = landmarks(
                        List.of(), Optional.of(ridge()), new SkylineTarget("the red chimney", new Place(79, 900)))
                .line(TEE, AIM, 0);
        assertThat(line.words()).isEqualTo("5 degrees left of the red chimney");
    }

    @Test
    void woodsAcrossTheLineHideTheAim() {
        Landmarks.Line line = landmarks(List.of(area(AreaKind.WOODS, -50, 60, 50, 80)), Optional.empty())
                .line(TEE, new Place(0, 90), 0);
        // from eyes at 1.6 m to hips at 1 m one sees under branches that begin at 2 m
        assertThat(line.blind()).isFalse();
        Area hedge = area(AreaKind.WOODS, -50, 60, 50, 80);
        hedge = hedge.withSurvey(hedge.survey().withTrees(new loopwright.course.TreeCover(8, 0)));
        line = landmarks(List.of(hedge), Optional.empty()).line(TEE, new Place(0, 90), 0);
        assertThat(line.blind()).isTrue();
        assertThat(line.words()).matches("over the trees 6[567] yd ahead, bearing 000");
    }

    @Test
    void aBunkerBehindTheRidgeIsNoLandmark() {
        Area bunker = area(AreaKind.BUNKER, -4, 220, 3, 226);
        assertThat(landmarks(List.of(bunker), Optional.empty())
                        .line(TEE, new Place(2.4, 200), 0)
                        .words())
                .isIn("the right edge of the left bunker", "the hole");
        assertThat(landmarks(List.of(bunker), Optional.of(ridge()))
                        .line(TEE, AIM, 0)
                        .words())
                .doesNotContain("bunker");
    }

    @Test
    void ofTwoBunkersOnASideTheDistanceSaysWhich() {
        Area near = area(AreaKind.BUNKER, 16, 190, 24, 200);
        Area far = area(AreaKind.BUNKER, 30, 260, 38, 270);
        Place left = new Place(16, 200);
        // both lie right of the line to the hole; the aim is the left edge of the nearer one, 196 m = 214 yd out
        assertThat(landmarks(List.of(near), Optional.empty()).line(TEE, left, 0).words())
                .isEqualTo("the left edge of the right bunker");
        assertThat(landmarks(List.of(near, far), Optional.empty())
                        .line(TEE, left, 0)
                        .words())
                .isEqualTo("the left edge of the bunker at 214 yd");
    }

    @Test
    void bunkersThatDistanceDoesNotTellApartAreNoLandmark() {
        Area one = area(AreaKind.BUNKER, 6, 190, 14, 200);
        Area other = area(AreaKind.BUNKER, 18, 191, 26, 201);
        assertThat(landmarks(List.of(one, other), Optional.empty())
                        .line(TEE, new Place(6, 197), 0)
                        .words())
                .doesNotContain("bunker");
    }

    @Test
    void anAimBesideALandmarkIsToldInPacesFromIt() {
        // 4 degrees right of the hole, which stands 400 m on: 28 m, 31 paces
        assertThat(landmarks(List.of(), Optional.empty())
                        .line(TEE, TEE.along(Math.toRadians(4), 200), 14)
                        .words())
                .matches("\\d+ paces right of the (green|hole)");
        assertThat(landmarks(List.of(), Optional.empty())
                        .line(TEE, TEE.along(Math.toRadians(20), 200), 68)
                        .words())
                .isEqualTo("74 paces right of the line of play");
    }

    @Test
    void besideAThingItsNameIsEnoughInsideItTheEdgeIsNeeded() {
        Area bunker = area(AreaKind.BUNKER, 30, 190, 38, 200);
        // its left corner stands 2.7 degrees right of the aim, 202 m away: 9 m
        assertThat(landmarks(List.of(bunker), Optional.empty())
                        .line(TEE, new Place(20, 195), 20)
                        .words())
                .matches("(9|10|11) paces left of the right bunker");
        Area wood = area(AreaKind.WOODS, 20, 150, 120, 260);
        assertThat(landmarks(List.of(wood), Optional.empty())
                        .line(TEE, new Place(33, 180), 33)
                        .words())
                .matches("\\d+ paces right of the left edge of the right wood");
    }

    @Test
    void aPlainNameComesBeforeOneWithADistance() {
        Area near = area(AreaKind.BUNKER, 20, 190, 28, 200);
        Area far = area(AreaKind.BUNKER, 30, 260, 38, 270);
        Area wood = area(AreaKind.WOODS, 24, 150, 44, 165);
        Place aim = new Place(13, 200);
        assertThat(landmarks(List.of(near, far), Optional.empty())
                        .line(TEE, aim, 13)
                        .words())
                .matches("\\d+ paces (left of the bunker at 214 yd|right of the (hole|green))");
        assertThat(landmarks(List.of(near, far, wood), Optional.empty())
                        .line(TEE, aim, 13)
                        .words())
                .doesNotContain(" yd");
    }

    @Test
    void aBookInMetresTellsLandmarksInMetres() {
        assertThat(LengthUnit.METRES.told("the left edge of the bunker at 210 yd"))
                .endsWith("at 192 m");
        assertThat(LengthUnit.METRES.told("20 paces left of the hole")).isEqualTo("18 paces left of the hole");
        assertThat(LengthUnit.YARDS.told("at 210 yd")).isEqualTo("at 210 yd");
    }
}
