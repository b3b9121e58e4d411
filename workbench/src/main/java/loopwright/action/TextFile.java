package loopwright.action;

import java.nio.file.Path;

/** Port: writes plain text; the file appears whole or not at all. */
public interface TextFile {
    void write(Path file, String text);
}
