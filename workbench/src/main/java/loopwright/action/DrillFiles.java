package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import loopwright.practice.Drill;

/** Port: a coach's own drills. */
public interface DrillFiles {
    /**
     * Reads drills.
     *
     * @throws UserFault if the file holds none or one that cannot be used: which, where and what would be accepted
     */
    List<Drill> read(Path file);
}
