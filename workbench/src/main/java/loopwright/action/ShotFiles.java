package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import loopwright.player.Setting;

/** Port: reads lists of measured shots. */
public interface ShotFiles {
    /**
     * Reads all files as one log; each file is a session of its own, or several by its dates or session column.
     *
     * @param map quantity ("carry", or "carry_yd" where the column's name tells no unit) to the column that holds it
     * @param fallback ball and ground where the file tells neither
     * @throws UserFault with file, line and column at the first row that cannot be used
     */
    ShotImport read(List<Path> files, Map<String, String> map, Setting fallback);
}
