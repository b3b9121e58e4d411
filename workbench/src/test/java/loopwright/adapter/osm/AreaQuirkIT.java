package loopwright.adapter.osm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.action.CourseImport;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Quirks of areas and their keys, each a mutant of the enriched synthetic island map. */
class AreaQuirkIT {
    @TempDir
    Path folder;

    private CourseImport read(MapSketch sketch) throws IOException {
        return IslandSketch.read(sketch, folder);
    }

    private CourseImport clean() throws IOException {
        return IslandSketch.clean(folder);
    }

    private void assertSameCourse(MapSketch mutant) throws IOException {
        assertThat(CourseWriter.toGeoJson(read(mutant).course())).isEqualTo(CourseWriter.toGeoJson(clean().course()));
    }

    private static Area area(CourseImport found, String id) {
        return found.course().areas().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theEnrichmentIsThere() throws IOException {
        assertThat(clean().course().areas())
                .filteredOn(a -> a.id().startsWith("way/9000"))
                .extracting(Area::kind)
                .containsExactlyInAnyOrder(AreaKind.RED_PENALTY_AREA, AreaKind.OUT_OF_BOUNDS);
    }

    @Test
    void keysOfOtherMapsChangeNothing() throws IOException {
        MapSketch m = IslandSketch.enriched();
        m.golf("fairway").forEach(f -> f.tags.putAll(Map.of("natural", "grass", "landcover", "grass")));
        m.golf("rough").forEach(f -> f.tags.putAll(Map.of("landuse", "grass", "sport", "golf")));
        m.golf("green").forEach(f -> f.tags.put("leisure", "pitch"));
        m.golf("bunker").forEach(f -> f.tags.put("natural", "none"));
        m.golf("water_hazard").forEach(f -> f.tags.putAll(Map.of("landuse", "basin", "natural", "water")));
        assertSameCourse(m);
    }

    @Test
    void aStrayCopyOfTheBorderIsNoSecondCourse() throws IOException {
        MapSketch m = IslandSketch.enriched();
        long[] ring = m.way(IslandSketch.BORDER).nodes.stream()
                .mapToLong(Long::longValue)
                .toArray();
        m.way(88, ring, Map.of("leisure", "golf_course"));
        assertSameCourse(m);
    }

    @Test
    void gamesThatAreNotGolfAreNotRead() throws IOException {
        MapSketch m = IslandSketch.enriched();
        long near = m.hole(3).nodes.get(0);
        int[][] square = {{0, 0}, {500, 0}, {500, 500}, {0, 500}, {0, 0}};
        m.closedWay(near, square, Map.of("leisure", "miniature_golf"));
        m.closedWay(near, square, Map.of("leisure", "disc_golf_course"));
        m.addWay(near, new int[][] {{0, 0}, {900, 0}}, Map.of("disc_golf", "hole", "ref", "3"));
        assertSameCourse(m);
    }

    @Test
    void aClubhouseOutsideTheBorderChangesNothing() throws IOException {
        MapSketch m = IslandSketch.enriched();
        long corner = m.way(IslandSketch.BORDER).nodes.get(0);
        int[][] farOff = {{90_000, 90_000}, {90_000, 91_000}, {91_000, 91_000}, {90_000, 90_000}};
        m.closedWay(corner, farOff, Map.of("golf", "clubhouse", "building", "yes"));
        // golf outside the border is a group of its own; a lone clubhouse has no hole and no green and is no course
        assertSameCourse(m);
    }

    @Test
    void aRingInTwoPiecesIsOneArea() throws IOException {
        MapSketch m = IslandSketch.enriched();
        MapSketch.Thing bunker = m.way(IslandSketch.BUNKER);
        Map<String, String> tags = new TreeMap<>(bunker.tags);
        tags.put("type", "multipolygon");
        List<Long> ring = List.copyOf(bunker.nodes);
        int half = ring.size() / 2;
        m.ways.remove(IslandSketch.BUNKER);
        m.way(91, ring.subList(0, half + 1).stream().mapToLong(Long::longValue).toArray(), Map.of());
        m.way(
                92,
                ring.subList(half, ring.size()).stream()
                        .mapToLong(Long::longValue)
                        .toArray(),
                Map.of());
        long id = m.addRelation(
                List.of(new OsmVisitor.Member("way", 92, "outer"), new OsmVisitor.Member("way", 91, "outer")), tags);
        assertThat(area(read(m), "relation/" + id).region().areaSquareMetres())
                .isCloseTo(
                        area(clean(), "way/" + IslandSketch.BUNKER).region().areaSquareMetres(),
                        within(1e-6)); // the ring starts at another corner: rounding of some thousand square metres
    }

    @Test
    void aPenaltyAreaNeedsNoWaterAndWaterNeedsNoGolfKey() throws IOException {
        MapSketch m = IslandSketch.enriched();
        long near = m.hole(3).nodes.get(0);
        int[][] square = {{3000, 0}, {4000, 0}, {4000, 1000}, {3000, 1000}, {3000, 0}};
        long dry = m.closedWay(near, square, Map.of("golf", "lateral_water_hazard"));
        long pond = m.closedWay(near, square, Map.of("natural", "water", "water", "golf_hazard"));
        CourseImport found = read(m);
        assertThat(area(found, "way/" + dry).kind()).isEqualTo(AreaKind.RED_PENALTY_AREA);
        assertThat(area(found, "way/" + pond).kind()).isEqualTo(AreaKind.RED_PENALTY_AREA);
        assertThat(found.records()).anyMatch(r -> r.kind().equals("water without a golf tag"));
    }

    @Test
    void aBunkerOfAHectareIsAWasteArea() throws IOException {
        MapSketch m = IslandSketch.enriched();
        int[][] large = {{5000, 0}, {5000, 12_000}, {15_000, 12_000}, {15_000, 0}, {5000, 0}};
        long id = m.closedWay(m.hole(3).nodes.get(0), large, Map.of("golf", "bunker"));
        CourseImport found = read(m);
        assertThat(area(found, "way/" + id).kind()).isEqualTo(AreaKind.WASTE_AREA);
        assertThat(found.records())
                .anyMatch(r -> r.kind().equals("bunker read as waste area")
                        && r.element().equals("way/" + id));
    }

    @Test
    void pinsOffEveryLineAreNoHoles() throws IOException {
        MapSketch m = IslandSketch.enriched();
        MapSketch.Thing tee = m.node(m.hole(3).nodes.get(0));
        m.addNode(tee.latitudeE7 + 3000, tee.longitudeE7, Map.of("golf", "pin"));
        assertSameCourse(m);
    }
}
