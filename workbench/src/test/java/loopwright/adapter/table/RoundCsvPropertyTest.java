package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loopwright.action.RoundImport;
import loopwright.action.RowProblem;
import loopwright.scoring.HoleRecord;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Thousands of rows broken in known places: every one is reported with its line and column, no good one is. */
class RoundCsvPropertyTest {
    private static final String HEADER = "round,hole,par,score,tee_ball,penalties,first_putt_ft,putts";
    private static final String[] RUBBISH = {
        "NaN", "1e9", "-3", "4.5", "four", "99999", "\u00bd", "1 2", "null", "0x4", "--", "+5", "Infinity", "4;5", "=A1"
    };

    /** Columns whose rubbish cannot be a value: hole, par, score, tee ball, penalties, first putt, putts. */
    private static final int FIRST = 1;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"1, 10000", "2, 3000", "3, 3000"})
    void everyMalformedRowIsReportedWithLineAndColumn(long seed, int bad) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> lines = new ArrayList<>(List.of(HEADER));
        List<String> expected = new ArrayList<>();
        int good = 0;
        while (expected.size() < bad) {
            String[] cells = goodRow(random, lines.size());
            if (random.nextInt(4) == 0) {
                good++;
                lines.add(String.join(",", cells));
                continue;
            }
            int column = spoil(random, cells);
            lines.add(String.join(",", cells));
            expected.add(lines.size() + ":" + column);
        }
        Path file = folder.resolve("rows.csv");
        Files.write(file, lines);
        RoundImport read = new RoundCsv().read(file);
        assertThat(read.problems()).extracting(p -> p.line() + ":" + p.column()).isEqualTo(expected);
        assertThat(read.problems()).extracting(RowProblem::sentence).allMatch(s -> !s.contains("\n"));
        assertThat(read.rounds().stream().flatMap(r -> r.holes().stream()).map(HoleRecord::number))
                .hasSize(good);
    }

    /** A row of a round of its own, so that rows do not lean on each other. */
    private static String[] goodRow(SplittableRandom random, int number) {
        return new String[] {
            "r" + number,
            "" + random.nextInt(1, 19),
            "" + random.nextInt(3, 6),
            "" + random.nextInt(2, 9),
            random.nextBoolean() ? "in play" : "left",
            "" + random.nextInt(0, 3),
            "" + random.nextInt(1, 60),
            "" + random.nextInt(0, 4)
        };
    }

    /** Puts rubbish into a cell, or breaks the row as a whole; returns the column to be reported. */
    private static int spoil(SplittableRandom random, String[] cells) {
        int last = cells.length - 1;
        switch (random.nextInt(12)) {
            case 0 -> {
                cells[last] = cells[last] + ",extra,cells";
                return 0;
            }
            case 1 -> {
                cells[last] = "\"" + cells[last];
                return 0;
            }
            case 2 -> {
                cells[FIRST] = "";
                return FIRST + 1;
            }
            default -> {
                int column = random.nextInt(FIRST, cells.length);
                String rubbish = RUBBISH[random.nextInt(RUBBISH.length)];
                boolean fraction = cells[column].matches("\\d+") && rubbish.equals("4.5") && column == 6;
                cells[column] = fraction ? "four" : rubbish; // a first putt of 4.5 ft is a good one
                return column + 1;
            }
        }
    }
}
