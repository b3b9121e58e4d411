package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.section;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import loopwright.action.Intake;
import loopwright.action.KeepRounds;
import loopwright.action.KeptForecast;
import loopwright.action.KeptLesson;
import loopwright.action.KeptRound;
import loopwright.action.PlayerRecords;
import loopwright.action.Shelf;
import loopwright.action.Standing;
import loopwright.scoring.RoundReview;
import loopwright.scoring.StrokesBaseline;

/** One player: scores against the target and the forecasts, what stands between, lessons, and everything to add. */
final class PlayerRecordsPage {
    private static final int RECENT = 5;
    private static final int REVIEWED = 20;
    /** Of shorter rounds an average over 18 holes says nothing. */
    private static final int LEAST_HOLES = 9;

    private static final int LESSONS_SHOWN = 5;
    private static final int ROUND_HOLES = 18;

    private final Shelf.Entry player;
    private final PlayerRecords records;
    private final List<KeepRounds.Kept> rounds;
    private final StrokesBaseline baseline;
    private final Units units;
    private final LocalDate today;
    private final boolean coach;
    private final Optional<ReportPanel> report;

    /** {@code report} is what the newest round tells at once, if it tells anything. */
    PlayerRecordsPage(
            Shelf.Entry player,
            PlayerRecords records,
            List<KeepRounds.Kept> rounds,
            StrokesBaseline baseline,
            Units units,
            LocalDate today,
            boolean coach,
            Optional<ReportPanel> report) {
        this.player = player;
        this.records = records;
        this.rounds = rounds;
        this.baseline = baseline;
        this.units = units;
        this.today = today;
        this.coach = coach;
        this.report = report;
    }

    List<DomContent> content(List<Shelf.Entry> courses) {
        Intake intake = new Intake(records.listIntake(player.id()));
        List<KeptForecast> forecasts = records.listForecasts(player.id());
        List<DomContent> out = new ArrayList<>();
        out.add(lead(intake, forecasts));
        out.add(div(
                        div(
                                scores(intake, forecasts),
                                section(h2(Texts.say("lesson.title")), lessons()),
                                report.map(ReportPanel::misses).orElse(text(""))),
                        between(intake))
                .withClass("beside"));
        out.add(section(h2(Texts.say("rounds.list")), list()));
        out.add(section(
                h2(Texts.say("rounds.add")),
                RecordForms.write(player.id(), courses, false),
                details(
                        summary(Texts.say("rounds.sheet")),
                        p(Texts.say("rounds.sheetMeans")),
                        RecordForms.write(player.id(), courses, true)),
                details(summary(Texts.say("rounds.take")), RecordForms.take(player.id(), List.of()))));
        if (coach) {
            out.add(details(summary(Texts.say("lesson.play")), RecordForms.playLesson(player.id(), courses)));
            out.add(details(summary(Texts.say("lesson.add")), RecordForms.lesson(player.id(), today.toString())));
            out.add(section(
                    h2(Texts.say("intake.title")),
                    details(summary(Texts.say("intake.open")), RecordForms.intake(player.id(), intake.answers()))));
        }
        return out;
    }

    private DomContent lead(Intake intake, List<KeptForecast> forecasts) {
        List<String> words = new ArrayList<>();
        intake.goalScore()
                .ifPresent(g -> words.add(Texts.say(
                        "rounds.goal",
                        g,
                        intake.goalDate()
                                .map(d -> " " + Texts.say("rounds.by", d))
                                .orElse(""))));
        Stream.concat(intake.plays().stream(), forecasts.stream().map(KeptForecast::day))
                .filter(d -> !d.isBefore(today))
                .min(Comparator.naturalOrder())
                .ifPresent(d -> words.add(Texts.say("rounds.next", d)));
        String standing = Standing.of(records, player.id()).sentence();
        words.add(standing.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + standing.substring(1) + ".");
        return p(
                        text(String.join(" ", words) + " "),
                        a(Texts.say("rounds.patterns")).withHref("/player?player=" + player.id()))
                .withClass("lead");
    }

    private DomContent scores(Intake intake, List<KeptForecast> forecasts) {
        ScoreHistory history =
                new ScoreHistory(rounds.stream().map(KeepRounds.Kept::entry).toList(), forecasts, intake.goalScore());
        return section(
                h2(Texts.say("history.title")),
                history.isEmpty() ? p(Texts.say("history.none")) : rawHtml(history.svg()),
                history.isEmpty() ? text("") : p(Texts.say("history.means")).withClass("note"));
    }

