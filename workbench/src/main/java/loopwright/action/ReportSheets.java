package loopwright.action;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loopwright.action.Book.Line;
import loopwright.action.Book.Role;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.scoring.ClubMiss;
import loopwright.scoring.Gain;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.PartOfGame;
import loopwright.scoring.RoundReview;
import loopwright.scoring.ScoreGap;
import loopwright.scoring.ShotAttribution;
import loopwright.scoring.ShotRecord;

/** Words a report as sheets of paper: all of it for the coach, and the one page that the player takes home. */
public final class ReportSheets {
    private static final int STRIPS_A_ROW = 6;
    /** Lines to write on at the foot of the player's page. */
    private static final int PENCIL_LINES = 4;

    private final PlayerReport report;

    private ReportSheets(PlayerReport report) {
        this.report = report;
    }

    /** The whole report: the three sentences, the ledgers behind them, the holes as they were played. */
    public static Book full(PlayerReport report) {
        return new ReportSheets(report).full();
    }

    /** The player's page after a review: what went well, one decision, one thing to practise, what is next. */
    public static Book page(PlayerReport report) {
        return new ReportSheets(report).page();
    }

    private Book full() {
        List<Book.Page> out = new ArrayList<>();
        out.add(part(title(), opening()));
        gains().ifPresent(out::add);
        report.gap().ifPresent(gap -> out.add(gap(gap)));
        misses().ifPresent(out::add);
        causes().ifPresent(out::add);
        ordinary().ifPresent(out::add);
        out.add(part("Does the model know this player", List.of(new Line(Role.NOTE, standing()))));
        out.addAll(strips());
        return new Book("Report on " + report.name() + ", " + report.latest().day(), LengthUnit.YARDS, out);
    }

    private Book page() {
        List<Book.Page> out = new ArrayList<>();
        out.add(Book.Page.of(Book.Kind.PLAYER_PAGE, title(), opening()));
        parts().ifPresent(out::add);
        List<Line> next = next();
        if (!next.isEmpty()) {
            out.add(Book.Page.of(Book.Kind.PLAYER_PAGE, "Until next time", next));
        }
        List<List<String>> empty = new ArrayList<>();
        for (int i = 0; i < PENCIL_LINES; i++) {
            empty.add(List.of("\u00a0"));
        }
        out.add(Book.Page.of(
                Book.Kind.PLAYER_PAGE,
                "What I take along",
                List.of(),
                new Book.Table("Lines to write on", List.of("\u00a0"), List.of(1.0), empty)));
        return new Book("Page for " + report.name() + ", " + report.latest().day(), LengthUnit.YARDS, out);
    }

    private static Book.Page part(String title, List<Line> lines) {
        return Book.Page.of(Book.Kind.REPORT, title, lines);
    }

    private static Book.Page part(String title, List<Line> lines, Book.Table table) {
        return Book.Page.of(Book.Kind.REPORT, title, lines, table);
    }

    private String title() {
        KeptRound round = report.latest();
        String score = round.lesson()
                ? "a lesson"
                : round.score().isPresent()
                        ? round.score().getAsInt() + " on " + round.holes() + " holes"
                        : "no total, " + round.holes() + " holes";
        return report.name() + ", " + round.day() + ": " + score;
    }

    private List<Line> opening() {
        List<Line> out = new ArrayList<>();
        if (!report.latest().course().isEmpty()) {
            out.add(new Line(Role.NOTE, report.latest().course() + tees()));
        }
        out.add(new Line(Role.LEAD, ReportWords.doneWell(report)));
        out.add(new Line(Role.LEAD, ReportWords.decision(report)));
        out.add(new Line(Role.LEAD, ReportWords.practice(report)));
        return out;
    }

    private String tees() {
        return report.latest().tees().isEmpty() ? "" : ", " + report.latest().tees() + " tees";
    }

    private Optional<Book.Page> gains() {
        RoundReview yardstick = report.yardstick();
        if (report.tour().rows().isEmpty()) {
            return Optional.empty();
        }
        List<List<String>> rows = new ArrayList<>();
        List<Book.Bar> bars = new ArrayList<>();
        for (Gain row : report.tour().rows()) {
            rows.add(List.of(
                    ReportWords.band(row.band()),
                    Integer.toString(row.strokes()),
                    signed(row.gained()),
                    in(report.benchmark(), row),
                    in(report.past(), row),
                    ""));
            bars.add(Book.Bar.of(ReportWords.gained(yardstick.rows(), row.band())));
        }
        rows.add(List.of(
                "sum",
                Integer.toString(report.tour().strokes()),
                signed(report.tour().total()),
                report.benchmark().map(b -> signed(b.total())).orElse(""),
                report.past().map(b -> signed(b.total())).orElse(""),
                ""));
        bars.add(Book.Bar.of(yardstick.total()));
        String note = "a: " + report.tour().baseline() + ". b: "
                + report.benchmark().map(RoundReview::baseline).orElse("no benchmark was solved") + ". c: "
                + report.past().map(RoundReview::baseline).orElse("no round before this one")
                + ". Each column adds up to what its player needs from the same places less the strokes played. The bars"
                + " are beside " + yardstick.baseline() + ": right of the axis gained, left lost.";
        return Optional.of(part(
                "Strokes gained",
                List.of(new Line(Role.NOTE, note)),
                new Book.Table(
                        "Strokes gained by part of the game",
                        List.of("", "strokes", "a", "b", "c", ""),
                        List.of(0.36, 0.1, 0.09, 0.09, 0.09, 0.27),
                        rows,
                        bars)));
    }

