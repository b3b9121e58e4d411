package loopwright.action;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.scoring.Band;
import loopwright.scoring.ClubMiss;
import loopwright.scoring.Gain;
import loopwright.scoring.Obstacle;
import loopwright.scoring.OrdinaryMiss;
import loopwright.scoring.PartOfGame;
import loopwright.scoring.RecordTier;
import loopwright.scoring.ScoreGap;
import loopwright.scoring.ShotAttribution;
import loopwright.units.Distance;

/** A report's sentences, the same on every face. */
public final class ReportWords {
    /** Of fewer swings neither line nor width is told. */
    private static final int FEWEST_SWINGS = 5;

    private static final double SHORT_GAME_METRES = Distance.ofYards(40).metres();
    private static final double WEDGES_METRES = Distance.ofYards(125).metres();
    private static final double SHORT_PUTT_METRES = Distance.ofFeet(6).metres();

    private ReportWords() {}

    /** A shot whose loss is told: its parts, as far as they are known. */
    public static String lost(ShotAttribution s) {
        String shot = "hole " + s.hole() + ", stroke " + s.shot() + (s.club().isEmpty() ? "" : ", " + s.club());
        if (s.knowledge() == ShotAttribution.Knowledge.PUTT || s.knowledge() == ShotAttribution.Knowledge.UNDIVIDED) {
            return String.format(Locale.ROOT, "%s: lost %.2f (%s).", shot, s.lost(), knowledge(s.knowledge()));
        }
        return String.format(
                        Locale.ROOT,
                        "%s: lost %.2f: decision %.2f, execution %.2f, luck %.2f (%s). %s",
                        shot,
                        s.lost(),
                        s.decision(),
                        s.execution(),
                        s.luck(),
                        knowledge(s.knowledge()),
                        ordinaryMiss(s))
                .strip();
    }

    /** What was done well, one sentence. */
    public static String doneWell(PlayerReport report) {
        return doneWell(report, ReadLengths.USUAL);
    }

