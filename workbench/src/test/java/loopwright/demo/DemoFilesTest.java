package loopwright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loopwright.action.CourseImport;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.Hole;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The committed demo files are what the generator writes. After a change of the generator run this test once with
 * {@code -Dloopwright.demo.write=true}, which writes them anew, and look at the pictures.
 */
class DemoFilesTest {
    @TempDir
    static Path folder;

    @BeforeAll
    static void generate() throws Exception {
        if (Boolean.getBoolean("loopwright.demo.write")) {
            DemoFiles.writeAll(DemoFiles.committed());
        }
        DemoFiles.writeAll(folder);
    }

    @ParameterizedTest
    @ValueSource(strings = {"course.geojson", "shots.csv", "putts.csv"})
    void committedFilesAreWhatTheGeneratorWrites(String name) {
        assertThat(DemoFiles.committed().resolve(name)).hasSameTextualContentAs(folder.resolve(name));
    }

    @Test
    void theCommittedCourseReadsBackWithoutASingleOddity() {
        CourseImport read = new OsmCourseFiles().read(DemoFiles.committed().resolve("course.geojson"));
        Course course = read.course();
        Course made = DemoCourse.create();
        assertThat(read.warnings()).isEmpty();
        assertThat(course.par()).isEqualTo(72);
        assertThat(course.teeSets().stream().map(t -> t.name()))
                .containsExactly("black", "blue", "white", "yellow", "red");
        assertThat(course.holes()).allMatch(h -> h.survey().complete());
        assertThat(course.areas()).hasSameSizeAs(made.areas());
        assertThat(course.trees()).hasSameSizeAs(made.trees());
        for (Hole hole : course.holes()) {
            double same = course.lengthMetres(hole, course.teeSets().get(2));
            double wanted = made.lengthMetres(
                    made.getHole(hole.number()), made.teeSets().get(2));
            // Coordinates are written to 1e-7 degree or finer: a centimetre at each end.
            assertThat(same).isBetween(wanted - 0.03, wanted + 0.03);
        }
    }

    @Test
    void someSixHundredShotsAndThreeHundredPutts() throws Exception {
        List<String> shots = Files.readAllLines(DemoFiles.committed().resolve("shots.csv"));
        List<String> putts = Files.readAllLines(DemoFiles.committed().resolve("putts.csv"));
        assertThat(shots.size() - 1).isEqualTo(600);
        assertThat(putts.size() - 1).isEqualTo(300);
    }
}
