package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.player.DayEffect;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayerProfile;
import loopwright.practice.Skill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Practice for one hole of the demo, as it is typed. */
class PracticePlanIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private Typed plan(String... more) {
        return planFor(DEMO.resolve("player.json"), more);
    }

    private static Typed planFor(Path player, String... more) {
        List<String> all = new ArrayList<>(List.of("practice", "plan", "--target", "4", "--holes", "2"));
        all.addAll(List.of("--course", DEMO.resolve("course.geojson").toString(), "--player", player.toString()));
        all.addAll(List.of(more));
        return Typed.run(all.toArray(String[]::new));
    }

    @Test
    void splitsTheHoursAndSaysWhy() throws IOException {
        Path json = folder.resolve("practice.json");
        Typed run = plan("--hours", "2.5", "--weeks", "6", "--must", "chip=0.5", "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("Most of the time goes to")
                .contains("under these assumed rates of learning")
                .contains("rule of thumb")
                .contains("Stop at pain");
        Schema.assertFits("practice-plan.schema.json", json);
        JsonNode all = new ObjectMapper().readTree(json.toFile());
        int minutes = 0;
        int chips = 0;
        for (JsonNode cell : all.get("split")) {
            minutes += cell.get("minutesAWeek").asInt();
            chips += cell.get("skill").asText().equals("chip")
                    ? cell.get("minutesAWeek").asInt()
                    : 0;
        }
        assertThat(minutes).isEqualTo(150);
        assertThat(chips).isGreaterThanOrEqualTo(30);
        assertThat(all.get("after").get("chance").asDouble())
                .isGreaterThan(all.get("byHabit").get("chance").asDouble());
    }

    @Test
    void aPoorLagPutterIsToldWhyInOneSentence() {
        Path poor = folder.resolve("poor.json");
        JsonPlayerFiles files = new JsonPlayerFiles();
        PlayerProfile usual = files.read(DEMO.resolve("player.json"));
        files.write(new PlayerProfile(Skill.PACE.of(usual.player(), 2.2), usual.day(), usual.habit()), poor);
        Typed run = planFor(poor, "--facilities", "range,short-game-area,green");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out())
                .containsPattern("Most of the time goes to pace of putts, where he is 1\\.\\d times as wide as usual at"
                        + " his level: \\d:\\d\\d a week are assumed to bring");
    }

    @Test
    void aPlayerNobodyMeasuredIsToldThatItCannotBeSaidYet() {
        Path unknown = folder.resolve("unknown.json");
        Player assumed = PlayerPrior.of(90, Player.Hand.RIGHT).player("unknown");
        new JsonPlayerFiles().write(new PlayerProfile(assumed, DayEffect.ASSUMED), unknown);
        Typed run = planFor(unknown, "--facilities", "range,short-game-area,green");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("It cannot be said yet: 100 % of these hours rest on skills nobody has measured")
                .contains("Measure first:")
                .doesNotContain("Most of the time goes to");
    }

    @Test
    void badHoursAreRefusedInOneSentence() {
        Path json = folder.resolve("none.json");
        assertRefused(plan("--hours", "0", "--json", json.toString()), "--hours 0.0 is no time to practise");
        assertRefused(plan("--facilities", "pool"), "\"pool\" is no place to practise");
        assertRefused(plan("--must", "juggling=1"), "\"juggling\" is no skill");
        assertRefused(plan("--must", "chip=9"), "--must asks for more than the 4.0 hours");
        assertThat(Files.exists(json)).isFalse();
    }

    private static void assertRefused(Typed run, String sentence) {
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains(sentence).doesNotContain("Exception");
    }
}