    public static String doneWell(PlayerReport report, ReadLengths lengths) {
        return report.doneWell()
                .map(g -> String.format(
                        Locale.ROOT,
                        "Done well: %s, %.1f strokes better than %s.",
                        band(g.band(), lengths),
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
        if (report.causes().isEmpty() && report.record().tier() == RecordTier.PLACES) {
            return "One decision: not worked out yet; the strokes of this round can be divided by their causes (report"
                    + " --causes).";
        }
        return report.causes().isEmpty()
                ? "One decision: cannot be told; note club, aim and place of your tee shots (loopwright lesson play does)."
                : "One decision: none that can be told cost more than a tenth of a stroke.";
    }

    /** What to practise, or why it cannot be said yet. */
    public static String practice(PlayerReport report) {
        return practice(report, ReadLengths.USUAL);
    }

    public static String practice(PlayerReport report, ReadLengths lengths) {
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
                obstacle(row.obstacle(), lengths),
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

    /** Whether the rows of a gap can be told apart. */
    public static String gapNote(ScoreGap gap) {
        return (gap.separated() ? "" : "Cannot separate these yet: " + rounds(gap) + ". ")
                + "The rows overlap (a penalty can make a double), so they do not add up.";
    }

    /** "12 swings with aim: 1.3 degrees left of the assumed line (within 0.8), 1.1 times as wide". */
    public static String swings(ClubMiss m) {
        if (m.noted() < FEWEST_SWINGS) {
            return m.noted() + (m.noted() == 1 ? " swing" : " swings") + " with aim: too few to tell";
        }
        return String.format(
                Locale.ROOT,
                "%d swings with aim: %.1f degrees %s of the assumed line (within %.1f), %.1f times as wide",
                m.noted(),
                Math.toDegrees(Math.abs(m.bias())),
                m.bias() < 0 ? "left" : "right",
                Math.toDegrees(2 * m.biasError()),
                m.spread());
    }

    /** "12 approaches counted: 5 on the green, 3 left, 1 right, 3 short, 0 long". */
    public static String approaches(ClubMiss m) {
        return String.format(
                Locale.ROOT,
                "%d approaches counted: %d on the green, %d left, %d right, %d short, %d long",
                m.approaches(),
                m.onGreen(),
                m.left(),
                m.right(),
                m.shortOf(),
                m.longOf());
    }

    /** What all divided strokes lost, and its parts. */
    public static String causes(List<ShotAttribution> causes) {
        double decision = causes.stream().mapToDouble(ShotAttribution::decision).sum();
        double execution =
                causes.stream().mapToDouble(ShotAttribution::execution).sum();
        double luck = causes.stream().mapToDouble(ShotAttribution::luck).sum();
        return String.format(
                Locale.ROOT,
                "Strokes lost against the best this player could expect, on the holes with places: %.2f = decision %.2f"
                        + " + execution %.2f + luck of the lie %.2f. Bounces are not recorded and stand in execution.",
                decision + execution + luck,
                decision,
                execution,
                luck);
    }

    /** How the chances that were foretold came true. */
    public static String brier(Standing standing) {
        return String.format(
                Locale.ROOT,
                "Forecasts of the target so far: Brier score %.3f over %d (0 is perfect, a coin earns 0.25).",
                standing.brier(),
                standing.foretold().size());
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
        return ordinaryMiss(m, ReadLengths.USUAL);
    }

    public static String ordinaryMiss(OrdinaryMiss m, ReadLengths lengths) {
        double rest = m.left().metres();
        String left =
                rest == 0 ? "into the hole" : "to " + (m.left().yards() < 20 ? lengths.near(rest) : lengths.far(rest));
        return String.format(
                Locale.ROOT,
                "hole %d, stroke %d: %s from %s %s; %s of yours from there finish farther off.",
                m.hole(),
                m.shot(),
                m.club(),
                lengths.far(m.from().metres()),
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
            case UNDIVIDED -> "not divided: no club that the plan knows was noted";
            case PUTT -> "a putt, not divided";
        };
    }

    /** An obstacle as the row of a table. */
    public static String obstacle(Obstacle obstacle) {
        return obstacle(obstacle, ReadLengths.USUAL);
    }

    public static String obstacle(Obstacle obstacle, ReadLengths lengths) {
        return switch (obstacle) {
            case DOUBLES -> "double bogeys and worse (strokes beyond bogey)";
            case PENALTIES -> "penalty strokes";
            case THREE_PUTTS -> "three-putts";
            case SHORT_PUTTS -> "missed putts of up to " + lengths.near(SHORT_PUTT_METRES);
            case UP_AND_DOWNS -> "around the green to the hole";
            case WEDGES -> "approaches of " + lengths.far(SHORT_GAME_METRES, WEDGES_METRES);
            case TEE -> "tee shots";
        };
    }

    /** A row of strokes gained. */
    public static String band(Band band) {
        return band(band, ReadLengths.USUAL);
    }

    public static String band(Band band, ReadLengths lengths) {
        return switch (band.part()) {
            case TEE_SHOTS -> "tee shots (par 4 and longer)";
            case APPROACH -> "approach " + range(band, lengths, false);
            case AROUND_THE_GREEN -> "around the green (within " + lengths.far(SHORT_GAME_METRES) + ")";
            case PUTTING -> "putts " + range(band, lengths, true);
            case PENALTIES -> "penalty strokes";
            case CONCEDED -> "conceded putts, unseen";
            case TO_THE_GREEN -> "tee to green, not divided";
            case WHOLE_HOLE -> "whole holes, not divided";
        };
    }

    private static String range(Band band, ReadLengths lengths, boolean putts) {
        double from = band.from().metres();
        double low = band.part() == PartOfGame.APPROACH && from == 0 ? SHORT_GAME_METRES : from;
        if (band.isOpen()) {
            return (putts ? lengths.near(low) : lengths.far(low)) + " and more";
        }
        double below = band.below().metres();
        if (low == 0) {
            return "under " + (putts ? lengths.near(below) : lengths.far(below));
        }
        return putts ? lengths.near(low, below) : lengths.far(low, below);
    }

    /** The gain of a band, 0 where a review has none. */
    public static double gained(List<Gain> rows, Band band) {
        return rows.stream()
                .filter(g -> g.band().equals(band))
                .mapToDouble(Gain::gained)
                .sum();
    }
}
