package loopwright.action;

import java.nio.file.Path;
import java.util.List;

/** Port: draws several holes as the pages of one PDF. */
@FunctionalInterface
public interface HoleCharts {
    /** The file appears whole or not at all. */
    void drawHoles(String title, List<HolePicture> pictures, Path target);
}
