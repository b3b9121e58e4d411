package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan of one demo hole for a day whose warm-up was looked at, as it is typed. */
class TodayIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private static Typed plan(String... more) {
        List<String> args = new ArrayList<>(List.of(
                "plan",
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

    private JsonNode read(Path json) throws IOException {
        Schema.assertFits("plan.schema.json", json);
        return new ObjectMapper().readTree(json.toFile());
    }

    @Test
    void thePlanMovesWithTheBallsAndSaysByHowLittle() throws IOException {
        Path balls = folder.resolve("balls.txt");
        Files.writeString(balls, "# this morning\ndriver: R20 R25 R15 R20 R20 R20\n");
        Path right = folder.resolve("right.json");
        Typed run = plan("--today", balls.toString(), "--json", right.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("Today: your 6 balls lay")
                .contains("is taken")
                .contains("if your balls go");
        Path left = folder.resolve("left.json");
        assertThat(plan("--today", "driver: L20 L25 L15 L20 L20 L20", "--json", left.toString())
                        .exitCode())
                .isZero();
        JsonNode r = read(right);
        JsonNode l = read(left);
        JsonNode taken = r.get("today").get("balls");
        assertThat(taken.get("takenYards").asDouble())
                .isPositive()
                .isLessThan(taken.get("seenYards").asDouble());
        // Six balls right and six left part the aims of the tee shot by about what the plan counts on: exactly so where
        // the
        // usual target is kept, within the flat ground of a search where it is not.
        double apart = offset(l) - offset(r);
        double told = taken.get("takenYards").asDouble()
                - l.get("today").get("balls").get("takenYards").asDouble();
        assertThat(apart).isCloseTo(told, within(5.0));
        // Start line and finish: a ball that is expected right of its line starts left of the line to the finish.
        JsonNode start = r.get("holes").get(0).get("shots").get(0).get("start");
        assertThat(start.get("spotOffsetInches").asDouble()).isNegative();
        JsonNode lines = r.get("holes").get(0).get("startLines");
        assertThat(lines).hasSize(3);
        assertThat(lines.get(1).get("offsetYards").asDouble())
                .as("the line for balls that go left lies right of that for balls that go right")
                .isGreaterThan(lines.get(2).get("offsetYards").asDouble());
    }

    private static double offset(JsonNode plan) {
        return plan.get("holes")
                .get(0)
                .get("shots")
                .get(0)
                .get("aim")
                .get("offsetYards")
                .asDouble();
    }

    @Test
    void clubsNotInTheBagNameTheNearest() {
        Typed run = plan("--today", "drivr: R8");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("the nearest is driver").doesNotContain("Exception");
        assertThat(plan("--today", "driver: Q8").err()).contains("\"Q8\" is no ball");
        assertThat(plan("--today", "driver: R8/-400").err()).contains("400 yd short of what is expected with a driver");
        assertThat(plan("--today", "R8 R9").err()).contains("neither a file nor balls");
    }

    @Test
    void theDialIsTheCoachs() {
        Typed run = plan("--plays-longer", "wett=2");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("the nearest is wet");
    }
}