    private DomContent between(Intake intake) {
        List<RoundReview> reviews = reviews();
        GainsTable gains = GainsTable.of(reviews);
        List<DomContent> out = new ArrayList<>();
        OptionalDouble recent = recentScore();
        OptionalInt goal = intake.goalScore();
        if (recent.isPresent() && goal.isPresent()) {
            double gap = recent.getAsDouble() - goal.getAsInt();
            out.add(p(
                    text(Texts.say("between.recent", RECENT, Words.of("%.1f", recent.getAsDouble())) + " "),
                    strong(gap > 0 ? Texts.say("between.gap", Words.of("%.1f", gap)) : Texts.say("between.reached"))));
        }
        Optional<DomContent> gap = report.flatMap(ReportPanel::gap);
        gap.ifPresent(out::add);
        if (rounds.isEmpty()) {
            out.add(p(Texts.say("between.none")));
        } else if (gap.isEmpty()) {
            KeptRound newest = rounds.get(rounds.size() - 1).entry();
            out.add(p(
                    text(Texts.say("between.review") + " "),
                    a(Texts.say("between.newest", newest.day())).withHref(reviewOf(newest))));
        }
        if (!gains.isEmpty()) {
            out.add(
                    gap.isPresent()
                            ? text("")
                            : p(Texts.say("between.means", gains.dearest())).withClass("note"));
            out.add(
                    gap.isPresent()
                            ? details(summary(Texts.say("between.byPart")), gains.content(units))
                            : gains.content(units));
        }
        return section(h2(Texts.say("between.title")), div(out.toArray(DomContent[]::new)));
    }

    /** The newest rounds of which something can be measured. */
    private List<RoundReview> reviews() {
        return rounds.subList(Math.max(0, rounds.size() - REVIEWED), rounds.size()).stream()
                .filter(k -> !k.record().team())
                .map(k -> RoundReview.of(k.record(), baseline))
                .filter(r -> r.holes().size() >= LEAST_HOLES)
                .toList();
    }

    /** Mean of the last scores over 18 holes. */
    private OptionalDouble recentScore() {
        List<KeptRound> full = rounds.stream()
                .map(KeepRounds.Kept::entry)
                .filter(r ->
                        r.holes() == ROUND_HOLES && !r.lesson() && r.score().isPresent())
                .toList();
        return full.subList(Math.max(0, full.size() - RECENT), full.size()).stream()
                .mapToInt(r -> r.score().getAsInt())
                .average();
    }

    private DomContent list() {
        if (rounds.isEmpty()) {
            return p(Texts.say("rounds.none"));
        }
        List<KeptRound> newest =
                new ArrayList<>(rounds.stream().map(KeepRounds.Kept::entry).toList());
        java.util.Collections.reverse(newest);
        return div(table(
                        caption(Texts.say("rounds.listMeans")),
                        ColumnHeads.withWords(
                                List.of("plan.course"),
                                "rounds.day",
                                "plan.course",
                                "hole.steps",
                                "rounds.score",
                                "rounds.tier",
                                "rounds.change"),
                        tbody(each(newest, this::row))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("rounds.list"));
    }

    private String reviewOf(KeptRound r) {
        return "/rounds/review?player=" + player.id() + "&round=" + r.id();
    }

    private DomContent row(KeptRound r) {
        String score = r.score().isPresent() ? Integer.toString(r.score().getAsInt()) : "-";
        return tr(
                th(a(r.day().toString()).withHref(reviewOf(r))).attr("scope", "row"),
                td(r.course() + (r.tees().isEmpty() ? "" : ", " + r.tees())).withClass("words"),
                td(Integer.toString(r.holes())),
                td(score + (r.lesson() ? " " + Texts.say("rounds.isLesson") : "")),
                td(Texts.say("record." + r.tier())),
                td(coach ? erase(r) : text("")));
    }

    private DomContent erase(KeptRound r) {
        return form(
                        input().withType("hidden").withName("player").withValue(player.id()),
                        input().withType("hidden").withName("round").withValue(r.id()),
                        button(Texts.say("rounds.erase"))
                                .withType("submit")
                                .withClass("quiet small")
                                .attr("aria-label", Texts.say("rounds.eraseOne", r.day())))
                .withMethod("post")
                .withAction("/rounds/erase");
    }

    private DomContent lessons() {
        List<KeptLesson> all = new ArrayList<>(records.listLessons(player.id()));
        java.util.Collections.reverse(all);
        if (all.isEmpty()) {
            return p(Texts.say("lesson.none"));
        }
        return ul(each(all.stream().limit(LESSONS_SHOWN).toList(), l -> li(lesson(l))))
                .withClass("list");
    }

    private DomContent lesson(KeptLesson l) {
        List<DomContent> out = new ArrayList<>();
        out.add(strong(l.day().toString()));
        out.add(text(" "
                + String.join(
                        " ",
                        Stream.of(l.notes(), l.agreed())
                                .filter(s -> !s.isBlank())
                                .toList())));
        if (!l.homework().isEmpty()) {
            out.add(p(Texts.say(
                    "lesson.work",
                    l.homework(),
                    l.due().map(d -> " " + Texts.say("rounds.by", d)).orElse(""),
                    Texts.say(l.done() ? "lesson.isDone" : "lesson.isOpen"))));
        }
        if (coach && !l.homework().isEmpty() && !l.done()) {
            out.add(form(
                            input().withType("hidden").withName("player").withValue(player.id()),
                            input().withType("hidden").withName("lesson").withValue(l.id()),
                            button(Texts.say("lesson.done", l.homework()))
                                    .withType("submit")
                                    .withClass("quiet"))
                    .withMethod("post")
                    .withAction("/rounds/lesson/done"));
        }
        return div(out.toArray(DomContent[]::new));
    }
}
