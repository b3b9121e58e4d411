package loopwright.action;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.practice.Drill;
import loopwright.practice.LearningFit;
import loopwright.practice.LearningTable;
import loopwright.practice.Skill;
import loopwright.practice.SkillPosterior;
import loopwright.practice.SkillPosterior.Measured;
import loopwright.practice.SkillPosterior.Played;

/**
 * Is it working? Of every skill the model before, what the assumed curve predicts for the minutes on drills, and what the newest
 * drills measure, each with what is not known. Nothing is claimed that the intervals do not carry.
 */
public final class PracticeReview {
    /** Playings of a drill that say where a skill stands now. */
    private static final int NEWEST = 6;
    /** What a model's spread may be off where nothing was measured, in the logarithm: shared and own part of the prior. */
    private static final double MODEL_LOG_SD = 0.25;
    /** Before any drill a skill may stand this far from the model, in the logarithm. */
    private static final double WIDE_LOG_SD = 0.5;
    /** Standard deviations that hold 90 %, and those that find a change 8 times of 10. */
    private static final double NINETY = 1.645;

    private static final double POWER = 0.842;
    private static final double MINUTES = 60;

    private PracticeReview() {}

    /** What may be said. */
    public enum Verdict {
        BETTER,
        WORSE,
        WITHIN_NOISE
    }

    /**
     * A skill: shares of the spread of the model before, 1 being that model.
     *
     * @param hours on it, in drills and in blocks that were ticked
     * @param predicted by the assumed curve
     * @param modelSd what is not known of the model before, in the logarithm
     */
    public record Line(
            Skill skill, double hours, double predicted, double modelSd, Measured now, int playings, Verdict verdict) {}

    /**
     * Forecast against rounds.
     *
     * @param mean of the rounds' scores less the forecast's mean
     * @param sd of that difference
     */
    public record Rounds(LocalDate day, String course, int rounds, double mean, double sd) {}

    /**
     * All of it.
     *
     * @param curves the learning table with this player's own rates
     * @param roundsToSee rounds before and after that show a gain of so many strokes, 8 times of 10
     */
    public record Report(
            String player,
            List<Line> lines,
            LearningTable curves,
            Map<Integer, Integer> roundsToSee,
            Optional<Rounds> rounds) {}

    /** Of a player of the store, beside the model as it was when the first drill was played. */
    public static Report of(Workroom room, String player, List<Drill> drills) {
        PlayerRecords records = room.store().records();
        List<KeptDrill> kept = records.listDrills(player);
        Shelf.Entry before = before(room.store().players().listVersions(player), kept);
        return of(
                room.player(player, before.version()),
                kept,
                drills,
                records.listRounds(player),
                records.listForecasts(player));
    }

    /** The newest version when the first drill was played, or the first of all. */
    private static Shelf.Entry before(List<Shelf.Entry> newestFirst, List<KeptDrill> kept) {
        return newestFirst.stream()
                .filter(e -> kept.isEmpty() || !e.at().isAfter(kept.get(0).at()))
                .findFirst()
                .orElse(newestFirst.get(newestFirst.size() - 1));
    }

    /** Reads a player's drills and rounds. */
    public static Report of(
            PlayerProfile before,
            List<KeptDrill> kept,
            List<Drill> drills,
            List<KeptRound> rounds,
            List<KeptForecast> forecasts) {
        Player model = before.player();
        LearningTable assumed = LearningTable.assumed(model);
        Map<Skill, List<LearningFit.Point>> points = points(before, kept, drills);
        LearningTable own = LearningFit.of(assumed, points);
        Map<Skill, Measured> now = measured(before, kept, drills);
        List<Line> lines = new ArrayList<>();
        now.forEach((skill, measured) -> lines.add(line(skill, measured, model, assumed, kept, drills)));
        double sd =
                forecasts.isEmpty() ? 3.5 : forecasts.get(forecasts.size() - 1).sd();
        return new Report(model.name(), List.copyOf(lines), own, roundsToSee(sd), rounds(rounds, forecasts));
    }

    private static Line line(
            Skill skill, Measured now, Player model, LearningTable assumed, List<KeptDrill> kept, List<Drill> drills) {
        double hours = hours(skill, model, kept, drills, kept.size());
        double modelSd = modelSd(skill, model);
        double noise = NINETY * Math.hypot(now.sd(), modelSd);
        Verdict verdict =
                now.log() < -noise ? Verdict.BETTER : now.log() > noise ? Verdict.WORSE : Verdict.WITHIN_NOISE;
        double predicted =
                assumed.curves().containsKey(skill) ? assumed.get(skill).left(hours) : 1;
        return new Line(skill, hours, predicted, modelSd, now, playings(skill, model, kept, drills), verdict);
    }

    /** What the newest playings of every drill say. */
    static Map<Skill, Measured> measured(PlayerProfile before, List<KeptDrill> kept, List<Drill> drills) {
        return SkillPosterior.of(
                before.player(), before.day(), PlanDay.USUAL.greens(), newest(kept, drills), wide(before.player()));
    }

    /** What is not known of a skill of a model, in the logarithm of its spread. */
    static double modelSd(Skill skill, Player model) {
        return MODEL_LOG_SD * Math.sqrt(skill.assumedShare(model));
    }

