package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The wedge table of the demo player, as it is typed. */
class WedgesIT {
    private static final String PLAYER = Path.of("..", "demo", "player.json").toString();

    @TempDir
    Path folder;

    @Test
    void coversEveryFiveYardsWithTheClubThatFits() throws IOException {
        Path json = folder.resolve("wedges.json");
        Typed run = Typed.run("wedges", "--player", PLAYER, "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        Schema.assertFits("wedges.schema.json", json);
        JsonNode rows = new ObjectMapper().readTree(json.toFile()).get("rows");
        assertThat(rows).hasSize(23);
        for (int i = 0; i < rows.size(); i++) {
            assertThat(rows.get(i).get("yards").asInt()).isEqualTo(20 + 5 * i);
        }
        // Further away is worse by far more than two standard errors once 50 yd lie between.
        for (int i = 10; i < rows.size(); i++) {
            assertThat(rows.get(i).get("expected").asDouble())
                    .isGreaterThan(rows.get(i - 10).get("expected").asDouble());
        }
        // What is played from a full club's own length is never a club of half that length.
        assertThat(rows.get(rows.size() - 1).get("shot").asText())
                .doesNotContain("half")
                .doesNotContain("pitch");
        assertThat(rows.get(0).get("shot").asText()).isIn("pitch", "chip");
    }

    @Test
    void aReaderOfMetresGetsStepsOfFiveMetres() {
        Typed run = Typed.run("wedges", "--player", PLAYER, "--units", "metres");
        assertThat(run.exitCode()).as(run.err()).isZero();
        List<String> rows =
                run.out().lines().filter(l -> l.matches(" +\\d+ .*%.* m .*")).toList();
        assertThat(rows).hasSize(21); // 20 to 120 m
        for (int i = 0; i < rows.size(); i++) {
            assertThat(rows.get(i)).doesNotContain(" ft");
            assertThat(rows.get(i).strip()).startsWith(20 + 5 * i + " ");
        }
        assertThat(run.out()).contains("a green 26 m across").doesNotContain(" yd");
    }

    @Test
    void onlyFairwayAndRoughAreAsked() {
        Typed run = Typed.run("wedges", "--player", PLAYER, "--lie", "water");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("fairway or rough").doesNotContain("Exception");
    }
}
