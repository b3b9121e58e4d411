package loopwright.practice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The time there is, in blocks of a quarter of an hour, every week alike.
 *
 * @param weeks 1 to 104
 * @param blocks a week, 1 or more
 * @param most blocks a week at each facility that can be used; others cannot
 * @param least blocks a week that the coach wants for a skill
 * @param mostFullSwings blocks of full swings a week that the body is to bear, 0 or more
 */
public record PracticeHours(
        int weeks, int blocks, Map<Facility, Integer> most, Map<Skill, Integer> least, int mostFullSwings) {
    /** Minutes of a block. */
    public static final int MINUTES = 15;

    public PracticeHours {
        most = sorted(most, Facility.class);
        least = sorted(least, Skill.class);
        if (weeks < 1 || weeks > 104 || blocks < 1 || blocks > 200) {
            throw new IllegalArgumentException("practice takes 1 to 104 weeks of 1 to 200 blocks");
        }
        if (least.values().stream().mapToInt(b -> b).sum() > blocks) {
            throw new IllegalArgumentException("what is wanted for single skills does not fit into the week");
        }
    }

    private static <K extends Enum<K>> Map<K, Integer> sorted(Map<K, Integer> map, Class<K> keys) {
        EnumMap<K, Integer> out = new EnumMap<>(keys);
        out.putAll(map);
        out.values().forEach(b -> {
            if (b < 0) {
                throw new IllegalArgumentException("a number of blocks is zero or more, not " + b);
            }
        });
        return Collections.unmodifiableMap(out);
    }

    /** Hours over all weeks in so many blocks a week. */
    public double hours(double blocksAWeek) {
        return blocksAWeek * weeks * MINUTES / 60;
    }
}
