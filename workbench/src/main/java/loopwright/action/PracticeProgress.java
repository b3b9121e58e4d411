package loopwright.action;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.practice.Drill;
import loopwright.practice.LearningCurve;
import loopwright.practice.LearningFit;
import loopwright.practice.LearningTable;
import loopwright.practice.Skill;
import loopwright.practice.SkillLevels;
import loopwright.practice.SkillPosterior.Measured;

/**
 * Where a player stands since his file was made, so that the next week can follow from the last: what ticked blocks and drills
 * say of every skill, and how fast he learns. The learning curve foretells what is left after the hours; what it foretells is
 * taken as unsure as the gain itself and the model together (assumed), and drills correct it as far as they tell.
 *
 * @param lines skills that were practised
 * @param rates his own hours to learn every skill, by all drills he ever played
 */
public record PracticeProgress(List<Line> lines, LearningTable rates) {
    /** Standard deviations that hold 90 %. */
    private static final double NINETY = 1.645;
    /** No estimate is exact. */
    private static final double LEAST_LOG_SD = 1e-6;

    public PracticeProgress {
        lines = List.copyOf(lines);
    }

    /**
     * A skill.
     *
     * @param hours on it, in drills and in blocks that were ticked
     * @param playings of drills that measure it; 0 if all that is left is assumed
     * @param left share of the spread of the player file (of the holes played by habit); {@code low} to {@code high} hold 9 in 10
     */
    public record Line(Skill skill, double hours, int playings, double left, double low, double high) {}

    /** Of a player of the store, beside the newest version of his file. */
    public static PracticeProgress of(Workroom room, Shelf.Entry player, List<Drill> drills) {
        List<KeptDrill> since = room.store().records().listDrills(player.id()).stream()
                .filter(k -> !k.at().isBefore(player.at()))
                .toList();
        return of(
                room.player(player.id(), player.version()),
                since,
                drills,
                PracticeReview.of(room, player.id(), drills).curves());
    }

    /** The same, {@code own} being the player's own rates. */
    static PracticeProgress of(PlayerProfile profile, List<KeptDrill> since, List<Drill> drills, LearningTable own) {
        Player player = profile.player();
        LearningTable rates = LearningTable.assumed(player);
        Map<Skill, Measured> measured = PracticeReview.measured(profile, since, drills);
        List<Line> lines = new ArrayList<>();
        for (Skill skill : rates.curves().keySet()) {
            LearningCurve curve = rates.get(skill).withHours(own.get(skill).hours());
            rates = rates.with(skill, curve);
            double hours = PracticeReview.hours(skill, player, since, drills, since.size());
            if (hours > 0) {
                double foretold = Math.log(curve.left(hours));
                double sd = Math.hypot(PracticeReview.modelSd(skill, player), foretold);
                Optional<LearningFit.Point> drilled =
                        Optional.ofNullable(measured.get(skill)).flatMap(m -> PracticeReview.alone(m, hours));
                lines.add(line(
                        skill, hours, PracticeReview.playings(skill, player, since, drills), foretold, sd, drilled));
            }
        }
        return new PracticeProgress(lines, rates);
    }

    private static Line line(
            Skill skill, double hours, int playings, double foretold, double sd, Optional<LearningFit.Point> drilled) {
        double weight = 1 / Math.max(LEAST_LOG_SD, sd * sd);
        double sum = weight * foretold;
        if (drilled.isPresent()) {
            double told = 1 / (drilled.get().sd() * drilled.get().sd());
            weight += told;
            sum += told * drilled.get().log();
        }
        double log = sum / weight;
        double off = NINETY / Math.sqrt(weight);
        return new Line(skill, hours, playings, Math.exp(log), Math.exp(log - off), Math.exp(log + off));
    }

    /** What is left of a skill; 1 if it was not practised. */
    public double left(Skill skill) {
        return lines.stream()
                .filter(l -> l.skill() == skill)
                .mapToDouble(Line::left)
                .findFirst()
                .orElse(1);
    }

    /** Share of the holes that are played by habit now. */
    double habitShare() {
        return Math.min(1, left(Skill.DECISIONS));
    }

    /** The player as he stands now. */
    PlayerProfile of(PlayerProfile file) {
        Map<Skill, Double> left = new EnumMap<>(Skill.class);
        lines.stream().filter(l -> l.skill() != Skill.DECISIONS).forEach(l -> left.put(l.skill(), l.left()));
        return new PlayerProfile(new SkillLevels(left).player(file.player()), file.day(), file.habit());
    }

    /** The curves of the player as he stands now: his own hours, and of playing the plan what is left of it. */
    LearningTable curves(LearningTable assumed) {
        LearningTable out = assumed;
        for (Map.Entry<Skill, LearningCurve> e : assumed.curves().entrySet()) {
            LearningCurve own = e.getValue().withHours(rates.get(e.getKey()).hours());
            out = out.with(e.getKey(), e.getKey() == Skill.DECISIONS ? beside(e.getKey(), own) : own);
        }
        return out;
    }

    /** A curve whose floor is a share of the player file's spread, as a share of today's. */
    LearningCurve beside(Skill skill, LearningCurve curve) {
        return curve.withFloor(Math.min(1, curve.floor() / left(skill)));
    }
}
