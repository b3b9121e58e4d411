package loopwright.action;

import java.nio.file.Path;

/** Port: reads rounds from a table in any of the four tiers ({@code docs/rounds.md}). */
public interface RoundFile {
    /**
     * Reads what can be read and lists what cannot; rows never fail the reading.
     *
     * @throws UserFault if there is no such file, it is not a table, or a needed column is missing
     */
    RoundImport read(Path file);
}
