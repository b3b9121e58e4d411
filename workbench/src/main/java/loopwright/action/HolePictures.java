package loopwright.action;

import java.nio.file.Path;

/** Port: draws one hole with its plan. */
public interface HolePictures {
    /** Writes a PNG, SVG or PDF by the ending of the name; the file appears whole or not at all. */
    void drawHole(HolePicture picture, Path target);
}
