package loopwright.action;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.player.Player;
import loopwright.practice.CommonSplit;
import loopwright.practice.LearningTable;
import loopwright.practice.PracticeHours;
import loopwright.practice.PracticeWeek;
import loopwright.practice.RoundOdds;
import loopwright.practice.Skill;
import loopwright.practice.SkillGradient;
import loopwright.practice.SplitDoubt;
import loopwright.practice.TimeSplit;

/**
 * A practice plan.
 *
 * @param course name
 * @param tees name
 * @param target as it is said: "79 or better"
 * @param byHabit the round today, played by habit
 * @param byPlan the round today, every hole played by the plan
 * @param gradient what one honest step of every skill is worth
 * @param curves what is assumed of learning
 * @param setByCoach skills whose curve the coach has set
 * @param split the best split found under these curves
 * @param after the round after all weeks of it, valued with all skills at once
 * @param beside the splits to compare with
 * @param week the split dealt out over sessions
 * @param brings by skill, how much less the chance of the target would be after all weeks without the hours for it
 * @param progress what was practised since the player file was made, if the plan follows from it
 */
public record PracticePlan(
        String course,
        String tees,
        String target,
        Player player,
        PracticeHours hours,
        RoundOdds byHabit,
        RoundOdds byPlan,
        SkillGradient gradient,
        LearningTable curves,
        Set<Skill> setByCoach,
        TimeSplit split,
        RoundOdds after,
        List<Beside> beside,
        SplitDoubt doubt,
        PracticeWeek week,
        Map<Skill, Double> brings,
        Optional<PracticeProgress> progress) {
    /** More of the hours than this on skills that nobody measured, and it cannot be said yet. */
    private static final double MOST_UNMEASURED = 0.5;
    /** A skill of which more than this is assumed counts as not measured. */
    private static final double MOSTLY_ASSUMED = 0.8;

    /**
     * A split beside the computed one.
     *
     * @param after the round after all weeks of it
     * @param lead by how much the computed split's chance is higher, over worlds that had no part in choosing it
     * @param behind share of these worlds in which the computed split is not better
     */
    public record Beside(CommonSplit kind, TimeSplit split, RoundOdds after, double lead, double behind) {}

    public PracticePlan {
        setByCoach = Set.copyOf(setByCoach);
        beside = List.copyOf(beside);
        brings = Map.copyOf(brings);
    }

    /** What the hours for a skill bring by the end, in the chance of the target. */
    public double bring(Skill skill) {
        return brings.getOrDefault(skill, 0.0);
    }

    public boolean isMeasured(Skill skill) {
        return skill.assumedShare(player) <= MOSTLY_ASSUMED;
    }

    /** Share of the practice time on skills that nobody has measured. */
    public double unmeasuredShare() {
        double unmeasured = curves.curves().keySet().stream()
                .filter(s -> !isMeasured(s))
                .mapToInt(split::of)
                .sum();
        return unmeasured / Math.max(1, split.total());
    }

    /** False if most of the time would go where nothing is known of this player. */
    public boolean canBeSaid() {
        return unmeasuredShare() <= MOST_UNMEASURED;
    }

    /** The skill that most time goes to; none in an empty split. */
    public Optional<Skill> first() {
        return curves.curves().keySet().stream()
                .filter(s -> split.of(s) > 0)
                .max(Comparator.comparingInt((Skill s) -> split.of(s))
                        .thenComparing(s -> gradient.gain(s).chance()));
    }
}