    private static String in(Optional<RoundReview> review, Gain row) {
        return review.map(r -> signed(ReportWords.gained(r.rows(), row.band()))).orElse("");
    }

    private static String signed(double strokes) {
        return String.format(Locale.ROOT, "%+.2f", strokes);
    }

    /** The parts of the game in one word each, beside the finest yardstick. */
    private Optional<Book.Page> parts() {
        RoundReview yardstick = report.yardstick();
        Map<PartOfGame, double[]> sums = new EnumMap<>(PartOfGame.class);
        for (Gain g : yardstick.rows()) {
            double[] sum = sums.computeIfAbsent(g.band().part(), p -> new double[2]);
            sum[0] += g.strokes();
            sum[1] += g.gained();
        }
        if (sums.isEmpty()) {
            return Optional.empty();
        }
        List<List<String>> rows = new ArrayList<>();
        List<Book.Bar> bars = new ArrayList<>();
        sums.forEach((part, sum) -> {
            rows.add(List.of(
                    word(part),
                    String.format(Locale.ROOT, "%.0f", sum[0]),
                    String.format(Locale.ROOT, "%+.1f", sum[1]),
                    ""));
            bars.add(Book.Bar.of(sum[1]));
        });
        return Optional.of(new Book.Page(
                Book.Kind.PLAYER_PAGE,
                0,
                "Where the strokes went",
                List.of(new Line(
                        Role.NOTE,
                        "Beside " + yardstick.baseline()
                                + ": right of the axis strokes gained, left strokes lost. One round"
                                + " says little; the coach looks at many.")),
                Optional.of(new Book.Table(
                        "Strokes gained by part of the game",
                        List.of("", "strokes", "gained", ""),
                        List.of(0.36, 0.14, 0.15, 0.35),
                        rows,
                        bars)),
                Optional.empty()));
    }

    private static String word(PartOfGame part) {
        return switch (part) {
            case TEE_SHOTS -> "tee shots";
            case APPROACH -> "approaches";
            case AROUND_THE_GREEN -> "around the green";
            case PUTTING -> "putts";
            case PENALTIES -> "penalty strokes";
            case CONCEDED -> "conceded putts";
            case TO_THE_GREEN -> "tee to green";
            case WHOLE_HOLE -> "whole holes";
        };
    }

    private List<Line> next() {
        List<Line> out = new ArrayList<>();
        for (KeptLesson lesson : report.homework()) {
            out.add(new Line(
                    Role.LEAD,
                    "Homework: " + lesson.homework()
                            + lesson.due().map(d -> ", until " + d).orElse("") + "."));
        }
        report.next().ifPresent(f -> out.add(new Line(Role.LEAD, nextRound(f))));
        return out;
    }

    /** A chance without a calibrated model says so. */
    private String nextRound(KeptForecast f) {
        return String.format(
                Locale.ROOT,
                "Next round, %s on %s: about %.0f; %d or better in %.0f of 100 such rounds%s.",
                f.day(),
                f.course(),
                f.mean(),
                f.target(),
                100 * f.chance(),
                report.standing().calibrated() ? "" : " (not yet calibrated)");
    }

    private Book.Page gap(ScoreGap gap) {
        List<List<String>> rows = new ArrayList<>();
        List<Book.Bar> bars = new ArrayList<>();
        for (ScoreGap.Row row : gap.rows()) {
            boolean tied = gap.tied().size() > 1 && gap.tied().contains(row.obstacle());
            rows.add(List.of(
                    ReportWords.obstacle(row.obstacle()) + (tied ? ", tied for the most" : ""),
                    String.format(Locale.ROOT, "%+.1f (%+.1f to %+.1f)", row.cost(), row.low(), row.high()),
                    Integer.toString(row.rounds()),
                    ""));
            bars.add(new Book.Bar(row.cost(), row.low(), row.high()));
        }
        String note = ReportWords.gapNote(gap);
        return part(
                "What stands between " + report.name() + " and " + report.target(),
                List.of(new Line(
                        Role.NOTE,
                        "Strokes a round of 18 holes that each costs beside a player of " + report.target()
                                + " with the same length, and the range that holds it 9 times in 10. " + note)),
                new Book.Table(
                        "What stands between the player and the target",
                        List.of("", "strokes a round", "rounds", ""),
                        List.of(0.46, 0.2, 0.09, 0.25),
                        rows,
                        bars));
    }

