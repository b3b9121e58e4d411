package loopwright.practice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import loopwright.player.Player;

/**
 * How much of every skill's spread is left, beside the player as he is today.
 *
 * @param left by skill, above 0 (decisions: from 0, the plan always played); a skill that is not named has 1 left
 */
public record SkillLevels(Map<Skill, Double> left) {
    /** The player as he is today, playing by habit. */
    public static final SkillLevels TODAY = new SkillLevels(Map.of());

    public SkillLevels {
        EnumMap<Skill, Double> sorted = new EnumMap<>(Skill.class);
        sorted.putAll(left);
        sorted.forEach((skill, x) -> {
            boolean none = skill == Skill.DECISIONS && x == 0;
            if (!(x > 0) && !none) {
                throw new IllegalArgumentException("something of a skill's spread is always left, not " + x);
            }
        });
        left = Collections.unmodifiableMap(sorted);
    }

    /** The player as he is today, playing the plan. */
    public static final SkillLevels PLAN = only(Skill.DECISIONS, 0);

    public static SkillLevels only(Skill skill, double left) {
        return new SkillLevels(Map.of(skill, left));
    }

    /** The same with one skill at another level. */
    public SkillLevels with(Skill skill, double left) {
        Map<Skill, Double> out = new HashMap<>(this.left);
        out.put(skill, left);
        return new SkillLevels(out);
    }

    public double of(Skill skill) {
        return left.getOrDefault(skill, 1.0);
    }

    /** Share of the holes that are still played by habit. */
    public double habitShare() {
        return of(Skill.DECISIONS);
    }

    /** The player with these skills. */
    public Player player(Player today) {
        Player out = today;
        for (Skill skill : left.keySet()) {
            out = skill == Skill.DECISIONS ? out : skill.of(out, of(skill));
        }
        return out;
    }
}
