package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Player file, breaks, lessons, rounds and the coach's list, typed as a coach would. */
class RecordsIT {
    private static final String PLAYER = "invented player";
    private static final String ROUNDS = """
        date,hole,par,length_yd,score,putts
        2026-05-31,1,4,371,5,2
        2026-05-31,2,3,158,3,2
        2026-06-07,1,4,371,4,2
        2026-06-07,2,3,158,x,
        """;

    @TempDir
    Path folder;

    @BeforeEach
    void keepThePlayer() {
        ok("store", "import", Path.of("..", "demo", "player.json").toString());
    }

    private Typed typed(String... args) {
        return answering("", args);
    }

    private Typed answering(String keys, String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of("--data", folder.resolve("store").toString()));
        return Typed.answering(keys, all.toArray(String[]::new));
    }

    private String ok(String... args) {
        Typed run = typed(args);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isZero();
        return run.out();
    }

    private String refused(String... args) {
        Typed run = typed(args);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().strip()).hasLineCount(1);
        return run.err();
    }

    private JsonNode json(String schema, String... args) throws IOException {
        Path json = folder.resolve("out.json");
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of("--json", json.toString()));
        ok(all.toArray(String[]::new));
        Schema.assertFits(schema, json);
        return new ObjectMapper().readTree(json.toFile());
    }

    private Path table(String text) throws IOException {
        return Files.writeString(folder.resolve("rounds.csv"), text);
    }

    @Test
    void thePlayerFileIsAskedShownAndChanged() throws IOException {
        assertThat(ok("player", "file", PLAYER)).contains("nothing is written yet");
        ok("player", "file", PLAYER, "--goal", "89", "--by", "2026-09-30", "--hours", "3,5", "--limits", "left knee");
        Typed asked = answering("85\n\n\n\nreading glasses\nwalks\n", "player", "file", PLAYER, "--ask");
        assertThat(asked.out()).contains("score to reach [89]: ", "walks or rides");
        JsonNode file = json("player-file.schema.json", "player", "file", PLAYER, "--limits", "")
                .get("answers");
        assertThat(file.get("goal").asText()).isEqualTo("85");
        assertThat(file.get("hours").asText()).isEqualTo("3,5");
        assertThat(file.get("eyesight").asText()).isEqualTo("reading glasses");
        assertThat(file.has("limits")).isFalse();
    }

    @Test
    void aJuniorNeedsAGuardiansWordAndBadAnswersAreNamed() {
        assertThat(refused("player", "file", PLAYER, "--age", "junior")).contains("guardian");
        ok("player", "file", PLAYER, "--age", "junior", "--consent", "mother, 2026-05-31");
        assertThat(refused("player", "file", PLAYER, "--goal", "8")).contains("50 to 150");
        assertThat(refused("player", "file", PLAYER, "--by", "soon")).contains("2026-05-31");
        assertThat(refused("player", "file", PLAYER, "--moves", "runs")).contains("walks, rides");
        assertThat(refused("player", "file", "Nobody")).contains("store list");
    }

    @Test
    void breaksAreKeptAndTakenOut() throws IOException {
        assertThat(ok("player", "break", PLAYER, "--on", "2026-04-01", "--why", "new driver"))
                .contains("No dated shots of this player are kept here");
        JsonNode breaks = json("player-breaks.schema.json", "player", "break", PLAYER);
        assertThat(breaks.get("breaks").get(0).get("reason").asText()).isEqualTo("new driver");
        assertThat(ok("player", "break", PLAYER, "--remove", "2026-04-01")).contains("no break");
        assertThat(refused("player", "break", PLAYER, "--remove", "2026-04-01")).contains("no break on");
        assertThat(refused("player", "break", PLAYER, "--on", "2026-04-01")).contains("--why");
    }

    @Test
    void lessonsAreKeptAndHomeworkIsDone() throws IOException {
        ok(
                "lesson",
                "add",
                "--player",
                PLAYER,
                "--date",
                "2026-06-01",
                "--notes",
                "ball too far back",
                "--agreed",
                "one club more",
                "--homework",
                "50 putts from 4 ft",
                "--due",
                "2026-06-08");
        assertThat(ok("today", "--on", "2026-06-07")).doesNotContain("50 putts");
        assertThat(ok("today", "--on", "2026-06-08")).contains("50 putts from 4 ft, due 2026-06-08");
        ok("lesson", "done", "--player", PLAYER);
        assertThat(ok("today", "--on", "2026-06-08")).doesNotContain("50 putts");
        JsonNode lesson = json("lessons.schema.json", "lesson", "list", "--player", PLAYER)
                .get("lessons")
                .get(0);
        assertThat(lesson.get("done").asBoolean()).isTrue();
        assertThat(lesson.get("agreed").asText()).isEqualTo("one club more");
        assertThat(refused("lesson", "add", "--player", PLAYER)).contains("--homework");
        assertThat(refused("lesson", "done", "--player", PLAYER)).contains("no open homework");
    }

    @Test
    void roundsAreTakenInOnceListedAndErased() throws IOException {
        Path file = table(ROUNDS);
        assertThat(ok("round", "import", file.toString(), "--player", PLAYER)).contains("Kept 2 rounds");
        assertThat(ok("round", "import", file.toString(), "--player", PLAYER)).contains("2 were there already");
        JsonNode rounds =
                json("rounds.schema.json", "round", "list", "--player", PLAYER).get("rounds");
        assertThat(rounds).hasSize(2);
        assertThat(rounds.get(0).get("score").asInt()).isEqualTo(8);
        assertThat(rounds.get(1).has("score")).isFalse();
        String id = rounds.get(0).get("id").asText();
        assertThat(ok("round", "list", "--player", PLAYER, "--erase", id)).doesNotContain(id);
    }

    @Test
    void aRoundTypedIsKept() {
        Typed added = answering("5 l s 0 1 4 2\n4\n.\n", "round", "add", "--player", PLAYER, "--date", "2026-06-14");
        assertThat(added.err()).isEmpty();
        assertThat(ok("round", "list", "--player", PLAYER)).contains("2026-06-14", "2 holes, score 9");
        assertThat(refused("round", "add")).contains("--player NAME");
        assertThat(refused("round", "add", "--player", "Nobody")).contains("Nobody");
    }

    @Test
    void aBadTableLeavesNothingBehind() throws IOException {
        Path file = table(ROUNDS + "2026-06-14,1,4,371,lots,2\n2026-06-14,2,4,371,5,2\n");
        Typed run = typed("round", "import", file.toString(), "--player", PLAYER);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.out()).contains("line 6, column 5 (score)");
        assertThat(ok("round", "list", "--player", PLAYER)).contains("No round");
        assertThat(ok("round", "import", file.toString(), "--player", PLAYER, "--keep-good-rows"))
                .contains("Kept 3 rounds");
        assertThat(refused("round", "import", table("hole,score\n1,5\n").toString(), "--player", PLAYER))
                .contains("no date");
    }

    @Test
    void aDrillIsDueAWeekAfterItWasPlayedUntilItIsGivenUp() {
        ok("practice", "log", "--player", PLAYER, "--drill", "circle-6", "--score", "8", "--on", "2025-06-01");
        assertThat(ok("today", "--on", "2025-06-07")).doesNotContain("circle-6");
        assertThat(ok("today", "--on", "2025-06-08")).contains("Work is due", "drill \"circle-6\", due 2025-06-08");
        ok("practice", "log", "--player", PLAYER, "--drill", "circle-6", "--score", "9", "--on", "2025-06-09");
        assertThat(ok("today", "--on", "2025-06-15")).doesNotContain("circle-6");
        assertThat(ok("today", "--on", "2025-07-07")).contains("due 2025-06-16", "last heard on 2025-06-09");
        assertThat(ok("today", "--on", "2025-07-08")).doesNotContain("circle-6");
    }

    @Test
    void theCoachsListTellsWhoPlaysAndWhoIsSilent() throws IOException {
        assertThat(ok("today", "--on", "2026-06-01")).contains("no round and no lesson yet");
        ok("round", "import", table(ROUNDS).toString(), "--player", PLAYER);
        ok("player", "file", PLAYER, "--plays", "2026-06-17, 2026-06-18");
        JsonNode day = json("today.schema.json", "today", "--on", "2026-06-07");
        assertThat(day.get("lines")).hasSize(1);
        assertThat(day.get("lines").get(0).get("day").asText()).isEqualTo("2026-06-17");
        assertThat(ok("today", "--on", "2026-06-27")).contains("nobody needs you");
        assertThat(ok("today", "--on", "2026-06-28")).contains("last heard on 2026-06-07");
    }
}
