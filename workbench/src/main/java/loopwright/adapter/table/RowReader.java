package loopwright.adapter.table;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loopwright.action.RowProblem;
import loopwright.action.UserFault;
import loopwright.units.Distance;

/** Reads the cells of one row as values; the first cell that is none becomes the row's problem. */
final class RowReader {
    private static final Map<String, Boolean> YES_OR_NO = Map.of(
            "yes", true, "y", true, "1", true, "true", true, "x", true, "no", false, "n", false, "0", false, "false",
            false);

    static final String DAY = "a day written as 2026-05-31";

    private final CsvRow row;
    private Optional<RowProblem> problem = Optional.empty();

    RowReader(CsvRow row) {
        this.row = row;
    }

    Optional<RowProblem> problem() {
        return problem;
    }

    Optional<String> text(String column) {
        String cell = row.cell(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
    }

    OptionalInt whole(String column, int low, int high) {
        String cell = row.cell(column);
        if (cell.isEmpty()) {
            return OptionalInt.empty();
        }
        if (cell.matches("\\d{1,4}(\\.0+)?")) {
            int value = (int) Double.parseDouble(cell);
            if (value >= low && value <= high) {
                return OptionalInt.of(value);
            }
        }
        reject(column, cell, "a whole number from " + low + " to " + high);
        return OptionalInt.empty();
    }

    /** A cell that must not be empty; 0 where it cannot be read. */
    int wholeNeeded(String column, int low, int high) {
        OptionalInt value = whole(column, low, high);
        if (value.isEmpty()) {
            reject(column, row.cell(column), "a whole number from " + low + " to " + high);
        }
        return value.orElse(0);
    }

    OptionalDouble decimal(String column, double low, double high) {
        String cell = row.cell(column).replace(',', '.');
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (cell.matches("-?(\\d{1,5}(\\.\\d{0,20})?|\\.\\d{1,20})")) {
            double value = Double.parseDouble(cell);
            if (value >= low && value <= high) {
                return OptionalDouble.of(value);
            }
        }
        reject(column, row.cell(column), "a number from " + UserFault.typed(low) + " to " + UserFault.typed(high));
        return OptionalDouble.empty();
    }

    /** A day as year-month-day. */
    Optional<LocalDate> day(String column) {
        String cell = row.cell(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(cell));
        } catch (DateTimeParseException e) {
            reject(column, cell, DAY);
            return Optional.empty();
        }
    }

    boolean yes(String column) {
        return yesOrNo(column).orElse(false);
    }

    Optional<Boolean> yesOrNo(String column) {
        return word(column, YES_OR_NO, "yes or no");
    }

    <T> Optional<T> word(String column, Map<String, T> words, String accepted) {
        String cell = row.cell(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        T meaning = words.get(cell.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " "));
        if (meaning == null) {
            reject(column, cell, accepted);
        }
        return Optional.ofNullable(meaning);
    }

    /** A distance in one of the columns {@code stem_yd}, {@code stem_m}, {@code stem_ft}, {@code stem_paces}. */
    Optional<Distance> distance(String stem, Distance most) {
        Optional<Distance> found = Optional.empty();
        for (Map.Entry<String, Double> unit : RoundWords.UNITS.entrySet()) {
            String column = stem + "_" + unit.getKey();
            double metresPerUnit = unit.getValue();
            OptionalDouble value = decimal(column, 0, Math.rint(most.metres() / metresPerUnit));
            if (value.isPresent() && found.isPresent()) {
                reject(column, row.cell(column), "needed beside another " + stem + "; give it in one unit");
            } else if (value.isPresent()) {
                found = Optional.of(Distance.ofMetres(value.getAsDouble() * metresPerUnit));
            }
        }
        return found;
    }

    void reject(String column, String value, String accepted) {
        if (problem.isEmpty()) {
            problem = Optional.of(new RowProblem(row.line(), row.placeOf(column), column, value, accepted));
        }
    }

    /** The first of some columns that the table has, or the first of all. */
    String present(List<String> columns) {
        return columns.stream().filter(c -> row.placeOf(c) > 0).findFirst().orElse(columns.get(0));
    }
}
