package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.cli.Terminal;
import loopwright.course.Area;
import loopwright.course.Course;
import loopwright.course.GreenSurvey;
import loopwright.course.LocalRule;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** The survey through the terminal, on a synthetic hole of 320 m with one bunker and one wood. */
class CourseSurveyIT {
    @TempDir
    Path folder;

    private Path map;
    private Path out;
    private StringWriter said = new StringWriter();
    private StringWriter complained = new StringWriter();

    @BeforeEach
    void drawTheMap() throws IOException {
        map = Files.writeString(folder.resolve("map.geojson"), """
                {"type":"FeatureCollection","features":[
                {"type":"Feature","id":"line","properties":{"golf":"hole","ref":"1","par":"4"},
                 "geometry":{"type":"LineString","coordinates":[[10,50],[10,50.0029]]}},
                {"type":"Feature","id":"green","properties":{"golf":"green"},"geometry":{"type":"Polygon",
                 "coordinates":[[[9.9998,50.0028],[10.0002,50.0028],[10.0002,50.003],[9.9998,50.003],[9.9998,50.0028]]]}},
                {"type":"Feature","id":"pot","properties":{"golf":"bunker"},"geometry":{"type":"Polygon",
                 "coordinates":[[[10.0003,50.0028],[10.0004,50.0028],[10.0004,50.0029],[10.0003,50.0028]]]}},
                {"type":"Feature","id":"copse","properties":{"natural":"wood"},"geometry":{"type":"Polygon",
                 "coordinates":[[[10.0005,50.001],[10.001,50.001],[10.001,50.002],[10.0005,50.001]]]}}]}
                """);
        out = folder.resolve("course.geojson");
    }

    private int run(String... arguments) {
        said = new StringWriter();
        complained = new StringWriter();
        CommandLine line = Main.commandLine();
        line.setOut(new PrintWriter(said));
        line.setErr(new PrintWriter(complained));
        return Terminal.run(line, arguments);
    }

    private Course written() {
        return new OsmCourseFiles().read(out).course();
    }

    @Test
    void aHoleStaysUnsurveyedUntilItsTicksAreSet() {
        assertThat(run("course", "survey", map.toString(), "--out", out.toString(), "--set", "1 trees yes"))
                .isZero();
        assertThat(said.toString()).contains("Unsurveyed still: 1 holes");
        assertThat(run("course", "survey", out.toString(), "--out", out.toString(), "--set", "all-holes all yes"))
                .isZero();
        assertThat(written().getHole(1).survey().complete()).isTrue();
    }

    @Test
    void whatIsNotedReadsBack() {
        int code = run(
                "course",
                "survey",
                map.toString(),
                "--out",
                out.toString(),
                "--set",
                "bunker pot 4 1",
                "--set",
                "woods copse 40 6 1.5",
                "--set",
                "lost copse 25",
                "--set",
                "1 rules drop, zone",
                "--set",
                "1 skyline 50.01 10.0 a red chimney",
                "--set",
                "1 drop 50.002 10.0001",
                "--set",
                "1 temporary 50.0021 10.0001");
        assertThat(code).as(complained.toString()).isZero();
        Area pot = area("pot");
        assertThat(pot.survey().depthMetres()).hasValue(4 * 0.3048);
        assertThat(pot.survey().lipMetres()).hasValue(0.3048);
        assertThat(area("copse").notFoundChance()).isEqualTo(0.25);
        assertThat(area("copse").survey().trees()).get().satisfies(t -> {
            assertThat(t.density()).isEqualTo(1.5);
            assertThat(t.heightMetres()).isEqualTo(40 * 0.3048);
        });
        var notes = written().getHole(1).survey().notes();
        assertThat(notes.localRules())
                .containsExactly(
                        LocalRule.DROP_INSTEAD_OF_STROKE_AND_DISTANCE, LocalRule.DROP_ZONE, LocalRule.TEMPORARY_GREEN);
        assertThat(notes.temporaryGreen()).isPresent();
        assertThat(notes.skylineTargets())
                .singleElement()
                .satisfies(t -> assertThat(t.name()).isEqualTo("a red chimney"));
        assertThat(notes.dropZones()).hasSize(1);
    }

