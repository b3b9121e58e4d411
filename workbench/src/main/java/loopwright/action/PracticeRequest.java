package loopwright.action;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.practice.Drill;
import loopwright.practice.LearningCurve;
import loopwright.practice.PracticeHours;
import loopwright.practice.Skill;

/**
 * What a practice plan is asked for.
 *
 * @param round the round that is practised for: course, player, tees, target
 * @param hours time, places, wishes and limits
 * @param sessions a week, 1 to 7
 * @param drills to choose from
 * @param curves learning curves that the coach has set, beside the player file; the others are assumed
 * @param progress where the player stands since his file was made; empty to plan from the file
 */
public record PracticeRequest(
        PlanRequest round,
        PracticeHours hours,
        int sessions,
        List<Drill> drills,
        Map<Skill, LearningCurve> curves,
        Optional<PracticeProgress> progress) {
    public PracticeRequest {
        drills = List.copyOf(drills);
        curves = Map.copyOf(curves);
        if (sessions < 1 || sessions > 7) {
            throw new UserFault(sessions + " sessions a week cannot be planned; give 1 to 7.");
        }
    }
}
