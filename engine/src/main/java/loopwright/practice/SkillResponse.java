package loopwright.practice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import loopwright.numerics.Watch;

/**
 * How the log odds of the target answer to every skill: for each a curve through today and two measured levels, skills adding
 * up on the log-odds scale. That they add up is an approximation for searching; what a split comes to in the end is valued with
 * all skills at once ({@link PracticeRound#at}).
 */
public final class SkillResponse {
    /** A level well below today's: the skill's answer is measured there as well. */
    private static final double FAR = 0.65;
    /** No skill is valued nearer to perfection than this. */
    private static final double LOWEST = 0.3;
    /** Half of the holes by plan, half by habit. */
    private static final double HALF = 0.5;

    private final double today;
    private final Map<Skill, Curve> curves;

    /** Log odds gained with u = 1 - left: a u + b u^2 up to the farther level measured, straight on beyond. */
    private record Curve(double a, double b, double most) {
        static Curve through(double u1, double gain1, double u2, double gain2) {
            double b = (gain2 / u2 - gain1 / u1) / (u2 - u1);
            return new Curve(gain1 / u1 - b * u1, b, u2);
        }

        double at(double u) {
            double inside = Math.min(u, most);
            return a * inside + b * inside * inside + Math.max(0, u - most) * Math.max(0, a + 2 * b * most);
        }

        Curve times(double factor) {
            return new Curve(a * factor, b * factor, most);
        }
    }

    private SkillResponse(double today, Map<Skill, Curve> curves) {
        this.today = today;
        this.curves = curves;
    }

    /** A response in which nothing is known yet but the log odds of today, the plan being played by habit. */
    public static SkillResponse today(double logOdds) {
        return new SkillResponse(logOdds, Map.of());
    }

    /**
     * Levels at which a skill has to be valued: the honest step first, the two that the response is drawn through last.
     *
     * @param floor what practice leaves at best: the farther level is no higher, so that nothing is drawn on beyond it
     */
    public static List<Double> levels(Skill skill, double floor) {
        return skill == Skill.DECISIONS
                ? List.of(Skill.STEP, HALF, 0.0)
                : List.of(Skill.STEP, Math.min(FAR, Math.max(LOWEST, floor)));
    }

    /**
     * The response of a round.
     *
     * @param curves what {@link #levels} were asked for
     * @param changes by skill, what each of its levels makes of the round ({@link SkillGradient#change})
     */
    public static SkillResponse of(PracticeRound round, LearningTable curves, Map<Skill, List<RoundOdds>> changes) {
        RoundOdds habit = round.at(SkillLevels.TODAY, Watch.NONE);
        RoundOdds plan = round.at(SkillLevels.PLAN, Watch.NONE);
        SkillResponse out = today(RoundOdds.logOdds(habit.chance()));
        for (Map.Entry<Skill, List<RoundOdds>> e : changes.entrySet()) {
            double from = (e.getKey() == Skill.DECISIONS ? habit : plan).chance();
            List<Double> levels = levels(e.getKey(), curves.get(e.getKey()).floor());
            int last = levels.size() - 1;
            out = out.with(
                    e.getKey(),
                    levels.get(last - 1),
                    gain(from, e.getValue().get(last - 1)),
                    levels.get(last),
                    gain(from, e.getValue().get(last)));
        }
        return out;
    }

    private static double gain(double chance, RoundOdds change) {
        return RoundOdds.logOdds(chance + change.chance()) - RoundOdds.logOdds(chance);
    }

    /** With a skill's gains in log odds at two levels below 1, the second the lower one. */
    public SkillResponse with(Skill skill, double left1, double gain1, double left2, double gain2) {
        if (!(left1 < 1 && left2 < left1)) {
            throw new IllegalArgumentException("levels fall from 1: " + left1 + ", " + left2);
        }
        return with(skill, Curve.through(1 - left1, gain1, 1 - left2, gain2));
    }

    private SkillResponse with(Skill skill, Curve curve) {
        EnumMap<Skill, Curve> out = new EnumMap<>(Skill.class);
        out.putAll(curves);
        out.put(skill, curve);
        return new SkillResponse(today, Collections.unmodifiableMap(out));
    }

    /** With a skill's gains multiplied: the player as he may be as well. */
    public SkillResponse times(Skill skill, double factor) {
        Curve curve = curves.get(skill);
        return curve == null ? this : with(skill, curve.times(factor));
    }

    public Iterable<Skill> skills() {
        return curves.keySet();
    }

    /** Log odds gained by one skill at a level. */
    public double gain(Skill skill, double left) {
        Curve curve = curves.get(skill);
        return curve == null ? 0 : curve.at(1 - left);
    }

    /** Log odds of the target at these levels. */
    public double logOdds(SkillLevels levels) {
        double sum = today;
        for (Skill skill : levels.left().keySet()) {
            sum += gain(skill, levels.of(skill));
        }
        return sum;
    }
}
