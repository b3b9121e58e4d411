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

/** Drills shown, drawn, logged and reviewed, as it is typed. */
class PracticeDrillsIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private Typed practice(String... words) {
        List<String> all = new ArrayList<>(List.of("practice"));
        all.addAll(List.of(words));
        return Typed.run(all.toArray(String[]::new));
    }

    private static String player() {
        return DEMO.resolve("player.json").toString();
    }

    @Test
    void showsWhatToExpectOfEveryDrillAndDrawsOne() throws IOException {
        Path json = folder.resolve("drills.json");
        Typed run = practice("drills", "--player", player(), "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        Schema.assertFits("practice-drills.schema.json", json);
        JsonNode drills = new ObjectMapper().readTree(json.toFile()).get("drills");
        assertThat(drills.size()).isGreaterThanOrEqualTo(12);
        for (JsonNode d : drills) {
            assertThat(d.get("expectedAtLevel").get("mean").asDouble())
                    .isBetween(0.0, d.get("most").asDouble());
            assertThat(d.get("expected").get("low").asInt())
                    .isLessThanOrEqualTo(d.get("expected").get("high").asInt());
        }
        for (String ending : List.of("png", "svg", "pdf")) {
            Path picture = folder.resolve("drill." + ending);
            Typed one = practice("drills", "circle-6", "--player", player(), "--picture", picture.toString());
            assertThat(one.exitCode()).as(one.err()).isZero();
            assertThat(one.out()).contains("Set-up: Twelve balls");
            assertThat(Files.size(picture)).isGreaterThan(1000);
        }
    }

    @Test
    void takesACoachsOwnDrillAndRefusesABadOneWithItsPlace() throws IOException {
        Path own = folder.resolve("own.json");
        String good = """
            {"drills": [{"name": "my-ladder", "facility": "green", "minutes": 5, "purpose": "P.", "setUp": "S.",
              "scoring": "C.", "stations": [{"putt": "past", "feet": 25, "tries": 6},
              {"shot": "chip", "yards": 10, "tries": 3, "zones": [{"kind": "inside", "radiusYards": 2}]}]}]}
            """;
        Files.writeString(own, good);
        Schema.assertFits("drills.schema.json", own);
        Typed run = practice("drills", "my-ladder", "--player", player(), "--drills", own.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("of 9");
        Files.writeString(own, good.replace("\"past\"", "\"juggle\""));
        Typed bad = practice("drills", "--player", player(), "--drills", own.toString());
        assertThat(bad.exitCode()).isEqualTo(2);
        assertThat(bad.err())
                .contains("drills[0].stations[0].putt")
                .contains("juggle")
                .doesNotContain("Exception");
        Typed none = practice("drills", "no-such", "--player", player());
        assertThat(none.exitCode()).isEqualTo(2);
        assertThat(none.err()).contains("There is no drill \"no-such\"");
    }

    @Test
    void logsAndReviewsWithoutClaimingWhatChanceExplains() throws IOException {
        String data = folder.resolve("data").toString();
        assertThat(Typed.run("store", "import", player(), "--data", data).exitCode())
                .isZero();
        String name = new ObjectMapper()
                .readTree(Path.of(player()).toFile())
                .get("name")
                .asText();
        String[] usual = {"--player", name, "--data", data};
        assertThat(log(usual, "gate", 99).err()).contains("A score of 99 cannot be: gate gives 0 to 20 points");
        assertThat(log(usual, "gate", 11).exitCode()).isZero();
        Path json = folder.resolve("review.json");
        assertThat(review(usual, json)).contains("not to be told from before yet");
        for (int i = 0; i < 12; i++) {
            assertThat(log(usual, "gate", 20).exitCode()).isZero();
        }
        assertThat(review(usual, json)).contains("better, beyond chance").contains("Drills tell first");
        Schema.assertFits("practice-review.schema.json", json);
        JsonNode line = new ObjectMapper().readTree(json.toFile()).get("skills").get(0);
        assertThat(line.get("skill").asText()).isEqualTo("start-line");
        assertThat(line.get("playings").asInt()).isEqualTo(13);
        Path zip = folder.resolve("all.zip");
        assertThat(Typed.run("store", "backup", "--data", data, "--to", zip.toString())
                        .exitCode())
                .isZero();
        String other = folder.resolve("other").toString();
        assertThat(Typed.run("store", "restore", zip.toString(), "--data", other)
                        .exitCode())
                .isZero();
        assertThat(review(new String[] {"--player", name, "--data", other}, json))
                .contains("better, beyond chance");
    }

    @Test
    void theNextWeekFollowsFromWhatWasLogged() throws IOException {
        String data = folder.resolve("data").toString();
        String course = DEMO.resolve("course.geojson").toString();
        assertThat(Typed.run("store", "import", player(), "--data", data).exitCode())
                .isZero();
        assertThat(Typed.run("store", "import", course, "--data", data).exitCode())
                .isZero();
        String name = name(player(), "/name");
        String onto = name(course, "/features/0/properties/name");
        JsonNode first = next(data, name, onto, "first.json");
        assertThat(first.get("progress")).isEmpty();
        String[] usual = {"--player", name, "--data", data};
        for (int i = 0; i < 6; i++) {
            assertThat(log(usual, "gate", 20).exitCode()).isZero();
        }
        Typed ticked = practice("log", "--player", name, "--data", data, "--skill", "decisions", "--minutes", "600");
        assertThat(ticked.out()).contains("playing the plan, 600 minutes");
        JsonNode then = next(data, name, onto, "then.json");
        assertThat(then.get("progress")).hasSize(2);
        assertThat(then.at("/byHabit/expected").asDouble())
                .as("ten hours on the plan have made him play it")
                .isLessThan(first.at("/byHabit/expected").asDouble());
        assertThat(minutes(then, "decisions")).isLessThan(minutes(first, "decisions"));
        Typed neither = practice("log", "--player", name, "--data", data, "--skill", "decisions");
        assertThat(neither.exitCode()).isEqualTo(2);
        assertThat(neither.err()).contains("--minutes N").doesNotContain("Exception");
    }

    private static String name(String file, String pointer) throws IOException {
        return new ObjectMapper().readTree(Path.of(file).toFile()).at(pointer).asText();
    }

    private JsonNode next(String data, String player, String course, String file) throws IOException {
        Path json = folder.resolve(file);
        Typed run = practice(
                "next",
                "--player",
                player,
                "--data",
                data,
                "--course",
                course,
                "--holes",
                "2",
                "--target",
                "4",
                "--hours",
                "2",
                "--weeks",
                "5",
                "--json",
                json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        Schema.assertFits("practice-plan.schema.json", json);
        return new ObjectMapper().readTree(json.toFile());
    }

    private static int minutes(JsonNode plan, String skill) {
        for (JsonNode s : plan.get("skills")) {
            if (s.get("skill").asText().equals(skill)) {
                return s.get("minutesAWeek").asInt();
            }
        }
        throw new AssertionError("no skill " + skill);
    }

    private Typed log(String[] usual, String drill, int score) {
        return practice(
                "log", usual[0], usual[1], usual[2], usual[3], "--drill", drill, "--score", Integer.toString(score));
    }

    private String review(String[] usual, Path json) {
        Typed run = practice("review", usual[0], usual[1], usual[2], usual[3], "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        return run.out();
    }
}
