package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo player beside scores of one short hole, as it is typed. */
class PlayerCheckIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private Typed check(String scores, Path json, String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("scores.csv"), scores);
        String[] usual = {
            "player",
            "check",
            "--scores",
            file.toString(),
            "--course",
            DEMO.resolve("course.geojson").toString(),
            "--player",
            DEMO.resolve("player.json").toString(),
            "--holes",
            "3",
            "--json",
            json.toString()
        };
        String[] all = java.util.Arrays.copyOf(usual, usual.length + more.length);
        System.arraycopy(more, 0, all, usual.length, more.length);
        return Typed.run(all);
    }

    @Test
    void saysTheGapAndWhatWasSetAside() throws IOException {
        Path json = folder.resolve("check.json");
        String rows = "score,course,rating,slope\n" + "20,,,\n".repeat(6) + "21,Elsewhere,,\n20,,30.5,113\nx,,,\n";
        Typed run = check(rows, json, "--rating", "30.1", "--slope", "113");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("Not yet calibrated: 7 real scores run")
                .contains("line 8: played from other tees")
                .contains("line 10, column 1 (score): \"x\" is not a whole number")
                .contains("Brought here from other tees by course rating and slope: 1 of 7 scores.");
        Schema.assertFits("player-check.schema.json", json);
        JsonNode all = new ObjectMapper().readTree(json.toFile());
        // the same slope: 0.4 strokes between the two ratings
        assertThat(all.get("scores").get(6).asDouble()).isCloseTo(19.6, within(1e-9));
        assertThat(all.get("calibration").get("gap").asDouble())
                .isCloseTo((6 * 20 + 19.6) / 7 - all.get("modelledMean").asDouble(), within(1e-9));
        // by habit a hole cannot cost fewer strokes than by the best play, but for the noise of two evaluations
        assertThat(all.get("habitCost").asDouble()).isGreaterThan(-0.01);
    }

    @Test
    void halfARatingIsRefused() throws IOException {
        Typed run = check("score\n20\n", folder.resolve("none.json"), "--rating", "71.2");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("--rating and --slope go together");
        assertThat(folder.resolve("none.json")).doesNotExist();
    }
}
