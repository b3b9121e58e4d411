package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.action.MendMarks.Changes;
import loopwright.action.MendMarks.Gone;
import loopwright.action.MendMarks.Kind;
import loopwright.action.MendMarks.Mark;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleNotes;
import loopwright.course.LocalRule;
import loopwright.course.SkylineTarget;
import loopwright.course.TeeSet;
import loopwright.course.Tree;
import loopwright.geo.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MendMarksTest {
    private static final Course COURSE =
            new OsmCourseFiles().read(Path.of("../demo/course.geojson")).course();
    private static final int NUMBER = 4;

    private static Hole hole(Course course) {
        return course.getHole(NUMBER);
    }

    private static Course mended(Course course, Changes changes) {
        return MendMarks.apply(course, Optional.of(hole(course)), changes);
    }

    private static Changes set(Mark... marks) {
        return new Changes(List.of(marks), List.of(), Optional.empty());
    }

    private static Mark mark(Kind kind, String id, Place at, String name) {
        return new Mark(id, kind, at, name, Map.of());
    }

    private static Place teeOf(Course course, String name) {
        return course.findTeeSet(name).orElseThrow().getPlace(NUMBER).place();
    }

    @Test
    void aTeeIsMovedOnThisHoleAlone() {
        TeeSet white = COURSE.findTeeSet("white").orElseThrow();
        Place to = teeOf(COURSE, "white").along(0, 3);
        Course after = mended(COURSE, set(mark(Kind.TEE, "white", to, "white")));
        assertThat(teeOf(after, "white")).isEqualTo(to);
        assertThat(after.findTeeSet("white").orElseThrow().getPlace(5)).isEqualTo(white.getPlace(5));
        assertThat(after.teeSets()).hasSameSizeAs(COURSE.teeSets());
    }

    @Test
    void newTeesTakeOtherHolesFromTheSetNearestHere() {
        Place near = teeOf(COURSE, "yellow").along(1, 4);
        Course after = mended(COURSE, set(mark(Kind.TEE, "new 1", near, "today")));
        TeeSet today = after.findTeeSet("today").orElseThrow();
        assertThat(today.getPlace(NUMBER).place()).isEqualTo(near);
        assertThat(today.getPlace(9).place())
                .isEqualTo(COURSE.findTeeSet("yellow").orElseThrow().getPlace(9).place());
        List<Double> lengths = after.teeSets().stream().map(after::lengthMetres).toList();
        assertThat(lengths).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThatThrownBy(() -> mended(COURSE, set(mark(Kind.TEE, "new 1", near, "White"))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("White");
        assertThatThrownBy(() -> mended(COURSE, set(mark(Kind.TEE, "new 1", near, "<b>"))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("no name for tees");
    }

    @Test
    void theLineTakesABendAndNeedsTwoEnds() {
        List<Place> line = new ArrayList<>(hole(COURSE).line().places());
        line.add(1, new Place(line.get(0).x() + 20, line.get(0).y() + 60));
        Course after = mended(COURSE, new Changes(List.of(), List.of(), Optional.of(line)));
        assertThat(hole(after).line().places()).isEqualTo(line);
        assertThatThrownBy(() -> mended(COURSE, new Changes(List.of(), List.of(), Optional.of(line.subList(0, 1)))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("hole 4");
    }

    @Test
    void theHoleLocationStaysOnItsGreen() {
        Place on = hole(COURSE).green().insidePlace();
        assertThat(hole(mended(COURSE, set(mark(Kind.HOLE_LOCATION, "", on, ""))))
                        .holeLocation())
                .isEqualTo(on);
        Place off = on.along(0, 200);
        assertThatThrownBy(() -> mended(COURSE, set(mark(Kind.HOLE_LOCATION, "", off, ""))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("green");
    }

    private static Mark tree(String id, Place at, double gap, double density) {
        return new Mark(id, Kind.TREE, at, "", Map.of("crown", 5.0, "height", 14.0, "gap", gap, "density", density));
    }

    @Test
    void treesAreMovedDescribedAddedAndFelledAndSurviveTheFile(@TempDir Path folder) {
        Tree first = COURSE.trees().get(0);
        String felled = COURSE.trees().get(1).id();
        Place to = new Place(12.5, -7.25);
        Course after = MendMarks.apply(
                COURSE,
                Optional.empty(),
                new Changes(
                        List.of(tree(first.id(), to, 4, 2.5), tree("new tree", to, 2, 1)),
                        List.of(new Gone(Kind.TREE, felled)),
                        Optional.empty()));
        assertThat(after.trees()).hasSameSizeAs(COURSE.trees());
        assertThat(after.trees()).noneMatch(t -> t.id().equals(felled));
        Path file = folder.resolve("course.geojson");
        new OsmCourseFiles().write(after, file);
        Tree again = new OsmCourseFiles().read(file).course().trees().get(0);
        assertThat(again.id()).isEqualTo(first.id());
        assertThat(again.gapMetres()).isEqualTo(4);
        assertThat(again.density()).isEqualTo(2.5);
        // the file rounds places to 1e-9 degrees, a tenth of a millimetre
        assertThat(again.place().distanceTo(to)).isLessThan(0.001);
        assertThat(again.cover().stopsPerMetre(5)).isEqualTo(2.5 * first.cover().stopsPerMetre(5));
        assertThatThrownBy(() -> MendMarks.apply(COURSE, Optional.empty(), set(tree(first.id(), to, 20, 1))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("tree")
                .hasMessageContaining("branches");
    }

    @Test
    void whatIsNotedAtPlacesIsMovedRenamedAndTakenAway() {
        Place on = hole(COURSE).green().insidePlace();
        Course noted = mended(
                COURSE,
                set(
                        mark(Kind.SKYLINE, "new a", new Place(1, 2), "mill"),
                        mark(Kind.SKYLINE, "new b", new Place(3, 4), "oak"),
                        mark(Kind.DROP_ZONE, "new c", new Place(5, 6), ""),
                        mark(Kind.TEMPORARY_GREEN, "new d", new Place(7, 8), ""),
                        new Mark("new e", Kind.SPOT, on, "", Map.of("level", 0.4)),
                        new Mark("new f", Kind.ARROW, on, "", Map.of("slope", 0.02, "toward", 1.0))));
        HoleNotes notes = hole(noted).survey().notes();
        assertThat(notes.localRules()).contains(LocalRule.TEMPORARY_GREEN);
        assertThat(notes.green().spots()).hasSize(1);
        assertThat(notes.green().arrows().get(0).slope()).isEqualTo(0.02);
        assertThat(MendMarks.list(noted, hole(noted)))
                .filteredOn(m -> m.kind() == Kind.SKYLINE)
                .hasSize(2);
        Course after = mended(
                noted,
                new Changes(
                        List.of(mark(Kind.SKYLINE, "1", new Place(9, 9), "old oak")),
                        List.of(
                                new Gone(Kind.SKYLINE, "0"),
                                new Gone(Kind.DROP_ZONE, "0"),
                                new Gone(Kind.TEMPORARY_GREEN, ""),
                                new Gone(Kind.ARROW, "0")),
                        Optional.empty()));
        HoleNotes left = hole(after).survey().notes();
        assertThat(left.skylineTargets()).containsExactly(new SkylineTarget("old oak", new Place(9, 9)));
        assertThat(left.dropZones()).isEmpty();
        assertThat(left.temporaryGreen()).isEmpty();
        assertThat(left.localRules()).isEmpty();
        assertThat(left.green().arrows()).isEmpty();
        assertThat(left.green().spots()).isEqualTo(notes.green().spots());
    }

    @Test
    void localRulesAreSetAndTakenBackWithTheRestLeftAlone() {
        Course ruled = mended(
                COURSE,
                new Changes(
                        List.of(mark(Kind.DROP_ZONE, "new a", new Place(5, 6), "")),
                        List.of(),
                        Optional.empty(),
                        Optional.of(Set.of(LocalRule.DROP_ZONE, LocalRule.PREFERRED_LIES))));
        HoleNotes notes = hole(ruled).survey().notes();
        assertThat(notes.localRules()).containsExactlyInAnyOrder(LocalRule.DROP_ZONE, LocalRule.PREFERRED_LIES);
        assertThat(notes.dropZones()).containsExactly(new Place(5, 6));
        assertThat(hole(mended(ruled, set())).survey().notes()).isEqualTo(notes);
        Course without = mended(ruled, new Changes(List.of(), List.of(), Optional.empty(), Optional.of(Set.of())));
        assertThat(hole(without).survey().notes().localRules()).isEmpty();
        assertThat(hole(without).survey().notes().dropZones()).hasSize(1);
    }

    @Test
    void marksThatCannotBeAreNamed() {
        Place off = hole(COURSE).green().insidePlace().along(0, 200);
        assertThatThrownBy(() -> mended(COURSE, set(new Mark("new e", Kind.SPOT, off, "", Map.of("level", 0.4)))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("spot")
                .hasMessageContaining("hole 4");
        assertThatThrownBy(() -> mended(COURSE, set(mark(Kind.SKYLINE, "new a", off, " "))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("needs a name");
        assertThatThrownBy(() -> mended(
                        COURSE, set(mark(Kind.ARROW, "new a", hole(COURSE).holeLocation(), ""))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("slope");
    }

    @Test
    void theBorderIsDrawnAnewAndTakenAway() {
        List<Place> square =
                List.of(new Place(-500, -500), new Place(500, -500), new Place(500, 500), new Place(-500, 500));
        Course after = MendCourse.withBoundary(COURSE, List.of(List.of(square)));
        assertThat(after.boundary().orElseThrow().areaSquareMetres()).isEqualTo(1e6);
        assertThat(after.boundaryGuessed()).isFalse();
        assertThat(MendCourse.withBoundary(COURSE, List.of()).boundary()).isEmpty();
        List<Place> crossed = List.of(square.get(0), square.get(2), square.get(1), square.get(3));
        assertThatThrownBy(() -> MendCourse.withBoundary(COURSE, List.of(List.of(crossed))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("border")
                .hasMessageContaining("crosses itself");
    }
}
