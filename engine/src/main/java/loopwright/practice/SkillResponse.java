package loopwright.practice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How the log odds of the target answer to every skill: for each a curve through today and two measured levels, skills adding
 * up on the log-odds scale. That they add up is an approximation for searching; what a split comes to in the end is valued with
 * all skills at once ({@link PracticeRound#at}).
 */
public final class SkillResponse {
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
