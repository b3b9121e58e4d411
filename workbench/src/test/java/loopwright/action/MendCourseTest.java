package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.MendCourse.Changes;
import loopwright.action.MendCourse.Drawn;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.AreaSurvey;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TreeCover;
import loopwright.geo.Place;
import loopwright.geo.Region;
import org.junit.jupiter.api.Test;

class MendCourseTest {
    private final Course course =
            new OsmCourseFiles().read(Path.of("../demo/course.geojson")).course();

    private Area first(AreaKind kind) {
        return course.areas().stream().filter(a -> a.kind() == kind).findFirst().orElseThrow();
    }

    private static Area find(Course course, String id) {
        return course.areas().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Changes drawn(Drawn d) {
        return new Changes(List.of(d), List.of(), List.of());
    }

    @Test
    void anAreaTakesItsNewShapeAndKeepsWhatElseIsKnown() {
        Area woods = first(AreaKind.WOODS);
        Region moved = woods.region().mapped(p -> new Place(p.x() + 5, p.y()));
        Course mended = MendCourse.apply(course, drawn(new Drawn(woods.id(), AreaKind.WOODS, moved.polygons())));
        Area now = find(mended, woods.id());
        assertThat(now.region().centre().x()).isCloseTo(woods.region().centre().x() + 5, within(1e-6));
        assertThat(now.notFoundChance()).isEqualTo(woods.notFoundChance());
        assertThat(mended.areas()).hasSameSizeAs(course.areas());
    }

    private Area described(AreaKind kind, Map<String, Double> numbers) {
        Area a = first(kind);
        Drawn drawn = new Drawn(a.id(), kind, a.region().polygons(), Optional.of(numbers));
        return find(MendCourse.apply(course, drawn(drawn)), a.id());
    }

    @Test
    void whatIsSaidOfAnAreaIsKeptAndWhatIsNotSaidIsAssumed() {
        Area woods = described(AreaKind.WOODS, Map.of("height", 18.0, "gap", 3.0, "density", 2.0, "lost", 0.4));
        assertThat(woods.survey().trees()).contains(new TreeCover(18, 3, 2));
        assertThat(woods.notFoundChance()).isEqualTo(0.4);
        assertThat(AreaNumbers.of(woods)).isEqualTo(Map.of("height", 18.0, "gap", 3.0, "density", 2.0, "lost", 0.4));
        Area higher = described(AreaKind.WOODS, Map.of("height", 20.0));
        assertThat(higher.survey().trees()).contains(new TreeCover(20, TreeCover.WOODS_DEFAULT.gapMetres()));
        assertThat(higher.notFoundChance()).isEqualTo(Area.defaultNotFoundChance(AreaKind.WOODS));
        assertThat(described(AreaKind.WOODS, Map.of()).survey()).isEqualTo(AreaSurvey.NOTHING);
        AreaSurvey bunker = described(AreaKind.BUNKER, Map.of("depth", 1.5)).survey();
        assertThat(bunker.depthMetres()).hasValue(1.5);
        assertThat(bunker.lipMetres()).isEmpty();
        assertThat(described(AreaKind.FAIRWAY, Map.of("depth", 1.5)).survey()).isEqualTo(AreaSurvey.NOTHING);
    }

    @Test
    void whatCannotBeOfAnAreaIsNamed() {
        for (Map<String, Double> numbers :
                List.of(Map.of("height", 3.0, "gap", 5.0), Map.of("density", 0.0), Map.of("lost", 1.2))) {
            assertThatThrownBy(() -> described(AreaKind.WOODS, numbers))
                    .isInstanceOf(UserFault.class)
                    .hasMessageContaining(first(AreaKind.WOODS).id());
        }
        assertThatThrownBy(() -> described(AreaKind.BUNKER, Map.of("depth", 40.0)))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("depth");
    }

    @Test
    void aLineBecomesAnAreaAsWideAsSaid() {
        Region strip = MendCourse.strip(List.of(new Place(0, 0), new Place(0, 50)), 4);
        assertThat(strip.areaSquareMetres()).isCloseTo(200, within(1e-9));
        assertThat(strip.contains(new Place(1.9, 25))).isTrue();
        assertThatThrownBy(() -> MendCourse.strip(List.of(new Place(3, 3), new Place(3, 3)), 4))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("beginning and an end");
    }

    @Test
    void aCutTakesItsShapeOutOfItsKindOnly() {
        Area fairway = first(AreaKind.FAIRWAY);
        Region hole = Region.circle(fairway.region().insidePlace(), 5);
        Changes cut = new Changes(List.of(), List.of(), List.of(new Drawn("cut", AreaKind.FAIRWAY, hole.polygons())));
        Course mended = MendCourse.apply(course, cut);
        double shared = fairway.region().sharedAreaSquareMetres(hole);
        assertThat(find(mended, fairway.id()).region().areaSquareMetres())
                .isCloseTo(fairway.region().areaSquareMetres() - shared, within(1e-6 * shared));
        assertThat(first(AreaKind.GREEN).region())
                .isSameAs(find(mended, first(AreaKind.GREEN).id()).region());
    }

    @Test
    void aHoleFollowsItsGreen() {
        Hole hole = course.getHole(1);
        Area green = course.areas().stream()
                .filter(a -> a.kind() == AreaKind.GREEN && a.region().contains(hole.holeLocation()))
                .findFirst()
                .orElseThrow();
        Region away = green.region().mapped(p -> new Place(p.x() + 60, p.y()));
        Course mended = MendCourse.apply(course, drawn(new Drawn(green.id(), AreaKind.GREEN, away.polygons())));
        assertThat(mended.getHole(1).green().contains(mended.getHole(1).holeLocation()))
                .isTrue();
        assertThat(mended.getHole(1).green().centre().x())
                .isCloseTo(hole.green().centre().x() + 60, within(1e-6));
    }

    @Test
    void aGreenThatIsPlayedToCannotBeRemoved() {
        Area green = course.areas().stream()
                .filter(a -> a.kind() == AreaKind.GREEN
                        && a.region().contains(course.getHole(1).holeLocation()))
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> MendCourse.apply(course, new Changes(List.of(), List.of(green.id()), List.of())))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("Hole 1");
    }

    @Test
    void aShapeThatCrossesItselfIsRefused() {
        List<Place> bow = List.of(new Place(0, 0), new Place(9, 9), new Place(9, 0), new Place(0, 9));
        assertThatThrownBy(() ->
                        MendCourse.apply(course, drawn(new Drawn("x", AreaKind.BUNKER, List.of(List.of(bow))))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("crosses itself");
    }
}
