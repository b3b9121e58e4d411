package loopwright.adapter.osm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import loopwright.action.CourseChoice;
import loopwright.action.CourseImport;
import loopwright.action.CourseListing;
import loopwright.action.ImportRecord;
import loopwright.course.AreaKind;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One mutant per quirk of real maps. The clean map is synthetic: the shared island map, enriched here with pars, stroke
 * indexes, lengths and tee colours, all invented. A harmless quirk must give the very same course, and so the same plan.
 */
class QuirkIT {
    private final OsmCourseFiles files = new OsmCourseFiles();

    @TempDir
    Path folder;

    private CourseImport read(MapSketch sketch) throws IOException {
        return IslandSketch.read(sketch, folder);
    }

    private CourseImport clean() throws IOException {
        return IslandSketch.clean(folder);
    }

    static Stream<Arguments> harmless() {
        return Stream.of(
                mutant("line drawn from the green", m -> Collections.reverse(m.hole(4).nodes)),
                mutant("proposed number", m -> m.hole(9).tags.remove("ref")),
                mutant("", m -> m.hole(5).tags.put("highway", "path")),
                mutant("", m -> m.golf("green").forEach(g -> g.tags.put("leisure", "recreation_ground"))),
                mutant("", m -> m.golf("bunker").forEach(b -> b.tags.put("surface", "sand"))),
                mutant("", m -> m.hole(3).tags.put("ref", "03")),
                mutant("", m -> m.hole(3).tags.put("dist", "577 yd")),
                mutant(
                        "par by colour",
                        m -> m.hole(8)
                                .tags
                                .put("par:red", String.valueOf(m.hole(8).tags.remove("par")))),
                mutant("unreadable number", m -> m.hole(8).tags.put("dist", "long")),
                mutant(
                        "",
                        m -> m.way(IslandSketch.BUNKER)
                                .nodes
                                .add(1, m.way(IslandSketch.BUNKER).nodes.get(1))),
                mutant("length differs from the line", m -> m.hole(2).tags.put("dist", "999")));
    }

    private static Arguments mutant(String kind, Consumer<MapSketch> change) {
        return Arguments.of(kind, change);
    }

    @ParameterizedTest
    @MethodSource("harmless")
    void aHarmlessQuirkGivesTheSameCourse(String kind, Consumer<MapSketch> change) throws IOException {
        MapSketch mutant = IslandSketch.enriched();
        change.accept(mutant);
        CourseImport found = read(mutant);
        assertThat(CourseWriter.toGeoJson(found.course())).isEqualTo(CourseWriter.toGeoJson(clean().course()));
        if (!kind.isEmpty()) {
            assertThat(kinds(found)).contains(kind);
            assertThat(kinds(clean())).doesNotContain(kind);
        }
    }

    @Test
    void nodesAfterWaysGiveTheSameCourse() throws IOException {
        CourseImport found = files.read(Files.writeString(
                folder.resolve("map.osm"), IslandSketch.enriched().toXml(true)));
        assertThat(CourseWriter.toGeoJson(found.course())).isEqualTo(CourseWriter.toGeoJson(clean().course()));
    }

    @Test
    void withoutPinsTheLineEndsAtTheHole() throws IOException {
        MapSketch m = IslandSketch.enriched();
        m.nodes.values().forEach(n -> n.tags.remove("golf", "pin"));
        assertThat(read(m).course().holes())
                .extracting(Hole::holeLocation)
                .isEqualTo(clean().course().holes().stream()
                        .map(Hole::holeLocation)
                        .toList());
    }

    @Test
    void aFairwayCutOutRoundItsGreenLeavesTheGreenOnTop() throws IOException {
        MapSketch m = IslandSketch.enriched();
        IslandSketch.cutGreenOut(m);
        CourseImport found = read(m);
        assertThat(of(found, "green inside a fairway"))
                .hasSize(of(clean(), "green inside a fairway").size() - 1);
        var fairway = found.course().areas().stream()
                .filter(a -> a.kind() == AreaKind.FAIRWAY && a.id().startsWith("relation/"))
                .findFirst()
                .orElseThrow();
        assertThat(fairway.region().contains(found.course().getHole(1).holeLocation()))
                .isFalse();
        assertThat(found.course().getHole(1).green().areaSquareMetres())
                .isEqualTo(clean().course().getHole(1).green().areaSquareMetres());
    }

