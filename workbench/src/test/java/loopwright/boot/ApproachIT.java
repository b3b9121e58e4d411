package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Approaches to a green of the demo, as it is typed. */
class ApproachIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private static Typed approach(String... more) {
        List<String> args = new ArrayList<>(List.of(
                "approach",
                "--course",
                DEMO.resolve("course.geojson").toString(),
                "--player",
                DEMO.resolve("player.json").toString()));
        args.addAll(List.of(more));
        return Typed.run(args.toArray(String[]::new));
    }

    @Test
    void nineZonesAreWorkedOut() throws IOException {
        Path json = folder.resolve("zones.json");
        Typed run = approach("--holes", "3", "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        Schema.assertFits("approach.schema.json", json);
        // "4 paces: less than the usual four" would be no warning
        assertThat(run.out()).doesNotContainPattern("4(\\.0)? paces from the edge");
        JsonNode locations =
                new ObjectMapper().readTree(json.toFile()).get("holes").get(0).get("locations");
        assertThat(locations).hasSize(9);
        for (JsonNode l : locations) {
            String name = l.get("name").asText();
            if (name.endsWith("left")) {
                assertThat(l.get("shortSide").asText()).as(name).isNotEqualTo("right");
                // A tucked location is aimed at from its safe side, or at the flag: never further out.
                assertThat(l.get("rightYards").asDouble()).as(name).isGreaterThan(-2.5);
            }
            if (name.endsWith("right")) {
                assertThat(l.get("rightYards").asDouble()).as(name).isLessThan(2.5);
            }
        }
    }

    @Test
    void aPinSheetIsReadWholeOrNotAtAll() throws IOException {
        Path sheet = folder.resolve("pins.csv");
        Files.writeString(sheet, "hole,front,left,right\n3,6,3,\n");
        Typed run = approach("--holes", "3", "--pin-sheet", sheet.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("hole location").contains("less than the usual four");
        Files.writeString(sheet, "hole,front,left,right\n3,six,3,\n");
        Typed bad = approach("--holes", "3", "--pin-sheet", sheet.toString());
        assertThat(bad.exitCode()).isEqualTo(2);
        assertThat(bad.err()).contains("line 2").contains("six").doesNotContain("Exception");
        Files.writeString(sheet, "hole,front,left,right\n3,6,70,\n");
        assertThat(approach("--holes", "3", "--pin-sheet", sheet.toString()).err())
                .contains("off the green of hole 3");
    }
}
