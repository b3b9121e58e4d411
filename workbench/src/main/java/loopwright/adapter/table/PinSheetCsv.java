package loopwright.adapter.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loopwright.action.PinSheetFile;
import loopwright.action.RowProblem;
import loopwright.action.UserFault;

/** A pin sheet from CSV: hole, front, and left or right, in paces; hole locations are never half read. */
public final class PinSheetCsv implements PinSheetFile {
    private static final double MOST_PACES = 80;

    @Override
    public List<String> read(Path file) {
        CsvTable table = CsvTable.read(file);
        boolean sides = table.columns().containsKey("left") || table.columns().containsKey("right");
        if (!table.columns().containsKey("hole") || !table.columns().containsKey("front") || !sides) {
            throw new UserFault(
                    file + " is no pin sheet: it needs the columns hole, front, and left or right, in paces;"
                            + " found: " + String.join(", ", table.written()) + ".");
        }
        List<String> out = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            out.add(location(file, row));
        }
        if (out.isEmpty()) {
            throw new UserFault(file + " names no hole; write a row for each, for example 7,12,5,.");
        }
        return out;
    }

    private static String location(Path file, CsvRow row) {
        RowReader cells = new RowReader(row);
        OptionalInt hole = cells.whole("hole", 1, 99);
        OptionalDouble front = cells.decimal("front", 0, MOST_PACES);
        OptionalDouble left = cells.decimal("left", 0, MOST_PACES);
        OptionalDouble right = cells.decimal("right", 0, MOST_PACES);
        Optional<RowProblem> problem = row.broken().or(cells::problem);
        boolean whole = hole.isPresent() && front.isPresent() && left.isPresent() != right.isPresent();
        if (problem.isPresent() || !whole) {
            throw new UserFault(
                    file + ", "
                            + problem.map(RowProblem::sentence)
                                    .orElse(
                                            "line " + row.line()
                                                    + ": a row needs hole, front, and one of left and right, in paces, for example 7,12,5,."));
        }
        return String.format(
                Locale.ROOT,
                "%d:%.1f,%s %.1f",
                hole.getAsInt(),
                front.getAsDouble(),
                left.isPresent() ? "left" : "right",
                left.isPresent() ? left.getAsDouble() : right.getAsDouble());
    }
}
