package loopwright.action;

import java.util.List;
import loopwright.putting.LoggedPutt;

/**
 * Putts as read from a file, and what could not be read.
 *
 * @param problems one for each row that cannot be used
 * @param ignored names of columns whose meaning is not known
 */
public record PuttImport(List<LoggedPutt> putts, List<RowProblem> problems, List<String> ignored) {
    public PuttImport {
        putts = List.copyOf(putts);
        problems = List.copyOf(problems);
        ignored = List.copyOf(ignored);
    }
}
