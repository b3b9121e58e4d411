package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to expect of two holes of the demo, as it is typed. */
class ExpectIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private Typed expect(String target, String holes, String tees, Path json, String... more) {
        List<String> args = new ArrayList<>(List.of(
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
                json.toString()));
        args.addAll(List.of(more));
        return Typed.run(args.toArray(String[]::new));
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
    void aWarmUpOfWildBallsMakesTheHoleHarder() throws IOException {
        Path usual = folder.resolve("usual.json");
        assertThat(expect("4", "1", "middle", usual).exitCode()).isZero();
        Path wild = folder.resolve("wild.json");
        Typed run = expect(
                "4", "1", "middle", wild, "--today", "driver: R60 L60 R55 L50 R60 L65 R50 L60", "--plays-longer", "4");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("Today: your 8 balls lay").contains("plays +4.0 % longer");
        Schema.assertFits("expect.schema.json", wild);
        assertThat(strokes(wild)).isGreaterThan(strokes(usual));
        JsonNode today = new ObjectMapper().readTree(wild.toFile()).get("today");
        assertThat(today.at("/balls/count").asInt()).isEqualTo(8);
        assertThat(today.get("playsLongerPercent").asDouble()).isEqualTo(4);
    }

    private static double strokes(Path json) throws IOException {
        return new ObjectMapper().readTree(json.toFile()).at("/usual/strokes").asDouble();
    }

    @Test
    void ballsOfAClubThatIsNotInTheBagAreRefusedInOneSentence() {
        Typed run = expect("4", "1", "middle", folder.resolve("none.json"), "--today", "11-iron: R5");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("11-iron").doesNotContain("Exception");
    }

    @Test
    void unknownTeesAreRefusedInOneSentence() {
        Typed run = expect("7", "2,3", "purple", folder.resolve("none.json"));
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("There are no purple tees").doesNotContain("Exception");
    }
}
