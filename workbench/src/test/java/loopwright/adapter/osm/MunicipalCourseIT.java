package loopwright.adapter.osm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loopwright.action.CourseChoice;
import loopwright.action.CourseImport;
import loopwright.action.CourseListing;
import loopwright.action.ImportRecord;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real map of an 18 and a 9 inside one border, without hole lines, numbers 1 to 9 given twice. */
class MunicipalCourseIT {
    private static final String OSM = "municipal-27-no-hole-lines.osm";
    private static final String TOWN = "municipal-27-town.osm.pbf";

    private final OsmCourseFiles files = new OsmCourseFiles();

    private static @Nullable CourseImport eighteen;

    /** Read once for all tests; a course does not change. */
    private CourseImport eighteen() {
        CourseImport read = eighteen;
        if (read == null) {
            read = files.read(SharedFiles.course(OSM), CourseChoice.numbered(1));
            eighteen = read;
        }
        return read;
    }

    @Test
    void listsAnEighteenAndANine() {
        List<CourseListing> found = files.listCourses(SharedFiles.course(OSM));
        assertThat(found).extracting(CourseListing::holes).containsExactly(18, 9);
        assertThat(found).extracting(CourseListing::number).containsExactly(1, 2);
    }

    @Test
    void withoutAChoiceItAsksForOne() {
        Path file = SharedFiles.course(OSM);
        assertThatThrownBy(() -> files.read(file))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("--name")
                .hasMessageContaining("18 holes");
    }

    @Test
    void isChosenByNameOrByNumber() {
        Path file = SharedFiles.course(OSM);
        assertThat(files.read(file, CourseChoice.numbered(2)).course().holes()).hasSize(9);
        assertThat(files.read(file, CourseChoice.named(", 18")).course().holes())
                .hasSize(18);
    }

    @Test
    void reportsThatTheTeesOfHole15AreNumbered16() {
        CourseImport found = eighteen();
        assertThat(of(found, "misnumbered tee"))
                .extracting(ImportRecord::element)
                .containsExactlyInAnyOrder("way/192584610", "way/192584611");
        assertThat(of(found, "misnumbered tee"))
                .allSatisfy(r -> assertThat(r.found()).contains("ref=16").contains("hole 15"));
    }

    @Test
    void everyHoleIsMarkedAsAProposal() {
        CourseImport found = eighteen();
        assertThat(of(found, "proposed hole")).hasSize(18).allMatch(ImportRecord::warning);
        assertThat(of(files.read(SharedFiles.course(OSM), CourseChoice.numbered(2)), "proposed hole"))
                .hasSize(9);
        // holes 6, 11 and 16 of the eighteen are drawn without fairways from tees 126 to 186 yd away
        assertThat(found.course().holes().stream().filter(h -> h.par() == 3).map(h -> h.number()))
                .containsExactly(3, 6, 11, 16);
    }

    @Test
    void theTownsPbfGivesTheSameGolf(@TempDir Path folder) throws Exception {
        assertThat(golf(TOWN, folder)).isEqualTo(golf(OSM, folder)).hasSizeGreaterThan(200);
    }

    private List<String> golf(String file, Path folder) throws Exception {
        Path out = folder.resolve("course.geojson");
        files.write(
                files.read(SharedFiles.course(file), CourseChoice.numbered(1)).course(), out);
        return Files.readAllLines(out).stream()
                .filter(line -> line.contains("golf"))
                .map(line -> line.replaceAll(",$", ""))
                .toList();
    }

    private static List<ImportRecord> of(CourseImport found, String kind) {
        return found.records().stream().filter(r -> r.kind().equals(kind)).toList();
    }
}