    static int playings(Skill skill, Player model, List<KeptDrill> kept, List<Drill> drills) {
        return (int) kept.stream().filter(k -> tells(k, skill, model, drills)).count();
    }

    private static Map<Skill, Double> wide(Player model) {
        Map<Skill, Double> out = new EnumMap<>(Skill.class);
        LearningTable.assumed(model).curves().keySet().forEach(s -> out.put(s, WIDE_LOG_SD));
        return out;
    }

    private static Optional<Drill> drill(KeptDrill kept, List<Drill> drills) {
        return drills.stream().filter(d -> d.name().equals(kept.drill())).findFirst();
    }

    private static boolean tells(KeptDrill kept, Skill skill, Player model, List<Drill> drills) {
        return drill(kept, drills).filter(d -> d.skills(model).contains(skill)).isPresent();
    }

    /** Hours on a skill, in drills and in blocks that were ticked, in the first {@code count} of the record. */
    static double hours(Skill skill, Player model, List<KeptDrill> kept, List<Drill> drills, int count) {
        return kept.stream()
                        .limit(count)
                        .filter(k -> tells(k, skill, model, drills)
                                || k.block().filter(skill::equals).isPresent())
                        .mapToInt(KeptDrill::minutes)
                        .sum()
                / MINUTES;
    }

    private static List<Played> newest(List<KeptDrill> kept, List<Drill> drills) {
        Map<String, List<Played>> byDrill = new LinkedHashMap<>();
        for (int i = kept.size() - 1; i >= 0; i--) {
            KeptDrill k = kept.get(i);
            List<Played> played = byDrill.computeIfAbsent(k.drill(), d -> new ArrayList<>());
            drill(k, drills).filter(d -> played.size() < NEWEST).ifPresent(d -> played.add(new Played(d, k.score())));
        }
        return byDrill.values().stream().flatMap(List::stream).toList();
    }

    /** Every playing as a measurement of each skill its drill tells about, after the hours before it. */
    private static Map<Skill, List<LearningFit.Point>> points(
            PlayerProfile before, List<KeptDrill> kept, List<Drill> drills) {
        Map<Skill, List<LearningFit.Point>> out = new EnumMap<>(Skill.class);
        Map<String, Map<Skill, Measured>> known = new LinkedHashMap<>();
        for (int i = 0; i < kept.size(); i++) {
            KeptDrill k = kept.get(i);
            Optional<Drill> drill = drill(k, drills);
            if (drill.isEmpty()) {
                continue;
            }
            Map<Skill, Measured> one = known.computeIfAbsent(
                    k.drill() + " " + k.score(),
                    key -> SkillPosterior.of(
                            before.player(),
                            before.day(),
                            PlanDay.USUAL.greens(),
                            List.of(new Played(drill.get(), k.score())),
                            wide(before.player())));
            for (Map.Entry<Skill, Measured> e : one.entrySet()) {
                double hours = hours(e.getKey(), before.player(), kept, drills, i);
                alone(e.getValue(), hours)
                        .ifPresent(p -> out.computeIfAbsent(e.getKey(), s -> new ArrayList<>())
                                .add(p));
            }
        }
        return out;
    }

    /** The measurement without the prior it was made with; none where it hardly told anything. */
    static Optional<LearningFit.Point> alone(Measured m, double hours) {
        double information = 1 / (m.sd() * m.sd()) - 1 / (WIDE_LOG_SD * WIDE_LOG_SD);
        if (!(information > 0.1)) {
            return Optional.empty();
        }
        return Optional.of(
                new LearningFit.Point(hours, m.log() / (m.sd() * m.sd()) / information, Math.sqrt(1 / information)));
    }

    /** n = 2 (1.645 + 0.842)^2 sd^2 / gain^2, rounds before and as many after. */
    private static Map<Integer, Integer> roundsToSee(double sd) {
        Map<Integer, Integer> out = new LinkedHashMap<>();
        for (int gain = 1; gain <= 3; gain++) {
            out.put(gain, (int) Math.ceil(2 * Math.pow((NINETY + POWER) * sd / gain, 2)));
        }
        return out;
    }

    /** The newest forecast against the rounds on its course and tees since. */
    private static Optional<Rounds> rounds(List<KeptRound> rounds, List<KeptForecast> forecasts) {
        for (int i = forecasts.size() - 1; i >= 0; i--) {
            KeptForecast f = forecasts.get(i);
            double[] scores = rounds.stream()
                    .filter(r -> !r.day().isBefore(f.day())
                            && r.course().equals(f.course())
                            && r.holes() == f.holes()
                            && r.score().isPresent())
                    .mapToDouble(r -> r.score().getAsInt())
                    .toArray();
            if (scores.length > 0) {
                double mean = Arrays.stream(scores).average().orElseThrow() - f.mean();
                return Optional.of(
                        new Rounds(f.day(), f.course(), scores.length, mean, f.sd() / Math.sqrt(scores.length)));
            }
        }
        return Optional.empty();
    }

    /** Names in a record that no drill has any more. */
    public static List<String> unknown(List<KeptDrill> kept, List<Drill> drills) {
        TreeSet<String> out = new TreeSet<>();
        kept.stream()
                .filter(k -> k.block().isEmpty() && drill(k, drills).isEmpty())
                .forEach(k -> out.add(k.drill()));
        return List.copyOf(out);
    }
}
