package loopwright.adapter.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loopwright.action.RowProblem;
import loopwright.action.ScoreFile;
import loopwright.action.UserFault;
import loopwright.handicap.TeeRating;

/** Totals of rounds from CSV: a score in each row, and what else the row knows (date, course, tees, rating, slope, holes). */
public final class ScoreCsv implements ScoreFile {
    private static final List<String> SCORE = List.of("score", "gross", "total", "strokes");
    private static final Map<String, Integer> HOLES = Map.of("9", 9, "18", 18);

    @Override
    public Totals read(Path file) {
        CsvTable table = CsvTable.read(file);
        String score = SCORE.stream()
                .filter(table.columns()::containsKey)
                .findFirst()
                .orElseThrow(() -> new UserFault(file + " holds no scores: it needs a column score (and may have date,"
                        + " course, tees, rating, slope, holes); found: "
                        + String.join(", ", table.written()) + "."));
        List<Total> rounds = new ArrayList<>();
        List<RowProblem> problems = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            RowReader cells = new RowReader(row);
            Total total = total(row, cells, score);
            Optional<RowProblem> problem = row.broken().or(cells::problem);
            problem.ifPresentOrElse(problems::add, () -> rounds.add(total));
        }
        return new Totals(rounds, problems);
    }

    private static Total total(CsvRow row, RowReader cells, String score) {
        Optional<Integer> holes = cells.word("holes", HOLES, "9 or 18");
        return new Total(
                row.line(),
                cells.day("date"),
                cells.wholeNeeded(score, 18, 250),
                cells.text("course"),
                cells.text("tees"),
                rating(row, cells),
                holes.map(OptionalInt::of).orElse(OptionalInt.empty()));
    }

    private static Optional<TeeRating> rating(CsvRow row, RowReader cells) {
        OptionalDouble rating = cells.decimal("rating", 20, 90);
        OptionalInt slope = cells.whole("slope", TeeRating.LOWEST_SLOPE, TeeRating.HIGHEST_SLOPE);
        if (rating.isPresent() != slope.isPresent()) {
            String missing = rating.isPresent() ? "slope" : "rating";
            cells.reject(missing, row.cell(missing), "there: rating and slope go together");
        }
        return rating.isPresent() && slope.isPresent()
                ? Optional.of(new TeeRating(rating.getAsDouble(), slope.getAsInt()))
                : Optional.empty();
    }
}
