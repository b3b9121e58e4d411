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

/** Tees of two holes of the demo, as it is typed. */
class TeesIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private static Typed tees(String... more) {
        List<String> args = new ArrayList<>(List.of(
                "tees",
                "--course",
                DEMO.resolve("course.geojson").toString(),
                "--player",
                DEMO.resolve("player.json").toString()));
        args.addAll(List.of(more));
        return Typed.run(args.toArray(String[]::new));
    }

    @Test
    void shorterTeesAreEasier() throws IOException {
        Path json = folder.resolve("tees.json");
        Typed run =
                tees("--target", "8", "--holes", "2,3", "--mixed", "blend=back, forward 3", "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("Recommended:").contains("Solved coarsely");
        Schema.assertFits("tees.schema.json", json);
        JsonNode sets = new ObjectMapper().readTree(json.toFile()).get("sets");
        JsonNode first = sets.get(0);
        JsonNode last = sets.get(sets.size() - 1);
        assertThat(first.get("lengthYards").asDouble())
                .isGreaterThan(last.get("lengthYards").asDouble());
        assertThat(first.get("expected").asDouble())
                .isGreaterThan(last.get("expected").asDouble());
        assertThat(first.get("pTarget").asDouble())
                .isLessThan(last.get("pTarget").asDouble());
        List<Double> lengths = new ArrayList<>();
        sets.forEach(set -> lengths.add(set.get("lengthYards").asDouble()));
        assertThat(lengths).as("no set is told twice").doesNotHaveDuplicates();
        JsonNode blend = sets.get(0);
        for (JsonNode set : sets) {
            double clubs = 0;
            for (JsonNode share : set.get("approaches")) {
                clubs += share.asDouble();
            }
            assertThat(clubs).isCloseTo(1, within(1e-6)); // shares of one par 4
            blend = set.get("name").asText().equals("blend") ? set : blend;
        }
        // The par 3 from the front, the par 4 from the back: between the two, and the back tee's clubs.
        assertThat(blend.get("name").asText()).isEqualTo("blend");
        assertThat(blend.get("approaches")).isEqualTo(first.get("approaches"));
        assertThat(blend.get("expected").asDouble())
                .isLessThan(first.get("expected").asDouble())
                .isGreaterThan(last.get("expected").asDouble());
    }

    @Test
    void onADayThatPlaysLongerMoreClubIsLeft() throws IOException {
        Path usual = folder.resolve("usual.json");
        Path longer = folder.resolve("longer.json");
        assertThat(tees("--target", "5", "--holes", "2", "--json", usual.toString())
                        .exitCode())
                .isZero();
        Typed run = tees(
                "--target",
                "5",
                "--holes",
                "2",
                "--today",
                "driver: R5/-20 R0/-25 L5/-20",
                "--plays-longer",
                "8",
                "--json",
                longer.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("Today: your 3 balls lay").contains("plays +8.0 % longer");
        Schema.assertFits("tees.schema.json", longer);
        assertThat(back(longer).get("expected").asDouble())
                .isGreaterThan(back(usual).get("expected").asDouble());
        assertThat(back(longer).at("/approaches/wedge").asDouble())
                .isLessThan(back(usual).at("/approaches/wedge").asDouble());
    }

    private static JsonNode back(Path json) throws IOException {
        return new ObjectMapper().readTree(json.toFile()).at("/sets/0");
    }

    @Test
    void theDrivingDistanceAloneNeedsNoSolving() {
        Typed run = tees("--target", "89", "--driving-distance-only");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("published").contains("nothing was solved");
    }

    @Test
    void whatCannotBeReadOrWrittenIsToldBeforeTheLongWork() {
        // a target that only the work itself would refuse is not come to
        Typed partner = tees("--target", "12", "--partner", "nobody.json");
        assertThat(partner.exitCode()).isEqualTo(2);
        assertThat(partner.err()).contains("nobody.json").doesNotContain("--target");
        Typed json = tees(
                "--target",
                "12",
                "--json",
                folder.resolve("none").resolve("tees.json").toString());
        assertThat(json.exitCode()).isEqualTo(2);
        assertThat(json.err()).contains("its folder does not exist").doesNotContain("--target");
        // all sets are compared, so none is asked for
        assertThat(tees("--target", "89", "--tees", "white").err()).contains("--tees");
    }

    @Test
    void unknownTeesOfAMixedSetNameTheChoices() {
        Typed run = tees("--target", "8", "--holes", "2,3", "--mixed", "blend=back, purple 3");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("purple 3").contains("the sets are").doesNotContain("Exception");
    }
}
