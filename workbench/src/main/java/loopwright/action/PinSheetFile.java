package loopwright.action;

import java.nio.file.Path;
import java.util.List;

/** Port: reads a pin sheet, the hole locations of a day in paces. */
public interface PinSheetFile {
    /**
     * Reads the sheet.
     *
     * @return hole locations as they are typed, "7:12,left 5"
     * @throws UserFault if there is no such file, a column is missing, or a row cannot be read
     */
    List<String> read(Path file);
}
