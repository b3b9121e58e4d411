package loopwright.action;

import static loopwright.action.Messages.number;
import static loopwright.action.Messages.say;

import java.util.List;
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

/** A report's sentences, the same on every face; the words are in the file of {@link Messages}. */
public final class ReportWords {
    /** Of fewer swings neither line nor width is told. */
    private static final int FEWEST_SWINGS = 5;

    private static final double SHORT_GAME_METRES = Distance.ofYards(40).metres();
    private static final double WEDGES_METRES = Distance.ofYards(125).metres();
    private static final double SHORT_PUTT_METRES = Distance.ofFeet(6).metres();

    private ReportWords() {}

    /** A shot whose loss is told: its parts, as far as they are known. */
    public static String lost(ShotAttribution s) {
        String shot = s.club().isEmpty()
                ? say("told.shot", s.hole(), s.shot())
                : say("told.shotClub", s.hole(), s.shot(), s.club());
        if (s.knowledge() == ShotAttribution.Knowledge.PUTT || s.knowledge() == ShotAttribution.Knowledge.UNDIVIDED) {
            return say("told.lostWhole", shot, number("%.2f", s.lost()), knowledge(s.knowledge()));
        }
        return say(
                        "told.lost",
                        shot,
                        number("%.2f", s.lost()),
                        number("%.2f", s.decision()),
                        number("%.2f", s.execution()),
                        number("%.2f", s.luck()),
                        knowledge(s.knowledge()),
                        ordinaryMiss(s))
                .strip();
    }

    /** What was done well, one sentence. */
    public static String doneWell(PlayerReport report) {
        return doneWell(report, ReadLengths.USUAL);
    }

    public static String doneWell(PlayerReport report, ReadLengths lengths) {
        String baseline = report.yardstick().baseline();
        return report.doneWell()
                .map(g -> say("told.doneWell", band(g.band(), lengths), number("%.1f", g.gained()), baseline))
                .orElseGet(() -> say("told.doneNothing", baseline));
    }

    /** The decision to talk about, or why none can be told. */
    public static String decision(PlayerReport report) {
        Optional<ShotAttribution> worst = report.decision();
        if (worst.isPresent()) {
            ShotAttribution s = worst.get();
            boolean inferred = s.knowledge() == ShotAttribution.Knowledge.INFERRED;
            return say(
                    inferred ? "told.decisionInferred" : "told.decision",
                    s.hole(),
                    s.shot(),
                    s.club(),
                    number("%.2f", s.decision()));
        }
        if (report.causes().isEmpty() && report.record().tier() == RecordTier.PLACES) {
            return say("told.decisionLater");
        }
        return say(report.causes().isEmpty() ? "told.decisionUnknown" : "told.decisionNone");
    }

    /** What to practise, or why it cannot be said yet. */
    public static String practice(PlayerReport report) {
        return practice(report, ReadLengths.USUAL);
    }

    public static String practice(PlayerReport report, ReadLengths lengths) {
        if (report.gap().isEmpty()) {
            return say("told.practiceUnknown");
        }
        if (report.practice().isEmpty()) {
            return say("told.practiceNothing");
        }
        ScoreGap gap = report.gap().get();
        ScoreGap.Row row = report.practice().get();
        String cost = say(
                "told.cost",
                obstacle(row.obstacle(), lengths),
                number("%.1f", row.cost()),
                number("%.1f", row.low()),
                number("%.1f", row.high()));
        return gap.separated() ? say("told.practice", cost) : say("told.practiceTied", cost, rounds(gap));
    }

    /** How many more rounds. */
    public static String rounds(ScoreGap gap) {
        int more = gap.roundsNeeded() - gap.rounds();
        if (gap.roundsNeeded() >= ScoreGap.NEVER) {
            return say("told.roundsNever");
        }
        return say(gap.rounds() == 1 ? "told.roundsOne" : "told.rounds", gap.rounds(), Math.max(1, more));
    }

    /** Whether the rows of a gap can be told apart. */
    public static String gapNote(ScoreGap gap) {
        String overlap = say("gap.overlap");
        return gap.separated() ? overlap : say("told.gapTied", rounds(gap), overlap);
    }

