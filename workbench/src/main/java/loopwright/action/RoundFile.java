package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import loopwright.scoring.RoundRecord;

/** Port: reads and writes rounds as a table in any of the four tiers ({@code docs/rounds.md}). */
public interface RoundFile {
    /**
     * Reads what can be read and lists what cannot; rows never fail the reading.
     *
     * @throws UserFault if there is no such file, it is not a table, or a needed column is missing
     */
    RoundImport read(Path file);

    /** The same from text; {@code label} is what to call it in a sentence. */
    RoundImport readText(String label, String text);

    /** The table that {@link #write} writes. */
    String text(List<RoundRecord> rounds);

    /**
     * Writes rounds so that they read back to the same; the file appears whole or not at all.
     *
     * @param rounds all of whole holes, or all of strokes
     */
    void write(List<RoundRecord> rounds, Path file);
}
