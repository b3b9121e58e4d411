package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Other bags on one hole of the demo, as it is typed. */
class BagIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private static Typed bag(String... more) {
        List<String> args = new ArrayList<>(List.of(
                "bag",
                "--course",
                DEMO.resolve("course.geojson").toString(),
                "--player",
                DEMO.resolve("player.json").toString(),
                "--target",
                "4",
                "--holes",
                "1"));
        args.addAll(List.of(more));
        return Typed.run(args.toArray(String[]::new));
    }

    @Test
    void aDriverIsMissedAndASwapForItselfIsNot() throws IOException {
        Path json = folder.resolve("bag.json");
        Typed run = bag("--swap", "driver=", "--swap", "60-wedge=50-wedge", "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        Schema.assertFits("bag.schema.json", json);
        JsonNode all = new ObjectMapper().readTree(json.toFile());
        double now = all.get("now").get("pTarget").asDouble();
        // 391 yd without a driver: some 30 yd less off the tee cost a player of this length far more than a point.
        assertThat(all.get("changes").get(0).get("then").get("pTarget").asDouble())
                .isLessThan(now - 0.02);
        assertThat(all.get("changes").get(0).get("gain").asDouble()).isNegative();
    }

    @Test
    void fifteenClubsAreRefused() {
        Typed run = bag("--swap", "=7-wood 200 carry");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("15 clubs").contains("Rule 4.1b").doesNotContain("Exception");
    }

    @Test
    void aClubThatIsNotThereNamesTheNearest() {
        Typed run = bag("--swap", "5-irn=7-wood");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("the nearest is 5-iron");
    }
}
