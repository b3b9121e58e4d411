package loopwright.adapter.table;

import java.nio.file.Path;
import loopwright.action.TextFile;
import loopwright.action.WholeFile;

/** Plain text in UTF-8. */
public final class PlainTextFile implements TextFile {
    @Override
    public void write(Path file, String text) {
        WholeFile.write(file, text);
    }
}
