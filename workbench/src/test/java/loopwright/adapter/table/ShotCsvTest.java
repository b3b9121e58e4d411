package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import loopwright.action.ShotImport;
import loopwright.action.UserFault;
import loopwright.player.Setting;
import loopwright.player.Shot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShotCsvTest {
    @TempDir
    private Path folder;

    @Test
    void unitsAreReadFromTheColumnNames() throws IOException {
        Shot shot = read("club,carry_yd,side_ft\n7i,150,-30\n").log().shots().get(0);

        assertThat(shot.club().name()).isEqualTo("7-iron");
        assertThat(shot.carryMetres().getAsDouble()).isCloseTo(137.16, within(1e-9));
        assertThat(shot.sideMetres().getAsDouble()).isCloseTo(-9.144, within(1e-9));
        assertThat(shot.setting()).isEqualTo(Setting.RANGE);
    }

    @Test
    void semicolonsDecimalCommasAndSidesWithLettersAreRead() throws IOException {
        List<Shot> shots = read("Club;Carry [m];Side (m)\ndriver;201,5;12,5 L\nPW;101;3R\n")
                .log()
                .shots();

        assertThat(shots.get(0).carryMetres().getAsDouble()).isEqualTo(201.5);
        assertThat(shots.get(0).sideMetres().getAsDouble()).isEqualTo(-12.5);
        assertThat(shots.get(1).sideMetres().getAsDouble()).isEqualTo(3);
    }

    @Test
    void columnsCanBeMapped() throws IOException {
        Path file = write("Schläger,Weite\ndriver,200\n");
        Shot shot = new ShotCsv()
                .read(List.of(file), Map.of("carry_m", "Weite", "club", "Schläger"), Setting.COURSE)
                .log()
                .shots()
                .get(0);

        assertThat(shot.carryMetres().getAsDouble()).isEqualTo(200);
        assertThat(shot.setting()).isEqualTo(Setting.COURSE);
    }

    @Test
    void datesMakeSessionsAndAges() throws IOException {
        ShotImport read =
                read("club,carry_m,date\ndriver,200,2026-05-01\ndriver,201,2026-05-11\ndriver,202,2026-05-11\n");

        assertThat(read.log().shots()).extracting(Shot::session).containsExactly(0, 1, 1);
        assertThat(read.log().shots()).extracting(Shot::ageDays).containsExactly(10.0, 0.0, 0.0);
    }

    @Test
    void puttsPoorLiesAndEmptyRowsAreSetAsideAndTold() throws IOException {
        ShotImport read = read("club,carry_m,lie\ndriver,200,tee\n7i,120,rough\nputter,5,\n8i,,fairway\n");

        assertThat(read.log().shots()).hasSize(1);
        assertThat(String.join(" ", read.notes()))
                .contains("good lies only")
                .contains("putt list")
                .contains("no length");
    }

    @Test
    void pacedDrivesAreCourseShots() throws IOException {
        Shot shot = read("club,total_paces\ndriver,230\n").log().shots().get(0);

        assertThat(shot.carryMetres()).isEmpty();
        assertThat(shot.totalMetres().getAsDouble()).isCloseTo(230 * 0.9144, within(1e-9));
        assertThat(shot.setting().onCourse()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "club,carry_yd\\ndriver,NaN\\n | line 2, column 2 (carry_yd): \"NaN\"",
                "club,carry_yd\\ndriver,1e9\\n | line 2, column 2 (carry_yd): \"1e9\"",
                "club,carry_yd\\ndriver,900\\n | line 2, column 2 (carry_yd): \"900\"",
                "club,carry_yd\\ndriver,150 m\\n | \"150 m\" is not a number",
                "club,carry_yd\\nbanana,150\\n | \"banana\" is not a club",
                "club,carry_yd,carry_m\\ndriver,150,140\\n | gives carry a second time",
                "club,carry\\ndriver,150\\n | tells no unit",
                "club,side_yd\\ndriver,15\\n | lacks a column carry_yd",
                "carry_yd\\n15\\n | lacks a column club",
                "club,carry_yd\\n | no shot that can be fitted",
                "club,carry_yd,date\\ndriver,150,31.5.26\\n | a date like",
                "club,carry_yd\\ndriver,150,7,8\\n | one of 4",
                "club,carry_yd,side_yd\\n7i,120,300\\n | line 2, column 3 (side_yd): \"300\" is not within the ball's own length",
                "club,carry_yd,total_yd\\n7i,150,100\\n | line 2, column 3 (total_yd): \"100\" is not the end of a ball",
                "club,carry_yd,date\\n7i,150,2062-05-01\\n | line 2, column 3 (date): \"2062-05-01\" is not a day that has been",
                "Club,Carry (yd)\\n7i,x\\n | line 2, column 2 (Carry (yd)): \"x\"",
                "Schläger,Weite (m)\\n7i,x\\n | it has Schläger, Weite (m)",
            })
    void badInputIsOneSentenceWithItsPlace(String text, String expected) throws IOException {
        assertThatThrownBy(() -> read(text.replace("\\n", "\n")))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("shots.csv")
                .hasMessageContaining(expected)
                .hasMessageNotContaining("\n");
    }

    @Test
    void aBallThatSpinsBackAndOneFromTomorrowHereAreKept() throws IOException {
        assertThat(read("club,carry_yd,total_yd\nPW,100,92\n").log().shots()).hasSize(1);
        Clock yesterday = Clock.fixed(Instant.parse("2026-05-30T12:00:00Z"), ZoneOffset.UTC);
        Path file = write("club,carry_yd,date\nPW,100,2026-05-31\n");
        assertThat(new ShotCsv(yesterday)
                        .read(List.of(file), Map.of(), Setting.RANGE)
                        .log()
                        .shots())
                .hasSize(1);
    }

    @Test
    void aQuantityThatIsNoneIsRefusedBeforeTheColumnsAreLookedAt() throws IOException {
        Path file = write("club,carry\nPW,100\n");
        assertThatThrownBy(() -> new ShotCsv().read(List.of(file), Map.of("height", "carry"), Setting.RANGE))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("nothing is called \"height\"");
    }

    @Test
    void emptyFileIsTold() {
        assertThatThrownBy(() -> read("")).isInstanceOf(UserFault.class).hasMessageContaining("is empty");
    }

    private ShotImport read(String text) throws IOException {
        return new ShotCsv().read(List.of(write(text)), Map.of(), Setting.RANGE);
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("shots.csv"), text);
    }
}