    @Test
    void anUnclosedBunkerIsClosed() throws IOException {
        MapSketch m = IslandSketch.enriched();
        List<Long> ring = m.way(IslandSketch.BUNKER).nodes;
        ring.remove(ring.size() - 1);
        CourseImport found = read(m);
        assertThat(of(found, "open ring"))
                .extracting(ImportRecord::element)
                .containsExactly("way/" + IslandSketch.BUNKER);
        assertThat(CourseWriter.toGeoJson(found.course())).isEqualTo(CourseWriter.toGeoJson(clean().course()));
    }

    @Test
    void aRoughThatCrossesItselfIsMended() throws IOException {
        MapSketch m = IslandSketch.enriched();
        long from = m.hole(1).nodes.get(0);
        long id = m.closedWay(
                from, new int[][] {{0, 0}, {2000, 2000}, {2000, 0}, {0, 2000}, {0, 0}}, Map.of("golf", "rough"));
        CourseImport found = read(m);
        assertThat(of(found, "crossing ring")).extracting(ImportRecord::element).containsExactly("way/" + id);
    }

    @Test
    void aRelationWithAMissingMemberKeepsTheRest() throws IOException {
        MapSketch m = IslandSketch.enriched();
        long id = m.addRelation(
                List.of(
                        new OsmVisitor.Member("way", IslandSketch.GREEN_12, "outer"),
                        new OsmVisitor.Member("way", 1234567, "outer")),
                Map.of("type", "multipolygon", "golf", "rough"));
        assertThat(of(read(m), "incomplete multipolygon"))
                .extracting(ImportRecord::element)
                .containsExactly("relation/" + id);
    }

    @Test
    void coloursInAListMakeSets() throws IOException {
        MapSketch m = IslandSketch.enriched();
        m.golf("tee").forEach(t -> t.tags.put("tee", "gold;white"));
        assertThat(read(m).course().teeSets()).extracting(TeeSet::name).containsExactlyInAnyOrder("gold", "white");
    }

    @Test
    void lengthsByColourPlaceTeesThatAreNotDrawn() throws IOException {
        MapSketch m = IslandSketch.enriched();
        for (int n = 1; n <= 18; n++) {
            m.hole(n).tags.put("dist:red", n == 7 ? "200 yd" : "150");
        }
        CourseImport found = read(m);
        TeeSet red = found.course().findTeeSet("red").orElseThrow();
        assertThat(of(found, "tee placed by its length")).hasSizeGreaterThan(10);
        // tees that stand within 12 m of the stated length are taken instead of placed
        assertThat(found.course().lengthMetres(found.course().getHole(1), red)).isBetween(138.0, 162.0);
        assertThat(found.course().lengthMetres(found.course().getHole(7), red)).isBetween(170.0, 195.0);
    }

    @Test
    void twoCoursesInOneFileAreListedAndChosen() throws IOException {
        MapSketch m = IslandSketch.enriched();
        m.addCopy(500_000, 1L << 40);
        m.way((1L << 40) + IslandSketch.BORDER).tags.put("name", "Second synthetic course");
        Path file = Files.writeString(folder.resolve("two.osm"), m.toXml(false));
        assertThat(files.listCourses(file)).extracting(CourseListing::holes).containsExactly(18, 18);
        assertThat(files.read(file, CourseChoice.named("second")).course().par())
                .isEqualTo(72);
    }

    @Test
    void aHoleDrawnAsAnAreaBecomesALine() throws IOException {
        MapSketch m = IslandSketch.enriched();
        MapSketch.Thing hole = m.hole(12);
        long start = hole.nodes.get(0);
        long end = hole.nodes.get(hole.nodes.size() - 1);
        List<Long> ring = new ArrayList<>();
        for (int[] o : new int[][] {{3000, -3000}, {3000, 3000}}) {
            ring.add(m.addNode(m.node(start).latitudeE7 + o[0], m.node(start).longitudeE7 + o[1], Map.of()));
        }
        for (int[] o : new int[][] {{-3000, 3000}, {-3000, -3000}}) {
            ring.add(m.addNode(m.node(end).latitudeE7 + o[0], m.node(end).longitudeE7 + o[1], Map.of()));
        }
        ring.add(ring.get(0));
        hole.nodes = ring;
        CourseImport found = read(m);
        assertThat(kinds(found)).contains("hole drawn as an area");
        assertThat(found.course().getHole(12).green().areaSquareMetres())
                .isEqualTo(clean().course().getHole(12).green().areaSquareMetres());
    }

