package loopwright.practice;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.practice.TimeSplit.Cell;

/**
 * Splits that know nothing of the player, to be set beside the computed one: every skill alike, and the rule of thumb (half with
 * wedges and putter, a quarter driver and tee clubs, a quarter irons; common practice, no source). Of wedges the rule says 30 to
 * 40 %, which is read as 35 % of all time and as 35 % of the half; what is left of the half is shared by putter and chipping,
 * which is counted apart. A share whose place is not there goes to the others. Limits and wishes do not bind these splits.
 */
public enum CommonSplit {
    EQUAL,
    /** Wedges 35 % of all time. */
    RULE_OF_ALL,
    /** Wedges 35 % of the half. */
    RULE_OF_HALF;

    private static final double WEDGES = 0.35;
    private static final double HALF = 0.5;
    private static final double QUARTER = 0.25;

    private static final List<Skill> WEDGE_SKILLS = List.of(Skill.FULL_WEDGES, Skill.PARTIAL_WEDGES);
    private static final List<Skill> CHIPPING = List.of(Skill.CHIP, Skill.PITCH, Skill.BUNKER_SHOT);
    private static final List<Skill> PUTTER = List.of(Skill.START_LINE, Skill.PACE, Skill.READING);
    private static final List<Skill> TEE_CLUBS = List.of(Skill.DRIVER_DIRECTION, Skill.DRIVER_DISTANCE);
    private static final List<Skill> IRONS =
            List.of(Skill.MISHITS, Skill.LONG_APPROACH, Skill.MIDDLE_APPROACH, Skill.SHORT_APPROACH);

    /** The split in whole blocks, by largest remainders. */
    public TimeSplit of(PracticeHours hours, LearningTable curves) {
        Map<Cell, Double> share = shares(hours, curves);
        double all = share.values().stream().mapToDouble(x -> x).sum();
        Map<Cell, Integer> out = new TreeMap<>();
        if (all <= 0) {
            return TimeSplit.NONE;
        }
        share.forEach((c, x) -> out.put(c, (int) (hours.blocks() * x / all)));
        int placed = out.values().stream().mapToInt(b -> b).sum();
        share.entrySet().stream()
                .sorted(Comparator.comparingDouble(
                                (Map.Entry<Cell, Double> e) -> -(hours.blocks() * e.getValue() / all) % 1)
                        .thenComparing(Map.Entry::getKey))
                .limit(hours.blocks() - placed)
                .forEach(e -> out.merge(e.getKey(), 1, Integer::sum));
        return new TimeSplit(out);
    }

    private Map<Cell, Double> shares(PracticeHours hours, LearningTable curves) {
        Map<Skill, Cell> best = new EnumMap<>(Skill.class);
        for (Skill skill : curves.curves().keySet()) {
            bestPlace(hours, skill).ifPresent(f -> best.put(skill, new Cell(skill, f)));
        }
        Map<Cell, Double> out = new TreeMap<>();
        if (this == EQUAL) {
            best.values().forEach(c -> out.put(c, 1.0));
            return out;
        }
        double wedges = this == RULE_OF_ALL ? WEDGES : WEDGES * HALF;
        add(out, best, WEDGE_SKILLS, wedges);
        add(out, best, PUTTER, (HALF - wedges) / 2);
        add(out, best, CHIPPING, (HALF - wedges) / 2);
        add(out, best, TEE_CLUBS, QUARTER);
        add(out, best, IRONS, QUARTER);
        return out;
    }

    private static void add(Map<Cell, Double> out, Map<Skill, Cell> best, List<Skill> group, double share) {
        List<Cell> there =
                group.stream().map(best::get).filter(Objects::nonNull).toList();
        there.forEach(c -> out.put(c, share / there.size()));
    }

    private static Optional<Facility> bestPlace(PracticeHours hours, Skill skill) {
        return hours.most().entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(Map.Entry::getKey)
                .filter(f -> f.counts(skill) > 0)
                .max(Comparator.comparingDouble((Facility f) -> f.counts(skill)));
    }
}
