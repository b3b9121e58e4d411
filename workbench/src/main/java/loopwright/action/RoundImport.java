package loopwright.action;

import java.util.List;
import loopwright.scoring.RoundRecord;

/**
 * Rounds as read from a file, and what could not be read.
 *
 * @param rounds of the good rows only; a hole with a bad row among its strokes is left out whole
 * @param problems one for each row that cannot be used, in the order of the file
 * @param ignored names of columns whose meaning is not known
 */
public record RoundImport(List<RoundRecord> rounds, List<RowProblem> problems, List<String> ignored) {
    public RoundImport {
        rounds = List.copyOf(rounds);
        problems = List.copyOf(problems);
        ignored = List.copyOf(ignored);
    }
}
