package loopwright.action;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.scoring.Band;
import loopwright.scoring.Gain;
import loopwright.scoring.Obstacle;
import loopwright.scoring.OrdinaryMiss;
import loopwright.scoring.PartOfGame;
import loopwright.scoring.ScoreGap;
import loopwright.scoring.ShotAttribution;

/** A report's sentences, the same on every face. */
public final class ReportWords {
    private ReportWords() {}

    /** What was done well, one sentence. */
    public static String doneWell(PlayerReport report) {
        return report.doneWell()
                .map(g -> String.format(
                        Locale.ROOT,
                        "Done well: %s, %.1f strokes better than %s.",
                        band(g.band()),
                        g.gained(),
                        report.yardstick().baseline()))
                .orElse("Done well: nothing gained on " + report.yardstick().baseline()
                        + " over three strokes or more.");
    }

    /** The decision to talk about, or why none can be told. */
    public static String decision(PlayerReport report) {
        Optional<ShotAttribution> worst = report.decision();
        if (worst.isPresent()) {
            ShotAttribution s = worst.get();
            return String.format(
                    Locale.ROOT,
                    "One decision: hole %d, stroke %d (%s) cost %.2f strokes before the ball was hit%s.",
                    s.hole(),
                    s.shot(),
                    s.club(),
                    s.decision(),
                    s.knowledge() == ShotAttribution.Knowledge.INFERRED
                            ? " (aim inferred from where it finished)"
                            : "");
        }
        return report.causes().isEmpty()
                ? "One decision: cannot be told; note club, aim and place of your tee shots (loopwright lesson play does)."
                : "One decision: none that can be told cost more than a tenth of a stroke.";
    }

    /** What to practise, or why it cannot be said yet. */
    public static String practice(PlayerReport report) {
        if (report.gap().isEmpty()) {
            return "One practice item: unknown without a benchmark; the store needs the course and the tees of this round.";
        }
        if (report.practice().isEmpty()) {
            return "One practice item: nothing costs more than it costs the benchmark.";
        }
        ScoreGap gap = report.gap().get();
        ScoreGap.Row row = report.practice().get();
        String cost = String.format(
                Locale.ROOT,
                "%s, %.1f (%.1f to %.1f) strokes a round",
                obstacle(row.obstacle()),
                row.cost(),
                row.low(),
                row.high());
        return gap.separated()
                ? "One practice item: " + cost + "."
                : "One practice item: " + cost + ", but cannot separate these yet (" + rounds(gap) + ").";
    }

    /** How many more rounds. */
    public static String rounds(ScoreGap gap) {
        int more = gap.roundsNeeded() - gap.rounds();
        if (gap.roundsNeeded() >= ScoreGap.NEVER) {
            return "so close that rounds alone will not tell them apart";
        }
        return gap.rounds() + (gap.rounds() == 1 ? " round" : " rounds") + " so far, about " + Math.max(1, more)
                + " more needed";
    }

    /** "6 in 10 of your 7-iron shots from there miss by more than this."; empty where it is not known. */
    public static String ordinaryMiss(ShotAttribution shot) {
        return shot.fartherMisses().isEmpty()
                ? ""
                : share(shot.fartherMisses().getAsDouble()) + " of your " + shot.club()
                        + " shots from there miss by more than this.";
    }

    /** "hole 3, stroke 2: 7-iron from 150 yd to 32 ft; 6 in 10 of yours from there finish farther off." */
    public static String ordinaryMiss(OrdinaryMiss m) {
        String left = m.left().metres() == 0
                ? "into the hole"
                : m.left().yards() < 20
                        ? String.format(Locale.ROOT, "to %.0f ft", m.left().feet())
                        : String.format(Locale.ROOT, "to %.0f yd", m.left().yards());
        return String.format(
                Locale.ROOT,
                "hole %d, stroke %d: %s from %.0f yd %s; %s of yours from there finish farther off.",
                m.hole(),
                m.shot(),
                m.club(),
                m.from().yards(),
                left,
                share(m.farther()).toLowerCase(Locale.ROOT));
    }

    private static String share(double share) {
        long tenths = Math.round(10 * share);
        return tenths == 0 ? "Almost none" : tenths == 10 ? "Almost all" : tenths + " in 10";
    }

    /** How much was known of a choice. */
    public static String knowledge(ShotAttribution.Knowledge knowledge) {
        return switch (knowledge) {
            case NOTED -> "aim noted";
            case INFERRED -> "aim inferred";
            case TWO_PARTS -> "two parts only: the aim was not noted and stands in execution";
            case UNDIVIDED -> "not divided: neither club nor aim was noted";
            case PUTT -> "a putt, not divided";
        };
    }

    /** An obstacle as the row of a table. */
    public static String obstacle(Obstacle obstacle) {
        return switch (obstacle) {
            case DOUBLES -> "double bogeys and worse (strokes beyond bogey)";
            case PENALTIES -> "penalty strokes";
            case THREE_PUTTS -> "three-putts";
            case SHORT_PUTTS -> "missed putts of up to 6 ft";
            case UP_AND_DOWNS -> "around the green to the hole";
            case WEDGES -> "approaches of 40 to 125 yd";
            case TEE -> "tee shots";
        };
    }

    /** A row of strokes gained. */
    public static String band(Band band) {
        return switch (band.part()) {
            case TEE_SHOTS -> "tee shots (par 4 and longer)";
            case APPROACH -> "approach " + range(band, false);
            case AROUND_THE_GREEN -> "around the green (within 40 yd)";
            case PUTTING -> "putts " + range(band, true);
            case PENALTIES -> "penalty strokes";
            case CONCEDED -> "conceded putts, unseen";
            case TO_THE_GREEN -> "tee to green, not divided";
            case WHOLE_HOLE -> "whole holes, not divided";
        };
    }

    private static String range(Band band, boolean feet) {
        long from = Math.round(feet ? band.from().feet() : band.from().yards());
        long below = Math.round(feet ? band.below().feet() : band.below().yards());
        String unit = feet ? " ft" : " yd";
        long low = band.part() == PartOfGame.APPROACH && from == 0 ? 40 : from;
        if (band.isOpen()) {
            return from + unit + " and more";
        }
        return low == 0 ? "under " + below + unit : low + " to " + below + unit;
    }

    /** The gain of a band, 0 where a review has none. */
    public static double gained(List<Gain> rows, Band band) {
        return rows.stream()
                .filter(g -> g.band().equals(band))
                .mapToDouble(Gain::gained)
                .sum();
    }
}
