package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import loopwright.action.ScoreFile;
import loopwright.action.UserFault;
import loopwright.handicap.TeeRating;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScoreCsvTest {
    @TempDir
    Path folder;

    private ScoreFile.Totals read(String text) throws IOException {
        return new ScoreCsv().read(Files.writeString(folder.resolve("scores.csv"), text));
    }

    @Test
    void aScoreInEachRowIsEnough() throws IOException {
        assertThat(read("score\n88\n91\n").rounds())
                .extracting(ScoreFile.Total::score)
                .containsExactly(88, 91);
    }

    @Test
    void ratingSlopeAndTeesAreRead() throws IOException {
        ScoreFile.Total round = read("date;gross;course;tees;rating;slope;holes\n2026-05-31;88;Hill;back;71,4;128;18\n")
                .rounds()
                .get(0);
        assertThat(round.rating()).contains(new TeeRating(71.4, 128));
        assertThat(round.tees()).contains("back");
        assertThat(round.holes()).hasValue(18);
    }

    @Test
    void badRowsAreNamedAndTheRestIsKept() throws IOException {
        ScoreFile.Totals totals = read("score,rating,slope\n88,,\nforty,,\n90,71.2,\n300,,\n");
        assertThat(totals.rounds()).hasSize(1);
        assertThat(totals.problems().get(0).sentence())
                .isEqualTo("line 3, column 1 (score): \"forty\" is not a whole number from 18 to 250.");
        assertThat(totals.problems().get(1).sentence()).contains("line 4").contains("rating and slope go together");
        assertThat(totals.problems()).hasSize(3);
    }

    @Test
    void aTableWithoutScoresSaysWhatIsNeeded() {
        assertThatThrownBy(() -> read("date,par\n2026-05-31,72\n"))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("needs a column score")
                .hasMessageContaining("found: date, par");
    }
}
