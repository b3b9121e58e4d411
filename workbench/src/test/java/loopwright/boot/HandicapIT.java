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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The handicap sums as they are typed; sources of the numbers stand in HandicapReferenceTest. */
class HandicapIT {
    @TempDir
    Path folder;

    private JsonNode json(String typed) throws IOException {
        Path file = folder.resolve("answer.json");
        List<String> args = new ArrayList<>(List.of(("handicap " + typed).split(" ")));
        args.addAll(List.of("--json", file.toString()));
        Typed run = Typed.run(args.toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("only an authorised association issues a Handicap Index");
        Schema.assertFits("handicap.schema.json", file);
        return new ObjectMapper().readTree(file.toFile());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "index --differentials 15.3,15.2,16.6; index; 13.2",
                "index --differentials 40.7,42.4,36.1; index; 34.1",
                "caps --calculated 11.6 --low 6.5; index; 10.6",
                "caps --calculated 13.4 --low 10.0; index; 13.2",
                "differential --gross 94 --rating 73.0 --slope 125; differential; 19.0",
                "differential --gross 45 --rating 33.7 --slope 113 --holes 9 --index 10.0; differential; 17.7",
                "differential --gross 66 --rating 72 --slope 113 --holes 14 --par 72 --par-played 56 --index 18;"
                        + " differential; 14.7",
                "playing --index 7.9 --slope 129 --rating 71.1 --par 72 --allowance 85; playingHandicap; 7",
                "playing --index 27.7 --slope 129 --rating 71.1 --par 72 --allowance 85%; playingHandicap; 26",
                "course --index +2.1 --slope 113 --rating 72 --par 72; courseHandicap; -2",
                "strokes --handicap 4 --stroke-indexes 17,1,3,5,7,9,11,13,15 --pars 4,4,4,4,4,4,4,4,4"
                        + " --scores 9,9,4,4,4,4,4,4,4; adjustedGross; 41"
            })
    void answersAsPublished(String typed, String key, double value) throws IOException {
        assertThat(json(typed).get(key).asDouble()).isEqualTo(value);
    }

    @Test
    void capsAndAnExceptionalScoreWorkTogetherInAnIndex() throws IOException {
        String twenty = "20.0,".repeat(19) + "9.9";
        JsonNode answer = json("index --differentials " + twenty + " --current 20.0 --low 12.0");
        assertThat(answer.get("exceptionalReduction").asDouble()).isEqualTo(-2);
        // lowest 8: 7.9 and seven times 18.0 -> 16.7375 -> 16.7; low 12.0 + 3.0 + 1.7 / 2 = 15.85 -> 15.9
        assertThat(answer.get("calculated").asDouble()).isEqualTo(16.7);
        assertThat(answer.get("index").asDouble()).isEqualTo(15.9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "index --differentials 15.3,15.2; at least 3",
                "index --differentials 15.3,NaN,12; Value 2 of --differentials",
                "index --differentials 15.3,1e9,12; Value 2 of --differentials",
                "index --differentials 15.3,900,12; outside -20 to 130",
                "index --differentials 15.3,,12; Value 2 of --differentials",
                "index --differentials 15.3,14,12 --low 10; only once there are 20 scores",
                "differential --gross 45 --rating 33.7 --slope 113 --holes 9; needs the player's index",
                "differential --gross 66 --rating 72 --slope 113 --holes 14 --index 18; --par-played",
                "differential --gross 94 --rating 73 --slope 160; outside 55 to 155",
                "differential --gross 94 --rating 730 --slope 125; outside 40 to 90",
                "differential --gross 94 --rating 73 --slope x; not a whole number",
                "differential --gross 94 --rating 73 --slope 125 --pcc 4; outside -1 to 3",
                "differential --gross 94 --rating 73 --slope 125 --holes 5 --index 3; 10 to 17 or 18",
                "playing --index 60 --slope 129 --rating 71.1 --par 72 --allowance 85; outside -15 to 54",
                "playing --index 7.9 --slope 129 --rating 71.1 --par 72 --allowance 0; outside 1 to 150",
                "caps --calculated 11.6; Missing required option",
                "strokes --handicap 4 --stroke-indexes 1,1,2; 9 or 18 different numbers",
                "strokes --handicap 4.5 --stroke-indexes 1,2,3,4,5,6,7,8,9; whole number",
                "index --differentials 15.3,15.2,16.6 --json /no/such/folder/x.json; folder does not exist"
            })
    void refusesInOneSentence(String typed, String says) {
        Typed run = Typed.run(("handicap " + typed).split(" "));
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().strip()).contains(says).hasLineCount(1);
        assertThat(run.out()).doesNotContain("Exception");
    }

    @Test
    void nothingIsWrittenBesideARefusal() throws IOException {
        Path file = folder.resolve("none.json");
        Typed.run("handicap", "index", "--differentials", "1,2", "--json", file.toString());
        try (var files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void aRecordGivesTheIndexAfterEveryScore() throws IOException {
        Path file = folder.resolve("record.csv");
        Files.writeString(file, """
                date,differential,gross,rating,slope,holes
                2026-04-01,15.3,,,,
                2026-04-08,15.2,,,,
                2026-04-15,16.6,,,,
                2026-04-22,,94,73.0,125,18
                2026-04-29,,45,33.7,113,9
                """);
        JsonNode scores = json("record " + file).get("scores");
        assertThat(scores.get(1).has("indexAfter")).isFalse();
        assertThat(scores.get(2).get("indexAfter").asDouble()).isEqualTo(13.2);
        assertThat(scores.get(3).get("differential").asDouble()).isEqualTo(19.0);
        assertThat(scores.get(3).get("indexAfter").asDouble()).isEqualTo(14.2); // four scores: lowest less 1
        // nine holes: 11.3 + 0.52 x 14.2 + 1.197 = 19.881
        assertThat(scores.get(4).get("differential").asDouble()).isEqualTo(19.9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "date,score|2026-04-01,90; needs the columns date and differential",
                "date,differential|2026-04-01,x; line 2, column 2 (differential)",
                "date,differential|,12; line 2, column 1 (date)",
                "date,differential|2026-04-08,12|2026-04-01,12; line 3: 2026-04-01 is earlier",
                "date,gross,rating,slope,holes|2026-04-01,45,33.7,113,9; line 2: A 9-hole differential needs",
                "date,gross,rating,slope|2026-04-01,94,73.0,; a gross score with rating and slope",
                "date,differential; has no scores"
            })
    void aRecordThatCannotBeUsedIsRefused(String lines, String says) throws IOException {
        Path file = folder.resolve("record.csv");
        Files.writeString(file, lines.replace('|', '\n') + "\n");
        Typed run = Typed.run("handicap", "record", file.toString());
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().strip()).contains(says).hasLineCount(1);
    }
}
