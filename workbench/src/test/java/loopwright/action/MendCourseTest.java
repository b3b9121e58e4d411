package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import loopwright.action.MendCourse.Changes;
import loopwright.action.MendCourse.Drawn;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
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
