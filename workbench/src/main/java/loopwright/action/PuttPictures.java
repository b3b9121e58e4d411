package loopwright.action;

import java.nio.file.Path;

/** Port: draws one putt. */
public interface PuttPictures {
    /** Writes a PNG, SVG or PDF by the ending of the name; the file appears whole or not at all. */
    void drawPutt(PuttPicture picture, Path target);
}
