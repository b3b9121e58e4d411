package loopwright.practice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** Blocks a week by skill and facility. */
public record TimeSplit(Map<Cell, Integer> blocks) {
    /** Nothing yet. */
    public static final TimeSplit NONE = new TimeSplit(Map.of());

    /** A skill practised at a place. */
    public record Cell(Skill skill, Facility facility) implements Comparable<Cell> {
        @Override
        public int compareTo(Cell other) {
            int bySkill = skill.compareTo(other.skill);
            return bySkill != 0 ? bySkill : facility.compareTo(other.facility);
        }
    }

    public TimeSplit {
        TreeMap<Cell, Integer> sorted = new TreeMap<>(blocks);
        sorted.values().removeIf(b -> b == 0);
        blocks = Collections.unmodifiableMap(sorted);
    }

    public int of(Cell cell) {
        return blocks.getOrDefault(cell, 0);
    }

    public int of(Skill skill) {
        return blocks.entrySet().stream()
                .filter(e -> e.getKey().skill() == skill)
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    public int of(Facility facility) {
        return blocks.entrySet().stream()
                .filter(e -> e.getKey().facility() == facility)
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    public int fullSwings() {
        return blocks.entrySet().stream()
                .filter(e -> e.getKey().facility().loads(e.getKey().skill()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    public int total() {
        return blocks.values().stream().mapToInt(b -> b).sum();
    }

    /** The same with more (or fewer) blocks in a cell. */
    public TimeSplit plus(Cell cell, int more) {
        Map<Cell, Integer> out = new TreeMap<>(blocks);
        out.merge(cell, more, Integer::sum);
        return new TimeSplit(out);
    }

    /** What the hours of all weeks leave of every skill under these curves. */
    public SkillLevels after(PracticeHours hours, LearningTable curves) {
        EnumMap<Skill, Double> counted = new EnumMap<>(Skill.class);
        blocks.forEach(
                (cell, b) -> counted.merge(cell.skill(), b * cell.facility().counts(cell.skill()), Double::sum));
        EnumMap<Skill, Double> left = new EnumMap<>(Skill.class);
        counted.forEach((skill, b) -> left.put(skill, curves.get(skill).left(hours.hours(b))));
        return new SkillLevels(left);
    }
}
