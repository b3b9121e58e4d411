package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import loopwright.course.Hole;
import loopwright.course.LocalRule;

/** Local rules in force on a hole, as a plan says them. */
public final class LocalRuleWords {
    private LocalRuleWords() {}

    /** One phrase for each rule, its number first where it has one; empty without local rules. */
    public static List<String> of(Hole hole) {
        List<String> out = new ArrayList<>();
        for (LocalRule rule : hole.survey().notes().localRules()) {
            out.add((rule.number().isEmpty() ? "" : rule.number() + " ") + words(rule, hole));
        }
        return out;
    }

    private static String words(LocalRule rule, Hole hole) {
        return switch (rule) {
            case DROP_INSTEAD_OF_STROKE_AND_DISTANCE -> "lost or out of bounds: drop by the fairway for two strokes";
            case DROP_ZONE ->
                hole.survey().notes().dropZones().isEmpty()
                        ? "dropping zone (none is on the map)"
                        : "dropping zone for the penalty areas";
            case PREFERRED_LIES -> "preferred lies in the fairway";
            case TEMPORARY_GREEN -> "temporary green";
        };
    }
}
