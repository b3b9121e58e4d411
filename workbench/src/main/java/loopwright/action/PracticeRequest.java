package loopwright.action;

import java.util.Map;
import loopwright.practice.LearningCurve;
import loopwright.practice.PracticeHours;
import loopwright.practice.Skill;

/**
 * What a practice plan is asked for.
 *
 * @param round the round that is practised for: course, player, tees, target
 * @param hours time, places, wishes and limits
 * @param curves learning curves that the coach has set; the others are assumed
 */
public record PracticeRequest(PlanRequest round, PracticeHours hours, Map<Skill, LearningCurve> curves) {
    public PracticeRequest {
        curves = Map.copyOf(curves);
    }
}
