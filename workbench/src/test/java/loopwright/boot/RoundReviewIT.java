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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tables printed in docs/rounds.md, reviewed as a reader of that page would. */
class RoundReviewIT {
    @TempDir
    Path folder;

    private Path holes = Path.of("");
    private Path strokes = Path.of("");

    @BeforeEach
    void takeTheTablesOfThePage() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "rounds.md"));
        Matcher tables = Pattern.compile("```csv\\n(.*?)```", Pattern.DOTALL).matcher(page);
        List<Path> files = new ArrayList<>();
        while (tables.find()) {
            Path file = folder.resolve("table-" + files.size() + ".csv");
            Files.writeString(file, tables.group(1));
            files.add(file);
        }
        assertThat(files).hasSize(2);
        holes = files.get(0);
        strokes = files.get(1);
    }

    private JsonNode review(Path file) throws IOException {
        Path json = folder.resolve("review.json");
        Typed run = Typed.run("round", "review", file.toString(), "--json", json.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isZero();
        Schema.assertFits("round-review.schema.json", json);
        return new ObjectMapper().readTree(json.toFile()).get("rounds").get(0);
    }

    @Test
    void countsAreReviewed() throws IOException {
        JsonNode round = review(holes);
        assertThat(round.get("tier").asText()).isEqualTo("COUNTS");
        assertThat(round.get("score").asInt()).isEqualTo(19);
        assertAddsUp(round);
    }

    @Test
    void strokesAreReviewed() throws IOException {
        JsonNode round = review(strokes);
        assertThat(round.get("tier").asText()).isEqualTo("SHOTS");
        assertThat(round.get("score").asInt()).isEqualTo(11);
        assertThat(round.get("baselineEnd").asDouble()).isZero();
        // tee lines of Table 9 at 371 and 402 yd: 3.942 and 3.993
        assertThat(round.get("baselineStart").asDouble()).isCloseTo(7.935, within(1e-9));
        assertAddsUp(round);
    }

    private static void assertAddsUp(JsonNode round) {
        double sum = 0;
        for (JsonNode row : round.get("rows")) {
            sum += row.get("gained").asDouble();
        }
        double telescoped = round.get("baselineStart").asDouble()
                - round.get("baselineEnd").asDouble()
                - round.get("strokesMeasured").asInt();
        assertThat(sum).isCloseTo(telescoped, within(1e-9));
        assertThat(round.get("total").asDouble()).isCloseTo(telescoped, within(1e-9));
    }

    @Test
    void nothingIsReviewedOrWrittenWhileARowIsBad() throws IOException {
        Files.writeString(holes, Files.readString(holes) + "2026-05-31,5,4,400,NaN,,,,,,\n");
        Path json = folder.resolve("none.json");
        Typed run = Typed.run("round", "review", holes.toString(), "--json", json.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().strip()).hasLineCount(1).contains("line 6, column 5 (score)", "--keep-good-rows");
        assertThat(json).doesNotExist();
        assertThat(run.out()).doesNotContain("Strokes gained");
    }

    @Test
    void goodRowsAreKeptOnTheUsersWord() throws IOException {
        Files.writeString(holes, Files.readString(holes) + "2026-05-31,5,4,400,NaN,,,,,,\n");
        Typed run = Typed.run("round", "review", holes.toString(), "--keep-good-rows");
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("line 6, column 5 (score): \"NaN\" is not a whole number", "4 holes: 19");
    }

    @Test
    void whatLooksOddIsAskedAndNotRefused() throws IOException {
        Files.writeString(strokes, Files.readString(strokes).replace("24,\n", "150,\n"));
        Typed run = Typed.run("round", "review", strokes.toString());
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("Hole 2, stroke 4: a putt from 50 yd.");
    }

    @Test
    void aFileThatIsNoneIsRefused() {
        Typed run = Typed.run("round", "review", folder.resolve("none.csv").toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().strip()).hasLineCount(1).contains("does not exist");
    }
}
