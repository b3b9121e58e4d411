package loopwright.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.numerics.NormalShare;
import loopwright.numerics.Watch;

/**
 * The gain in expected score and in the chance of the target for improving each skill by one honest step, all else and the
 * plan staying the same: the difference of two values of the same fixed plan on the same draws. Of the states of a hole only
 * those whose shot the skill changes are played again; the others, and the chance of getting there, are shared. Skills of
 * execution are valued under the plan; decisions as the step from habit towards the plan.
 *
 * <p>At a tie of two options the value of a re-solved plan has different derivatives to either side; the gain given here is
 * that of the plan as it stands, from below.
 */
public final class SkillGradient {
    /** Two skills are tied unless one is better with this probability (assumed). */
    private static final double SURE = 0.9;

    private final List<SkillGain> gains;
    private final List<Map<Skill, Double>> draws;

    private SkillGradient(List<SkillGain> gains, List<Map<Skill, Double>> draws) {
        this.gains = gains;
        this.draws = draws;
    }

    /** The change from today that a share left of one skill makes, negative strokes being better. */
    public static RoundOdds change(PracticeRound round, Skill skill, double left, Watch watch) {
        boolean decisions = skill == Skill.DECISIONS;
        RoundOdds before = round.at(decisions ? SkillLevels.TODAY : SkillLevels.PLAN, watch);
        RoundOdds after = round.at((decisions ? SkillLevels.TODAY : SkillLevels.PLAN).with(skill, left), watch);
        return new RoundOdds(after.expected() - before.expected(), after.chance() - before.chance());
    }

    /**
     * All skills together.
     *
     * @param change by skill, what one step makes of the round
     * @param draws the same for players he may be as well; at least two, or none
     */
    public static SkillGradient of(Map<Skill, RoundOdds> change, List<Map<Skill, RoundOdds>> draws) {
        List<SkillGain> gains = new ArrayList<>();
        change.forEach((skill, odds) -> gains.add(new SkillGain(
                skill,
                -odds.expected(),
                odds.chance(),
                sd(draws.stream().mapToDouble(d -> of(d, skill).expected()).toArray()),
                sd(draws.stream().mapToDouble(d -> of(d, skill).chance()).toArray()))));
        gains.sort(Comparator.comparingDouble(SkillGain::chance).reversed().thenComparing(SkillGain::skill));
        return new SkillGradient(
                List.copyOf(gains), draws.stream().map(SkillGradient::chances).toList());
    }

    private static Map<Skill, Double> chances(Map<Skill, RoundOdds> draw) {
        Map<Skill, Double> out = new EnumMap<>(Skill.class);
        draw.forEach((skill, odds) -> out.put(skill, odds.chance()));
        return out;
    }

    /** Greatest gain in the chance of the target first. */
    public List<SkillGain> gains() {
        return gains;
    }

    public SkillGain gain(Skill skill) {
        return gains.stream().filter(g -> g.skill() == skill).findFirst().orElseThrow();
    }

    /** By drawn player and skill, the gain in the chance of the target. */
    public List<Map<Skill, Double>> draws() {
        return draws;
    }

    /** Probability that one skill is worth more than another, from paired draws taken as normal. */
    public double better(Skill one, Skill other) {
        double[] lead =
                draws.stream().mapToDouble(d -> of(d, one) - of(d, other)).toArray();
        double mean = gain(one).chance() - gain(other).chance();
        double sd = sd(lead);
        return sd > 0 ? NormalShare.below(mean / sd) : mean > 0 ? 1 : mean < 0 ? 0 : 0.5;
    }

    /** The skills that cannot be told from the best one. */
    public List<Skill> tiedWithBest() {
        Skill best = gains.get(0).skill();
        return gains.stream()
                .map(SkillGain::skill)
                .filter(s -> s != best && better(best, s) < SURE)
                .toList();
    }

    private static <V> V of(Map<Skill, V> draw, Skill skill) {
        return Optional.ofNullable(draw.get(skill)).orElseThrow();
    }

    private static double sd(double[] x) {
        if (x.length < 2) {
            return 0;
        }
        double mean = 0;
        for (double v : x) {
            mean += v / x.length;
        }
        double sum = 0;
        for (double v : x) {
            sum += (v - mean) * (v - mean);
        }
        return Math.sqrt(sum / (x.length - 1));
    }
}