    @Test
    void measuredSlopesReadBackToTheSameBytes() throws IOException {
        int code = run(
                "course",
                "survey",
                map.toString(),
                "--out",
                out.toString(),
                "--set",
                "1 spot 10,5 0.4",
                "--set",
                "1 spot 50.00291 10.00001 -1.25",
                "--set",
                "1 arrow 12,right 6 2.5 140",
                "--set",
                "1 nine 1/180 1.5/180 2/170 1/180 1/0 3/90 2/200 2/190 2/270");
        assertThat(code).as(complained.toString()).isZero();
        Path again = folder.resolve("again.geojson");
        new OsmCourseFiles().write(written(), again);
        assertThat(again).hasSameBinaryContentAs(out);
        GreenSurvey green = written().getHole(1).survey().notes().green();
        assertThat(green.spots()).hasSize(2);
        assertThat(green.arrows()).hasSize(10);
        assertThat(green.spots().get(0).heightMetres()).isCloseTo(0.4 * 0.3048, within(1e-9));
        // the hole plays north, to a green whose middle the map's rounding puts a hair beside the line: 180 degrees
        // from
        // the way to the back is south
        assertThat(green.arrows().get(1).downhillRadians()).isCloseTo(Math.PI, within(1e-5));
        assertThat(green.arrows().get(1).slope()).isCloseTo(0.01, within(1e-9));
        run("course", "survey", out.toString(), "--out", out.toString(), "--set", "1 slopes none");
        assertThat(written().getHole(1).survey().notes().green()).isEqualTo(GreenSurvey.NOTHING);
    }

    @Test
    void theChanceOfALostBallIsSetForAKind() {
        assertThat(run("course", "survey", map.toString(), "--out", out.toString(), "--set", "lost woods 40"))
                .isZero();
        assertThat(area("copse").notFoundChance()).isEqualTo(0.4);
        assertThat(area("pot").notFoundChance()).isZero();
    }

    private Area area(String id) {
        return written().areas().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 tree yes",
                "1 trees perhaps",
                "7 trees yes",
                "bunker nowhere 4 1",
                "bunker pot deep 1",
                "bunker pot 400 1",
                "lost copse 140",
                "lost woods -3",
                "1 temporary here",
                "1 spot 99,5 1",
                "1 spot 10,5",
                "1 spot 10,5 high",
                "1 arrow 10,5 45 10",
                "1 nine 1/2 3",
                "1 slopes some",
                "1 rules mulligan",
                "1 skyline north 10 x",
                "1 drop 10 50",
                "tees today",
                "tees a = blue",
                ""
            })
    void aLineThatCannotBeIsOneSentenceAndNothingIsWritten(String line) {
        assertThat(run("course", "survey", map.toString(), "--out", out.toString(), "--set", line))
                .isEqualTo(2);
        assertThat(complained.toString().strip())
                .isNotEmpty()
                .doesNotContain("\n")
                .doesNotContain("Exception");
        assertThat(out).doesNotExist();
    }

    @Test
    void theDialogKeepsWhatWasSaidBeforeItStops() {
        InputStream terminal = System.in;
        try {
            System.setIn(new ByteArrayInputStream(
                    "y\ny\ny\nn\nbunker pot 3 x\nbunker pot 3 2\n\n".getBytes(StandardCharsets.UTF_8)));
            assertThat(run("course", "survey", map.toString(), "--out", out.toString()))
                    .isZero();
        } finally {
            System.setIn(terminal);
        }
        assertThat(said.toString()).contains("pot").contains("is not a line of a survey");
        assertThat(written().getHole(1).survey().complete()).isTrue();
        assertThat(area("pot").survey().lipMetres()).hasValue(2 * 0.3048);
    }
}
