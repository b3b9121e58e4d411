package loopwright.adapter.table;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loopwright.action.RowProblem;
import loopwright.action.ScoreHistoryFile;
import loopwright.action.UserFault;

/** Scores for a handicap record from CSV: date and differential, or date, gross, rating and slope. */
public final class ScoreHistoryCsv implements ScoreHistoryFile {
    private static final Map<String, Integer> HOLES = Map.of("9", 9, "18", 18);

    @Override
    public History read(Path file) {
        CsvTable table = CsvTable.read(file);
        requireColumns(table);
        List<Score> scores = new ArrayList<>();
        List<RowProblem> problems = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            RowReader cells = new RowReader(row);
            Score score = score(row, cells);
            Optional<RowProblem> problem = row.broken().or(cells::problem);
            problem.ifPresentOrElse(problems::add, () -> scores.add(score));
        }
        return new History(scores, problems);
    }

    private static void requireColumns(CsvTable table) {
        boolean given = table.columns().containsKey("differential");
        boolean computed = List.of("gross", "rating", "slope").stream().allMatch(table.columns()::containsKey);
        if (!table.columns().containsKey("date") || !(given || computed)) {
            throw new UserFault(table.file() + " is no scoring record: it needs the columns date and differential, or"
                    + " date, gross, rating and slope; found: "
                    + String.join(", ", table.written()) + ".");
        }
    }

    private static Score score(CsvRow row, RowReader cells) {
        Optional<LocalDate> date = cells.day("date");
        if (date.isEmpty()) {
            cells.reject("date", row.cell("date"), RowReader.DAY);
        }
        OptionalDouble differential = cells.decimal("differential", -20, 130);
        Optional<Played> played = differential.isPresent() ? Optional.empty() : played(row, cells);
        return new Score(
                row.line(),
                date.orElse(LocalDate.EPOCH),
                differential.isPresent() ? Optional.of(differential.getAsDouble()) : Optional.empty(),
                played);
    }

    private static Optional<Played> played(CsvRow row, RowReader cells) {
        OptionalInt gross = cells.whole("gross", 18, 200);
        OptionalDouble rating = cells.decimal("rating", 20, 90);
        OptionalInt slope = cells.whole("slope", 55, 155);
        OptionalDouble conditions = cells.decimal("pcc", -1, 3);
        int holes = cells.word("holes", HOLES, "9 or 18").orElse(18);
        if (gross.isEmpty() || rating.isEmpty() || slope.isEmpty()) {
            String column = cells.present(List.of("differential", "gross"));
            cells.reject(column, row.cell(column), "a differential, or a gross score with rating and slope");
            return Optional.empty();
        }
        return Optional.of(
                new Played(gross.getAsInt(), rating.getAsDouble(), slope.getAsInt(), conditions.orElse(0), holes));
    }
}
