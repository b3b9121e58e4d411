package loopwright.action;

import static loopwright.action.Messages.number;
import static loopwright.action.Messages.say;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
    private final ReadLengths lengths;

    private ReportSheets(PlayerReport report, ReadLengths lengths) {
        this.report = report;
        this.lengths = lengths;
    }

    /** The whole report: the three sentences, the ledgers behind them, the holes as they were played. */
    public static Book full(PlayerReport report, ReadLengths lengths) {
        return new ReportSheets(report, lengths).full();
    }

    /** The player's page after a review: what went well, one decision, one thing to practise, what is next. */
    public static Book page(PlayerReport report, ReadLengths lengths) {
        return new ReportSheets(report, lengths).page();
    }

    private Book full() {
        List<Book.Page> out = new ArrayList<>();
        out.add(part(title(), opening()));
        gains().ifPresent(out::add);
        report.gap().ifPresent(gap -> out.add(gap(gap)));
        misses().ifPresent(out::add);
        causes().ifPresent(out::add);
        ordinary().ifPresent(out::add);
        out.add(part(say("paper.standing"), List.of(new Line(Role.NOTE, standing()))));
        out.addAll(strips());
        return new Book(say("paper.report", report.name(), report.latest().day()), lengths.course(), out);
    }

    private Book page() {
        List<Book.Page> out = new ArrayList<>();
        out.add(Book.Page.of(Book.Kind.PLAYER_PAGE, title(), opening()));
        parts().ifPresent(out::add);
        List<Line> next = next();
        if (!next.isEmpty()) {
            out.add(Book.Page.of(Book.Kind.PLAYER_PAGE, say("paper.next"), next));
        }
        List<List<String>> empty = new ArrayList<>();
        for (int i = 0; i < PENCIL_LINES; i++) {
            empty.add(List.of("\u00a0"));
        }
        out.add(Book.Page.of(
                Book.Kind.PLAYER_PAGE,
                say("paper.along"),
                List.of(),
                new Book.Table(say("paper.lines"), List.of("\u00a0"), List.of(1.0), empty)));
        return new Book(say("paper.page", report.name(), report.latest().day()), lengths.course(), out);
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
                ? say("paper.lesson")
                : round.score().isPresent()
                        ? say("paper.score", round.score().getAsInt(), round.holes())
                        : say("paper.noScore", round.holes());
        return say("paper.title", report.name(), round.day(), score);
    }

    private List<Line> opening() {
        List<Line> out = new ArrayList<>();
        if (!report.latest().course().isEmpty()) {
            out.add(new Line(Role.NOTE, where(report.latest())));
        }
        out.add(new Line(Role.LEAD, ReportWords.doneWell(report, lengths)));
        out.add(new Line(Role.LEAD, ReportWords.decision(report)));
        out.add(new Line(Role.LEAD, ReportWords.practice(report, lengths)));
        return out;
    }

    private static String where(KeptRound round) {
        return round.tees().isEmpty() ? round.course() : say("paper.where", round.course(), round.tees());
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
                    ReportWords.band(row.band(), lengths),
                    Integer.toString(row.strokes()),
                    signed(row.gained()),
                    in(report.benchmark(), row),
                    in(report.past(), row),
                    ""));
            bars.add(Book.Bar.of(ReportWords.gained(yardstick.rows(), row.band())));
        }
        rows.add(List.of(
                say("paper.sum"),
                Integer.toString(report.tour().strokes()),
                signed(report.tour().total()),
                report.benchmark().map(b -> signed(b.total())).orElse(""),
                report.past().map(b -> signed(b.total())).orElse(""),
                ""));
        bars.add(Book.Bar.of(yardstick.total()));
        String note = say(
                "paper.gainsNote",
                report.tour().baseline(),
                report.benchmark().map(RoundReview::baseline).orElseGet(() -> say("paper.noBenchmark")),
                report.past().map(RoundReview::baseline).orElseGet(() -> say("report.noPast")),
                yardstick.baseline());
        return Optional.of(part(
                say("paper.gains"),
                List.of(new Line(Role.NOTE, note)),
                new Book.Table(
                        say("paper.gainsTable"),
                        List.of("", say("paper.strokes"), "a", "b", "c", ""),
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
                    say("paper.part." + part),
                    String.format(Locale.ROOT, "%.0f", sum[0]),
                    String.format(Locale.ROOT, "%+.1f", sum[1]),
                    ""));
            bars.add(Book.Bar.of(sum[1]));
        });
        return Optional.of(new Book.Page(
                Book.Kind.PLAYER_PAGE,
                0,
                say("paper.parts"),
                List.of(new Line(Role.NOTE, say("paper.partsNote", yardstick.baseline()))),
                Optional.of(new Book.Table(
                        say("paper.gainsTable"),
                        List.of("", say("paper.strokes"), say("paper.gained"), ""),
                        List.of(0.36, 0.14, 0.15, 0.35),
                        rows,
                        bars)),
                Optional.empty()));
    }

    private List<Line> next() {
        List<Line> out = new ArrayList<>();
        for (KeptLesson lesson : report.homework()) {
            out.add(new Line(
                    Role.LEAD,
                    lesson.due()
                            .map(d -> say("paper.homeworkUntil", lesson.homework(), d))
                            .orElseGet(() -> say("paper.homework", lesson.homework()))));
        }
        report.next().ifPresent(f -> out.add(new Line(Role.LEAD, nextRound(f))));
        return out;
    }

    /** A chance without a calibrated model says so. */
    private String nextRound(KeptForecast f) {
        return say(
                report.standing().calibrated() ? "paper.nextRound" : "paper.nextRoundOpen",
                f.day(),
                f.course(),
                number("%.0f", f.mean()),
                f.target(),
                number("%.0f", 100 * f.chance()));
    }

    private Book.Page gap(ScoreGap gap) {
        List<List<String>> rows = new ArrayList<>();
        List<Book.Bar> bars = new ArrayList<>();
        for (ScoreGap.Row row : gap.rows()) {
            boolean tied = gap.tied().size() > 1 && gap.tied().contains(row.obstacle());
            rows.add(List.of(
                    ReportWords.obstacle(row.obstacle(), lengths) + (tied ? ", " + say("gap.isTied") : ""),
                    String.format(Locale.ROOT, "%+.1f (%+.1f to %+.1f)", row.cost(), row.low(), row.high()),
                    Integer.toString(row.rounds()),
                    ""));
            bars.add(new Book.Bar(row.cost(), row.low(), row.high()));
        }
        String note = ReportWords.gapNote(gap);
        return part(
                say("paper.gap", report.name(), report.target()),
                List.of(new Line(Role.NOTE, say("paper.gapNote", report.target(), note))),
                new Book.Table(
                        say("paper.gapTable"),
                        List.of("", say("paper.strokesARound"), say("paper.rounds"), ""),
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
                        say("paper.misses"),
                        List.of(new Line(Role.NOTE, say("paper.missesNote"))),
                        new Book.Table(
                                say("paper.misses"),
                                List.of(say("paper.club"), say("paper.missed")),
                                List.of(0.2, 0.8),
                                rows)));
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
                say("paper.causes"),
                report.causes().isEmpty() ? "" : ReportWords.causes(report.causes()),
                new Book.Table(
                        say("paper.causesTable"),
                        Stream.of("holeStroke", "club", "lost", "decision", "execution", "luck", "known")
                                .map(column -> say("paper." + column))
                                .toList(),
                        List.of(0.12, 0.16, 0.09, 0.11, 0.12, 0.09, 0.31),
                        rows));
    }

    private Optional<Book.Page> ordinary() {
        List<List<String>> rows = report.ordinary().stream()
                .map(m -> List.of(ReportWords.ordinaryMiss(m, lengths)))
                .toList();
        return table(
                say("paper.ordinary"),
                say("paper.ordinaryNote"),
                new Book.Table(say("paper.ordinaryTable"), List.of(say("paper.shot")), List.of(1.0), rows));
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
                    say(from == 0 ? "paper.strips" : "paper.stripsMore"),
                    from == 0 ? List.of(new Line(Role.NOTE, say("paper.stripsNote"))) : List.of(),
                    Optional.empty(),
                    Optional.of(new Book.PlayedGround(ground.course(), some, words(some)))));
        }
        return out;
    }

    private static boolean hasHole(Course course, int number) {
        return course.holes().stream().anyMatch(h -> h.number() == number);
    }

    private static String words(List<Book.PlayedHole> holes) {
        return say(
                "paper.stripsPicture",
                String.join("; ", holes.stream().map(Book.PlayedHole::heading).toList()));
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
        String heading = record.score().isPresent()
                ? say("paper.played", record.number(), record.score().getAsInt())
                : say("paper.playedUnscored", record.number());
        return new Book.PlayedHole(hole, tee, heading, spots, record.end() == HoleEnd.HOLED);
    }
}
