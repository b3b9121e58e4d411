package loopwright.action;

import java.nio.file.Path;

/** Port: reads logged putts from a table ({@code docs/putts.md}). */
public interface PuttLogFile {
    /**
     * Reads what can be read and lists what cannot; rows never fail the reading.
     *
     * @throws UserFault if there is no such file, it is not a table, or a needed column is missing
     */
    PuttImport read(Path file);
}
