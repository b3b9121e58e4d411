package loopwright.action;

import java.nio.file.Path;

/** Port: writes the numbers of a result for other programs, as JSON with the names of its record components as keys. */
public interface ResultFile {
    /**
     * Writes a result record; the file appears whole or not at all.
     *
     * @throws UserFault if the place cannot be written
     */
    void write(Path file, Object result);
}
