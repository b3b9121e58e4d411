package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import loopwright.action.RoundImport;
import loopwright.action.RowProblem;
import loopwright.action.UserFault;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleMark;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Lie;
import loopwright.scoring.RecordTier;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.TeeBall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundCsvTest {
    private static final double METRES = 1e-9;

    @TempDir
    Path folder;

    private RoundImport read(String... lines) throws IOException {
        Path file = folder.resolve("round.csv");
        Files.writeString(file, String.join("\n", lines) + "\n");
        return new RoundCsv().read(file);
    }

    private RoundRecord only(String... lines) throws IOException {
        RoundImport read = read(lines);
        assertThat(read.problems()).isEmpty();
        assertThat(read.rounds()).hasSize(1);
        return read.rounds().get(0);
    }

    @Test
    void scoresAreTheThinnestTier() throws IOException {
        RoundRecord round = only("hole,par,score", "10,4,5", "11,3,x", "12,5,6");
        assertThat(round.tier()).isEqualTo(RecordTier.SCORE);
        assertThat(round.startHole()).isEqualTo(10);
        assertThat(round.holes().get(1).end()).isEqualTo(HoleEnd.PICKED_UP);
        assertThat(round.score()).isEmpty();
        assertThat(round.par()).hasValue(12);
    }

    @Test
    void countsAreRead() throws IOException {
        RoundRecord round = only(
                "Hole;Par;Length (m);Score;Tee ball;Approach;Penalties;Chips;First putt (paces);Putts;Temporary green",
                "1;4;350,5;6;Lost;short;1;1;4,5;2;yes");
        HoleRecord hole = round.holes().get(0);
        assertThat(round.tier()).isEqualTo(RecordTier.COUNTS);
        assertThat(hole.length().orElseThrow().metres()).isCloseTo(350.5, within(METRES));
        assertThat(hole.counts().teeBall()).hasValue(TeeBall.LOST);
        assertThat(hole.counts().firstPutt().orElseThrow().feet()).isCloseTo(13.5, within(METRES));
        assertThat(hole.marks()).containsExactly(HoleMark.TEMPORARY_GREEN);
    }

    @Test
    void strokesOfAHoleFollowEachOther() throws IOException {
        RoundRecord round = only(
                "hole,club,lie,to_hole_yd,to_hole_ft,penalty,conceded",
                "1,driver,tee,380,,,",
                "1,7-iron,Rough,140,,1,",
                "1,wedge,bunker,20,,,",
                "1,putter,green,,12,,",
                "1,putter,green,,2,,yes",
                "2,7-iron,tee,150,,,");
        HoleRecord hole = round.holes().get(0);
        assertThat(hole.shots()).hasSize(4);
        assertThat(hole.shots().get(2).lie()).isEqualTo(Lie.SAND);
        assertThat(hole.end()).isEqualTo(HoleEnd.CONCEDED);
        assertThat(hole.score()).hasValue(6);
        assertThat(hole.conceded().orElseThrow().toHole().feet()).isCloseTo(2, within(METRES));
    }

    @Test
    void placesAreTheRichestTier() throws IOException {
        RoundRecord round = only("hole,lie,to_hole_m,lat,lon", "1,tee,140,56.3,-2.8", "1,green,3,56.301,-2.8");
        assertThat(round.tier()).isEqualTo(RecordTier.PLACES);
    }

    @Test
    void roundsOfOneFileAreToldApart() throws IOException {
        RoundImport read = read("date,format,hole,score", "2026-05-01,,1,4", "2026-05-08,Scramble,1,3");
        assertThat(read.rounds()).extracting(RoundRecord::name).containsExactly("2026-05-01", "2026-05-08");
        assertThat(read.rounds()).extracting(RoundRecord::team).containsExactly(false, true);
    }

    @Test
    void commentsEmptyLinesAndAMarkBeforeTheTextAreNoRows() throws IOException {
        RoundRecord round = only("\uFEFF# my card", "", "hole,score", ",", "1,4", "  ");
        assertThat(round.holes()).hasSize(1);
    }

    @Test
    void columnsNotKnownAreNamed() throws IOException {
        assertThat(read("hole,score,weather", "1,4,wet").ignored()).containsExactly("weather");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hole,score|0,4|1|hole",
                "hole,score|x,4|1|hole",
                "hole,score|,4|1|hole",
                "hole,score|1,NaN|2|score",
                "hole,score|1,1e9|2|score",
                "hole,score|1,-4|2|score",
                "hole,score|1,|2|score",
                "hole,score|1,4,5|0|''",
                "hole,score|1,\"4|0|''",
                "hole,par,score|1,7,4|2|par",
                "hole,score,conceded|1,4,maybe|3|conceded",
                "hole,score,date|1,4,31.5.2026|3|date",
                "hole,score,date|1,4,2026-02-30|3|date",
                "hole,score,tee_ball|1,4,nowhere|3|tee_ball",
                "hole,score,first_putt_ft|1,4,1000000000|3|first_putt_ft",
                "hole,score,first_putt_ft,first_putt_m|1,4,10,3|3|first_putt_ft",
                "hole,lie,to_hole_yd|1,moon,100|2|lie",
                "hole,lie,to_hole_yd|1,tee,|3|to_hole_yd",
                "hole,lie,to_hole_yd|1,tee,1e9|3|to_hole_yd",
                "hole,lie,to_hole_yd,lat,lon|1,tee,100,91,0|4|lat",
                "hole,lie,to_hole_yd,lat,lon|1,tee,100,50,|5|lon"
            })
    void aBadRowIsNamedWithLineAndColumn(String header, String row, int column, String name) throws IOException {
        RoundImport read = read("# a card", header, row);
        assertThat(read.problems()).hasSize(1);
        RowProblem problem = read.problems().get(0);
        assertThat(problem.line()).isEqualTo(3);
        assertThat(problem.column()).isEqualTo(column);
        assertThat(problem.name()).isEqualTo(name);
        assertThat(problem.sentence()).startsWith("line 3").endsWith(".").doesNotContain("\n");
        assertThat(read.rounds()).isEmpty();
    }

    @Test
    void aHolePlayedTwiceInARoundIsAProblem() throws IOException {
        RoundImport read = read("hole,score", "1,4", "2,5", "1,6");
        assertThat(read.problems()).extracting(RowProblem::line).containsExactly(4L);
        assertThat(read.rounds().get(0).holes()).extracting(HoleRecord::number).containsExactly(2);
    }

    @Test
    void aHoleWithABadStrokeIsLeftOutWhole() throws IOException {
        RoundImport read = read(
                "hole,lie,to_hole_yd",
                "1,tee,150",
                "1,green,5",
                "2,tee,380",
                "2,nowhere,150",
                "2,green,3",
                "3,tee,160",
                "x,green,4",
                "4,tee,170");
        assertThat(read.problems()).extracting(RowProblem::line).containsExactly(5L, 8L);
        assertThat(read.rounds().get(0).holes()).extracting(HoleRecord::number).containsExactly(1, 4);
    }

    @Test
    void aStrokeAfterTheHoleIsOverIsAProblem() throws IOException {
        RoundImport read =
                read("hole,lie,to_hole_yd,conceded", "1,tee,150,", "1,green,1,yes", "1,green,1,", "2,tee,150,");
        assertThat(read.problems()).extracting(RowProblem::line).containsExactly(4L);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|is empty",
                "# nothing but a remark|is empty",
                "hole,weather|column score",
                "score,par|column hole is missing; understood: score, par",
                "hole,lie,club|column to_hole_yd",
                "hole,score,Score|occurs twice"
            })
    void aFileThatIsNoRoundIsRefusedInOneSentence(String header, String says) {
        assertThatThrownBy(() -> read(header, ""))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining(says)
                .hasMessageContaining("round.csv");
    }

    @Test
    void filesThatCannotBeReadAreRefused() throws IOException {
        assertThatThrownBy(() -> new RoundCsv().read(folder.resolve("none.csv")))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("does not exist");
        Path latin = folder.resolve("latin.csv");
        Files.write(latin, "hole,score,course\n1,4,Gr\u00fcn\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> new RoundCsv().read(latin))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("UTF-8");
    }
}