    @Test
    void waterAsALineIsAStrip() throws IOException {
        MapSketch m = IslandSketch.enriched();
        long id = m.addWay(
                m.hole(1).nodes.get(0),
                new int[][] {{0, 0}, {2000, 0}},
                Map.of("golf", "lateral_water_hazard", "waterway", "stream"));
        CourseImport found = read(m);
        assertThat(kinds(found)).contains("line where an area is expected");
        // 222 m of a stream taken as 2 m wide: 1,000 E7 degrees of latitude are 11.08 m here
        assertThat(found.course().areas().stream()
                        .filter(a -> a.id().equals("way/" + id))
                        .mapToDouble(a -> a.region().areaSquareMetres())
                        .sum())
                .isBetween(44.0, 45.0);
    }

    @Test
    void aGreenThatIsMissingOrAPointIsACircle() throws IOException {
        MapSketch m = IslandSketch.enriched();
        m.ways.remove(IslandSketch.GREEN_1);
        CourseImport found = read(m);
        assertThat(found.course().getHole(1).greenAssumed()).isTrue();
        assertThat(of(found, "green missing")).hasSize(1);
        // a circle 12 yd across, drawn with 32 corners: 94.6 m2 of 94.6 to 93.9
        assertThat(found.course().getHole(1).green().areaSquareMetres()).isBetween(93.5, 94.6);
        m.node(m.hole(1).nodes.get(m.hole(1).nodes.size() - 1)).tags.put("golf", "green");
        assertThat(kinds(read(m))).contains("point where an area is expected").doesNotContain("green missing");
    }

    @Test
    void withoutABorderThereIsNoOutOfBounds() throws IOException {
        MapSketch m = IslandSketch.enriched();
        m.ways.remove(IslandSketch.BORDER);
        CourseImport found = read(m);
        assertThat(kinds(found)).contains("no boundary");
        assertThat(found.course().boundary()).isEmpty();
        assertThat(found.course().par()).isEqualTo(72);
    }

    @Test
    void anOutOfBoundsRingRoundTheHolesIsTheTrueBorder() throws IOException {
        MapSketch m = IslandSketch.enriched();
        MapSketch.Thing border = m.way(IslandSketch.BORDER);
        m.way(77L, border.nodes.stream().mapToLong(Long::longValue).toArray(), Map.of("golf", "out_of_bounds"));
        CourseImport found = read(m);
        assertThat(found.course().boundaryGuessed()).isFalse();
        assertThat(found.course().boundary()).isPresent();
        assertThat(kinds(found)).doesNotContain("out of bounds by the border");
    }

    @Test
    void anOpenOutOfBoundsLineHasItsFarSideOut() throws IOException {
        MapSketch m = IslandSketch.enriched();
        // 50 m east of the first tee, running north: the hole lies to its west
        long id = m.addWay(
                m.hole(1).nodes.get(0), new int[][] {{-3000, 20_000}, {3000, 20_000}}, Map.of("golf", "out_of_bounds"));
        CourseImport found = read(m);
        assertThat(of(found, "out of bounds as a line")).hasSize(1);
        var band = found.course().areas().stream()
                .filter(a -> a.kind() == AreaKind.OUT_OF_BOUNDS && a.id().equals("way/" + id))
                .findFirst()
                .orElseThrow();
        // 66.5 m of line, a band of 40 m
        assertThat(band.region().areaSquareMetres()).isBetween(2600.0, 2700.0);
    }

    @Test
    void severalPinsOnAGreenAreSaid() throws IOException {
        MapSketch m = IslandSketch.enriched();
        MapSketch.Thing end = m.node(m.hole(3).nodes.get(m.hole(3).nodes.size() - 1));
        m.addNode(end.latitudeE7 + 200, end.longitudeE7, Map.of("golf", "pin", "ref", "3"));
        assertThat(kinds(read(m))).contains("several pins");
    }

    @Test
    void aNumberUsedTwiceKeepsTheLongerHole() throws IOException {
        MapSketch m = IslandSketch.enriched();
        m.hole(2).tags.put("ref", "1");
        CourseImport found = read(m);
        assertThat(kinds(found)).contains("number used twice");
        assertThat(found.course().holes()).hasSize(17);
    }

    private static List<String> kinds(CourseImport found) {
        return found.records().stream().map(ImportRecord::kind).toList();
    }

    private static List<ImportRecord> of(CourseImport found, String kind) {
        return found.records().stream().filter(r -> r.kind().equals(kind)).toList();
    }
}
