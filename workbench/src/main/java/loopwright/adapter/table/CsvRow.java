package loopwright.adapter.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.RowProblem;

/**
 * One row of a table.
 *
 * @param broken why its cells cannot be told apart, if so
 */
record CsvRow(long line, List<String> cells, Map<String, Integer> columns, Optional<RowProblem> broken) {

    /** What stands in the column, without blanks around it; empty where the column or the cell is missing. */
    String cell(String column) {
        Integer place = columns.get(column);
        return place == null || place >= cells.size() ? "" : cells.get(place).strip();
    }

    /** Place of a column, from 1; 0 where there is none. */
    int placeOf(String column) {
        Integer place = columns.get(column);
        return place == null ? 0 : place + 1;
    }
}
