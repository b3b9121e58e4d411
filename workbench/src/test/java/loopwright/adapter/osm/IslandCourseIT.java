package loopwright.adapter.osm;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loopwright.action.CourseImport;
import loopwright.action.ImportRecord;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Hole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A real course of 18 holes, mapped by one hand; its quirks were counted by other means before this reader was. */
class IslandCourseIT {
    private static final Map<String, CourseImport> READ = new HashMap<>();

    private final OsmCourseFiles files = new OsmCourseFiles();

    @ParameterizedTest
    @ValueSource(strings = {"island-18.osm", "island-18.geojson", "island-18.overpass.json"})
    void has18HolesAndPar72InEveryFormat(String file) {
        CourseImport found = read(file);
        assertThat(found.course().holes()).extracting(Hole::number).containsExactlyElementsOf(oneTo18());
        assertThat(found.course().par()).isEqualTo(72);
        assertThat(found.course().getHole(17).parSource()).isEqualTo("length");
        assertThat(found.course().getHole(1).parSource()).isEqualTo("name");
    }

    private static List<Integer> oneTo18() {
        return Stream.iterate(1, n -> n + 1).limit(18).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"island-18.geojson", "island-18.overpass.json"})
    void theGolfIsTheSameInEveryFormat(String file, @TempDir Path folder) throws Exception {
        // the other files leave out roads and woods round the course, so only what is golf is compared
        assertThat(golfLines(file, folder)).isEqualTo(golfLines("island-18.osm", folder));
    }

    /** Each file is read once; courses are immutable. */
    private CourseImport read(String file) {
        return READ.computeIfAbsent(file, f -> files.read(SharedFiles.course(f)));
    }

    private List<String> golfLines(String file, Path folder) throws Exception {
        Path out = folder.resolve("course.geojson");
        files.write(read(file).course(), out);
        return Files.readAllLines(out).stream()
                .filter(line -> line.contains("golf"))
                .map(line -> line.replaceAll(",$", ""))
                .toList();
    }

    @Test
    void pbfMadeFromTheXmlGivesTheSameCourseWhole(@TempDir Path folder) throws Exception {
        Path pbf = Files.write(
                folder.resolve("island.pbf"), TinyPbf.of(new OsmXmlSource(SharedFiles.course("island-18.osm"))));
        Path first = folder.resolve("first.geojson");
        Path second = folder.resolve("second.geojson");
        files.write(read("island-18.osm").course(), first);
        CourseImport fromPbf = files.read(pbf);
        files.write(fromPbf.course(), second);
        assertThat(second).hasSameTextualContentAs(first);
        assertThat(fromPbf.records()).isEqualTo(read("island-18.osm").records());
    }

    @Test
    void theWrittenCourseReadsBackToTheSameBytes(@TempDir Path folder) throws Exception {
        Path first = folder.resolve("first.geojson");
        Path second = folder.resolve("second.geojson");
        files.write(read("island-18.osm").course(), first);
        CourseImport again = files.read(first);
        files.write(again.course(), second);
        assertThat(second).hasSameTextualContentAs(first);
        assertThat(again.records()).isEmpty();
    }

    @Test
    void rejectsTheDrivingRangeDrawnAsHole0WithItsReason() {
        assertThat(only("rejected hole").element()).isEqualTo("way/440119242");
        assertThat(only("rejected hole").found()).contains("ref=0").contains("Driving Range");
    }

    @Test
    void warnsOfTheDoubleGreen() {
        assertThat(only("double green").element()).isEqualTo("way/440119300");
        assertThat(only("double green").found()).contains("6 and 13");
        assertThat(only("double green").warning()).isTrue();
    }

    @Test
    void warnsOfTheMissingTeeAreaOfHole7() {
        assertThat(only("missing tee area").found()).contains("hole 7").contains("16 m");
    }

    @Test
    void readsThe25SmallFairwaysAsForwardTees() {
        assertThat(of("fairway read as forward tee")).hasSize(25);
        assertThat(read("island-18.osm").course().teeSets())
                .extracting(set -> set.name())
                .startsWith("back", "tee 2");
    }

    @Test
    void saysThatGreensLieInsideFairwaysAndWhichGreensBelongToNoHole() {
        assertThat(of("green inside a fairway")).hasSize(17);
        assertThat(of("green of no hole")).hasSize(5);
    }

    @Test
    void theGreensOfTheHolesAreTheOnlyGreens() {
        var course = read("island-18.osm").course();
        assertThat(course.areas().stream()
                        .filter(a -> a.kind() == AreaKind.GREEN)
                        .map(Area::id))
                .hasSize(17);
        assertThat(course.holes()).allSatisfy(h -> assertThat(h.greenAssumed()).isFalse());
    }

    private ImportRecord only(String kind) {
        assertThat(of(kind)).hasSize(1);
        return of(kind).get(0);
    }

    private List<ImportRecord> of(String kind) {
        return read("island-18.osm").records().stream()
                .filter(r -> r.kind().equals(kind))
                .toList();
    }
}
