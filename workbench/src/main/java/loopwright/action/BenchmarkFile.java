package loopwright.action;

import java.util.Optional;
import loopwright.scoring.BenchmarkTable;

/** Port: a benchmark as text, so that a course is solved once for it. */
public interface BenchmarkFile {
    String text(BenchmarkTable table);

    /** The table that was written; empty if the text is not one of this version. */
    Optional<BenchmarkTable> read(String text);
}
