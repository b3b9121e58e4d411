package loopwright.adapter.table;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import loopwright.action.LearningFiles;
import loopwright.practice.LearningCurve;
import loopwright.practice.Skill;

/**
 * Learning curves from JSON: a list "skills" with "skill", "floor" and "hoursToLearn", as a practice plan is written. Of a
 * plan only what is marked "setByCoach" counts.
 */
public final class LearningJson implements LearningFiles {
    @Override
    public Map<Skill, LearningCurve> read(Path file) {
        Map<Skill, LearningCurve> out = new EnumMap<>(Skill.class);
        JsonField root = JsonText.read(file, "a list of skills with floor and hoursToLearn (docs/practice.md)");
        for (JsonField f : root.get("skills").list()) {
            if (f.find("setByCoach").isEmpty() || f.flag("setByCoach")) {
                out.put(
                        f.choice("skill", Skill.class),
                        f.build(c -> new LearningCurve(c.number("floor"), c.number("hoursToLearn"))));
            }
        }
        return out;
    }
}
