package loopwright.action;

import java.nio.file.Path;
import java.util.List;

/** Port: draws several holes with their plans, each on a page of its own. */
public interface HoleAlbum {
    /** Writes a PDF; the file appears whole or not at all. */
    void drawHoles(String title, List<HolePicture> pictures, Path target);
}