    private Optional<Book.Page> misses() {
        List<List<String>> rows = new ArrayList<>();
        for (ClubMiss m : report.misses()) {
            if (m.noted() > 0) {
                rows.add(List.of(m.club(), ReportWords.swings(m)));
            }
            if (m.approaches() > 0) {
                rows.add(List.of(m.club(), ReportWords.approaches(m)));
            }
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(part(
                        "Misses by club",
                        List.of(new Line(Role.NOTE, "Against what the plan assumes, over all rounds.")),
                        new Book.Table("Misses by club", List.of("club", "misses"), List.of(0.2, 0.8), rows)));
    }

    private Optional<Book.Page> causes() {
        List<List<String>> rows = new ArrayList<>();
        for (ShotAttribution s : report.causes()) {
            if (s.knowledge() != ShotAttribution.Knowledge.PUTT) {
                rows.add(List.of(
                        s.hole() + " / " + s.shot(),
                        s.club(),
                        signed(s.lost()),
                        signed(s.decision()),
                        signed(s.execution()),
                        signed(s.luck()),
                        ReportWords.knowledge(s.knowledge())));
            }
        }
        return table(
                "Decision, execution, luck",
                report.causes().isEmpty() ? "" : ReportWords.causes(report.causes()),
                new Book.Table(
                        "Strokes lost by cause",
                        List.of("hole / stroke", "club", "lost", "decision", "execution", "luck", "what was known"),
                        List.of(0.12, 0.16, 0.09, 0.11, 0.12, 0.09, 0.31),
                        rows));
    }

    private Optional<Book.Page> ordinary() {
        List<List<String>> rows = report.ordinary().stream()
                .map(m -> List.of(ReportWords.ordinaryMiss(m)))
                .toList();
        return table(
                "How ordinary the shots at the hole were",
                "On level ground in still air.",
                new Book.Table("How ordinary each shot was", List.of("shot"), List.of(1.0), rows));
    }

    /** A part with a table, unless that is empty. */
    private static Optional<Book.Page> table(String title, String note, Book.Table table) {
        return table.rows().isEmpty()
                ? Optional.empty()
                : Optional.of(part(title, List.of(new Line(Role.NOTE, note)), table));
    }

    private String standing() {
        String sentence = report.standing().sentence() + ".";
        return report.standing().foretold().isEmpty()
                ? sentence
                : sentence + " " + ReportWords.brier(report.standing());
    }

    /** The holes as they were played, where the course is kept and strokes were written down. */
    private List<Book.Page> strips() {
        if (report.ground().isEmpty()) {
            return List.of();
        }
        PlayerReport.Ground ground = report.ground().get();
        List<Book.PlayedHole> holes = report.record().holes().stream()
                .filter(h -> !h.shots().isEmpty() && hasHole(ground.course(), h.number()))
                .map(h -> played(ground, h))
                .toList();
        List<Book.Page> out = new ArrayList<>();
        for (int from = 0; from < holes.size(); from += STRIPS_A_ROW) {
            List<Book.PlayedHole> some = holes.subList(from, Math.min(holes.size(), from + STRIPS_A_ROW));
            out.add(new Book.Page(
                    Book.Kind.REPORT,
                    0,
                    from == 0 ? "The holes as they were played" : "The holes as they were played, continued",
                    from == 0
                            ? List.of(new Line(
                                    Role.NOTE,
                                    "Full dots: where the ball lay. Open dots: only the distance to the hole was written down;"
                                            + " they stand on the line of play."))
                            : List.of(),
                    Optional.empty(),
                    Optional.of(new Book.PlayedGround(ground.course(), some, words(some)))));
        }
        return out;
    }

    private static boolean hasHole(Course course, int number) {
        return course.holes().stream().anyMatch(h -> h.number() == number);
    }

    private static String words(List<Book.PlayedHole> holes) {
        return "Strips of holes with where the ball lay before each stroke. "
                + String.join("; ", holes.stream().map(Book.PlayedHole::heading).toList()) + ".";
    }

    private static Book.PlayedHole played(PlayerReport.Ground ground, HoleRecord record) {
        Hole hole = ground.course().getHole(record.number());
        Place tee = ground.tees().getPlace(record.number()).place();
        LocalFrame frame = new LocalFrame(ground.course().origin());
        var line = hole.lineFrom(tee);
        List<Book.Spot> spots = new ArrayList<>();
        for (ShotRecord shot : record.shots()) {
            double along = Math.max(0, line.lengthMetres() - shot.toHole().metres());
            spots.add(shot.place()
                    .map(at -> new Book.Spot(frame.toPlace(at), true))
                    .orElseGet(() -> new Book.Spot(line.placeAt(along), false)));
        }
        String score =
                record.score().isPresent() ? Integer.toString(record.score().getAsInt()) : "no score";
        return new Book.PlayedHole(
                hole, tee, "Hole " + record.number() + ": " + score, spots, record.end() == HoleEnd.HOLED);
    }
}
