package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to expect of two holes of the demo, as it is typed. */
class ExpectIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private Typed expect(String target, String holes, String tees, Path json) {
        return Typed.run(
                "expect",
                "--course",
                DEMO.resolve("course.geojson").toString(),
                "--player",
                DEMO.resolve("player.json").toString(),
                "--target",
                target,
                "--holes",
                holes,
                "--tees",
                tees,
                "--json",
                json.toString());
    }

    @Test
    void countsRoundsThatBeatTheTarget() throws IOException {
        Path json = folder.resolve("expect.json");
        Typed run = expect("7", "2,3", "middle", json);
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("A typical 7:").contains("Putts on a level green");
        Schema.assertFits("expect.schema.json", json);
        JsonNode all = new ObjectMapper().readTree(json.toFile());
        for (String column : new String[] {"usual", "whenBeaten"}) {
            JsonNode c = all.get(column);
            double holes = c.get("birdiesOrBetter").asDouble()
                    + c.get("pars").asDouble()
                    + c.get("bogeys").asDouble()
                    + c.get("doubles").asDouble()
                    + c.get("triplesOrWorse").asDouble();
            assertThat(holes).isCloseTo(2, within(1e-9)); // rounding of five divisions
        }
        assertThat(all.get("whenBeaten").get("strokes").asDouble()).isLessThanOrEqualTo(7);
        assertThat(all.get("whenBeaten").get("greens").asDouble())
                .isGreaterThan(all.get("usual").get("greens").asDouble());
        JsonNode typical = all.get("typicalRound");
        int toPar = typical.get("bogeys").asInt()
                + 2 * typical.get("doubles").asInt()
                - typical.get("birdiesOrBetter").asInt();
        // Two holes of par 7; neither an eagle nor a triple is the commonest way to a 7.
        assertThat(toPar).isZero();
    }

    @Test
    void unknownTeesAreRefusedInOneSentence() {
        Typed run = expect("7", "2,3", "purple", folder.resolve("none.json"));
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("There are no purple tees").doesNotContain("Exception");
    }
}
