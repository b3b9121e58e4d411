package loopwright.practice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How far a split can be trusted.
 *
 * @param usual by skill, blocks a week in 8 of 10 of the best splits of drawn worlds: low and high
 * @param hangsOn skills whose assumed hours, halved or doubled, move most of the split, most first
 * @param measure skills whose unknown size moves the chance most, most first
 */
public record SplitDoubt(Map<Skill, Range> usual, List<Moved> hangsOn, List<SkillGain> measure) {
    private static final double TENTH = 0.1;

    /** Blocks a week. */
    public record Range(int low, int high) {}

    /** @param share of the week's blocks that move if the hours of learning this skill are half or twice what is assumed */
    public record Moved(Skill skill, double share) {}

    public SplitDoubt {
        usual = Map.copyOf(usual);
        hangsOn = List.copyOf(hangsOn);
        measure = List.copyOf(measure);
    }

    /** Blocks a week of a skill in most of the best splits. */
    public Range usual(Skill skill) {
        return usual.getOrDefault(skill, new Range(0, 0));
    }

    /** Looks at a split from all sides. */
    public static SplitDoubt of(
            TimeSplit split,
            PracticeHours hours,
            LearningTable curves,
            SkillResponse response,
            SkillGradient gradient,
            List<PracticeWorld> worlds) {
        List<TimeSplit> best = worlds.stream()
                .map(w -> new SplitSearch(hours, w.curves(), w.response()).best())
                .toList();
        Map<Skill, Range> usual = new EnumMap<>(Skill.class);
        curves.curves().keySet().forEach(s -> usual.put(s, range(s, best)));
        List<Moved> moved = curves.curves().keySet().stream()
                .map(s -> new Moved(s, moved(s, split, hours, curves, response)))
                .sorted(Comparator.comparingDouble(Moved::share).reversed())
                .toList();
        List<SkillGain> measure = gradient.gains().stream()
                .sorted(Comparator.comparingDouble(SkillGain::chanceSd).reversed())
                .toList();
        return new SplitDoubt(usual, moved, measure);
    }

    private static Range range(Skill skill, List<TimeSplit> best) {
        int[] blocks = best.stream().mapToInt(b -> b.of(skill)).sorted().toArray();
        if (blocks.length == 0) {
            return new Range(0, 0);
        }
        int low = (int) Math.round(TENTH * (blocks.length - 1));
        return new Range(blocks[low], blocks[blocks.length - 1 - low]);
    }

    private static double moved(
            Skill skill, TimeSplit split, PracticeHours hours, LearningTable curves, SkillResponse response) {
        double most = 0;
        for (double factor : new double[] {0.5, 2}) {
            LearningCurve c = curves.get(skill);
            LearningTable other = curves.with(skill, c.withHours(factor * c.hours()));
            TimeSplit then = new SplitSearch(hours, other, response).best();
            int differ = Arrays.stream(Skill.values())
                    .mapToInt(s -> Math.abs(then.of(s) - split.of(s)))
                    .sum();
            most = Math.max(most, differ / 2.0 / Math.max(1, hours.blocks()));
        }
        return most;
    }
}
