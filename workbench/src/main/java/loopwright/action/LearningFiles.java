package loopwright.action;

import java.nio.file.Path;
import java.util.Map;
import loopwright.practice.LearningCurve;
import loopwright.practice.Skill;

/** Port: learning curves that a coach has set. */
public interface LearningFiles {
    /**
     * Reads curves by skill; the others stay as assumed.
     *
     * @throws UserFault if the file cannot be used: what, where and what would be accepted
     */
    Map<Skill, LearningCurve> read(Path file);
}
