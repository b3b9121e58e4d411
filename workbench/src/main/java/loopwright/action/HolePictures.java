package loopwright.action;

import java.nio.file.Path;
import java.util.List;

/** Port: draws one hole with its plan. */
public interface HolePictures {
    /** Writes a PNG, SVG or PDF by the ending of the name; the file appears whole or not at all. */
    void drawHole(HolePicture picture, Path target);

    /** Writes several holes as the pages of one PDF; the file appears whole or not at all. */
    void drawHoles(String title, List<HolePicture> pictures, Path target);
}
