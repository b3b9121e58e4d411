package loopwright.action;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Port: reads a player's scores in the order of play from a table. */
public interface ScoreHistoryFile {
    /**
     * One row: a differential as it was given, or a score with what a differential is computed from.
     *
     * @param line in the file, from 1
     */
    record Score(long line, LocalDate date, Optional<Double> differential, Optional<Played> played) {}

    /** A score on rated tees: 18 holes, or nine with the rating of the nine. */
    record Played(int adjustedGross, double rating, int slope, double conditions, int holes) {}

    /** What was read, and the rows that cannot be used. */
    record History(List<Score> scores, List<RowProblem> problems) {
        public History {
            scores = List.copyOf(scores);
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads the scores.
     *
     * @throws UserFault if there is no such file, it is not a table, or a needed column is missing
     */
    History read(Path file);
}
