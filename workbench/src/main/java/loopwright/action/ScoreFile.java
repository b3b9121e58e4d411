package loopwright.action;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.handicap.TeeRating;

/** Port: reads the totals of real rounds from a table. */
public interface ScoreFile {
    /**
     * One round.
     *
     * @param line in the file, from 1
     * @param rating of the tees it was played from, where the row says it
     * @param holes played, where the row says it
     */
    record Total(
            long line,
            Optional<LocalDate> date,
            int score,
            Optional<String> course,
            Optional<String> tees,
            Optional<TeeRating> rating,
            OptionalInt holes) {}

    /** What was read, and the rows that cannot be used. */
    record Totals(List<Total> rounds, List<RowProblem> problems) {
        public Totals {
            rounds = List.copyOf(rounds);
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads the totals.
     *
     * @throws UserFault if there is no such file, it is not a table, or it has no column of scores
     */
    Totals read(Path file);
}
