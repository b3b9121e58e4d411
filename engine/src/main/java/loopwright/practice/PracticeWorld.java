package loopwright.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/**
 * One way in which player and learning may really be, to judge splits under: the player's gains as one of the drawn players has
 * them, his hours of learning and his room each multiplied by a log-normal factor (standard deviations of the logarithm: assumed).
 */
public record PracticeWorld(SkillResponse response, LearningTable curves) {
    /** What may be wrong with an assumed number of hours: a factor of 1.65 either way. */
    static final double HOURS_LOG_SD = 0.5;
    /** What may be wrong with an assumed room for improvement. */
    static final double ROOM_LOG_SD = 0.3;

    /** Worlds drawn about what is believed; none of them is used in choosing a split. */
    public static List<PracticeWorld> drawn(
            SkillResponse response, LearningTable curves, SkillGradient gradient, int count, RandomGenerator random) {
        List<PracticeWorld> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            SkillResponse moved = response;
            if (!gradient.draws().isEmpty()) {
                Map<Skill, Double> draw =
                        gradient.draws().get(random.nextInt(gradient.draws().size()));
                for (SkillGain gain : gradient.gains()) {
                    double drawn = draw.getOrDefault(gain.skill(), gain.chance());
                    moved = moved.times(gain.skill(), gain.chance() > 0 ? Math.max(0, drawn) / gain.chance() : 1);
                }
            }
            LearningTable learned = curves;
            for (Skill skill : curves.curves().keySet()) {
                LearningCurve c = curves.get(skill);
                double room = (1 - c.floor()) * Math.exp(ROOM_LOG_SD * random.nextGaussian());
                learned = learned.with(
                        skill,
                        new LearningCurve(
                                Math.max(0, 1 - room), c.hours() * Math.exp(HOURS_LOG_SD * random.nextGaussian())));
            }
            out.add(new PracticeWorld(moved, learned));
        }
        return out;
    }

    /** The chance of the target after a split. */
    public double chance(TimeSplit split, PracticeHours hours) {
        return RoundOdds.chance(response.logOdds(split.after(hours, curves)));
    }
}