    /** "12 swings with aim: 1.3 degrees left of the assumed line (within 0.8), 1.1 times as wide". */
    public static String swings(ClubMiss m) {
        if (m.noted() < FEWEST_SWINGS) {
            return say(m.noted() == 1 ? "told.swingsFewOne" : "told.swingsFew", m.noted());
        }
        return say(
                "told.swings",
                m.noted(),
                number("%.1f", Math.toDegrees(Math.abs(m.bias()))),
                say(m.bias() < 0 ? "side.left" : "side.right"),
                number("%.1f", Math.toDegrees(2 * m.biasError())),
                number("%.1f", m.spread()));
    }

    /** "12 approaches counted: 5 on the green, 3 left, 1 right, 3 short, 0 long". */
    public static String approaches(ClubMiss m) {
        return say("told.approaches", m.approaches(), m.onGreen(), m.left(), m.right(), m.shortOf(), m.longOf());
    }

    /** What all divided strokes lost, and its parts. */
    public static String causes(List<ShotAttribution> causes) {
        double decision = causes.stream().mapToDouble(ShotAttribution::decision).sum();
        double execution =
                causes.stream().mapToDouble(ShotAttribution::execution).sum();
        double luck = causes.stream().mapToDouble(ShotAttribution::luck).sum();
        return say(
                "told.causes",
                number("%.2f", decision + execution + luck),
                number("%.2f", decision),
                number("%.2f", execution),
                number("%.2f", luck));
    }

    /** How the chances that were foretold came true. */
    public static String brier(Standing standing) {
        return say(
                "told.brier",
                number("%.3f", standing.brier()),
                standing.foretold().size());
    }

    /** "6 in 10 of your 7-iron shots from there miss by more than this."; empty where it is not known. */
    public static String ordinaryMiss(ShotAttribution shot) {
        return shot.fartherMisses().isEmpty()
                ? ""
                : say("told.missOfYour", capital(share(shot.fartherMisses().getAsDouble())), shot.club());
    }

    /** "hole 3, stroke 2: 7-iron from 150 yd to 32 ft; 6 in 10 of yours from there finish farther off." */
    public static String ordinaryMiss(OrdinaryMiss m) {
        return ordinaryMiss(m, ReadLengths.USUAL);
    }

    public static String ordinaryMiss(OrdinaryMiss m, ReadLengths lengths) {
        double rest = m.left().metres();
        String left = rest == 0
                ? say("told.into")
                : say("told.to", m.left().yards() < 20 ? lengths.near(rest) : lengths.far(rest));
        return say(
                "told.ordinary",
                m.hole(),
                m.shot(),
                m.club(),
                lengths.far(m.from().metres()),
                left,
                share(m.farther()));
    }

    private static String share(double share) {
        long tenths = Math.round(10 * share);
        return tenths == 0 ? say("told.almostNone") : tenths == 10 ? say("told.almostAll") : say("told.inTen", tenths);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** How much was known of a choice. */
    public static String knowledge(ShotAttribution.Knowledge knowledge) {
        return say("told.knowledge." + knowledge);
    }

    /** An obstacle as the row of a table. */
    public static String obstacle(Obstacle obstacle) {
        return obstacle(obstacle, ReadLengths.USUAL);
    }

    public static String obstacle(Obstacle obstacle, ReadLengths lengths) {
        return switch (obstacle) {
            case SHORT_PUTTS -> say("told.obstacle.SHORT_PUTTS", lengths.near(SHORT_PUTT_METRES));
            case WEDGES -> say("told.obstacle.WEDGES", lengths.far(SHORT_GAME_METRES, WEDGES_METRES));
            default -> say("told.obstacle." + obstacle);
        };
    }

    /** A row of strokes gained. */
    public static String band(Band band) {
        return band(band, ReadLengths.USUAL);
    }

    public static String band(Band band, ReadLengths lengths) {
        String key = "told.band." + band.part();
        return switch (band.part()) {
            case APPROACH -> say(key, range(band, lengths, false));
            case AROUND_THE_GREEN -> say(key, lengths.far(SHORT_GAME_METRES));
            case PUTTING -> say(key, range(band, lengths, true));
            default -> say(key);
        };
    }

    private static String range(Band band, ReadLengths lengths, boolean putts) {
        double from = band.from().metres();
        double low = band.part() == PartOfGame.APPROACH && from == 0 ? SHORT_GAME_METRES : from;
        if (band.isOpen()) {
            return say("told.more", putts ? lengths.near(low) : lengths.far(low));
        }
        double below = band.below().metres();
        if (low == 0) {
            return say("told.under", putts ? lengths.near(below) : lengths.far(below));
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
