package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import j2html.tags.DomContent;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.action.Intake;
import loopwright.action.Jobs.Job;
import loopwright.action.KeepRounds;
import loopwright.action.KeptLesson;
import loopwright.action.PlayerReport;
import loopwright.action.PlayerReports;
import loopwright.action.Shelf;
import loopwright.action.TakeRounds;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.course.Course;
import loopwright.course.TeeSet;
import loopwright.scoring.RoundReview;
import loopwright.scoring.StrokesBaseline;
import loopwright.web.RoundSheet.Tier;

/** What a player has done and agreed: his page, rounds to write down, take in and look back on, lessons, his file. */
public final class RoundsPlace implements Place {
    /** What is known already is worked out in less; a page does not wait longer for it. */
    private static final long SOON_MILLIS = 1_000;

    private final Workroom room;
    private final KeepRounds keeping;
    private final TakeRounds taking;
    private final PlayerReports reports;
    private final StrokesBaseline baseline;
    private final Clock clock;

    public RoundsPlace(
            Workroom room,
            KeepRounds keeping,
            TakeRounds taking,
            PlayerReports reports,
            StrokesBaseline baseline,
            Clock clock) {
        this.room = room;
        this.keeping = keeping;
        this.taking = taking;
        this.reports = reports;
        this.baseline = baseline;
        this.clock = clock;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/rounds", this::page);
        routes.get("/rounds/review", this::review);
        routes.get("/rounds/new", this::write);
        routes.get("/rounds/sheet", this::sheet);
        routes.post("/rounds/import", this::take);
        routes.post("/rounds/erase", this::erase);
        routes.post("/rounds/lesson", this::lesson);
        routes.post("/rounds/lesson/done", this::lessonDone);
        routes.post("/rounds/file", this::file);
    }

    private Units units() {
        return Units.of(room);
    }

    private static boolean isCoach(Context ctx) {
        return Gate.account(ctx).map(a -> a.role().isCoach()).orElse(true);
    }

    private void page(Context ctx) {
        Optional<Shelf.Entry> found = PlanQuery.entry(room.store().players(), ctx.queryParam("player"), "player");
        if (found.isEmpty()) {
            new Page("rounds", Texts.say("place.rounds"))
                    .answer(ctx, h1(Texts.say("place.rounds")), p(Texts.say("today.nobody")));
            return;
        }
        Shelf.Entry player = found.get();
        List<DomContent> content = new ArrayList<>();
        content.add(h1(player.name()));
        if (room.store().players().list().size() > 1) {
            content.add(others(player));
        }
        content.add(Said.on(ctx));
        content.addAll(new PlayerRecordsPage(
                        player,
                        room.store().records(),
                        keeping.rounds(player.id()),
                        baseline,
                        units(),
                        LocalDate.now(clock),
                        isCoach(ctx),
                        newest(player))
                .content(room.store().courses().list()));
        new Page("rounds", player.name()).with("drop").answer(ctx, content.toArray(DomContent[]::new));
    }

    /** What the newest round tells at once; nothing before there is a round and a score to reach. */
    private Optional<ReportPanel> newest(Shelf.Entry player) {
        OptionalInt target = reports.target(player, OptionalInt.empty());
        List<KeepRounds.Kept> rounds = keeping.rounds(player.id());
        if (target.isEmpty() || rounds.isEmpty()) {
            return Optional.empty();
        }
        String round = rounds.get(rounds.size() - 1).entry().id();
        Job<PlayerReport> job = reports.atOnce(player, round, target.getAsInt());
        job.await(SOON_MILLIS);
        return job.findResult().map(r -> new ReportPanel(r, units()));
    }

    private DomContent others(Shelf.Entry now) {
        return nav(each(room.store().players().list(), e -> {
                    var link = a(e.name()).withHref("/rounds?player=" + e.id());
                    return e.id().equals(now.id()) ? link.attr("aria-current", "true") : link;
                }))
                .withClass("steps")
                .attr("aria-label", Texts.say("data.players"));
    }

    private Shelf.Entry player(Context ctx) {
        return PlanQuery.entry(room.store().players(), ctx.queryParam("player"), "player")
                .orElseThrow(() -> new UserFault(Texts.say("today.nobody")));
    }

    private void review(Context ctx) {
        Shelf.Entry player = player(ctx);
        KeepRounds.Kept kept = keeping.round(player.id(), PlanQuery.text(ctx, "round", ""));
        var entry = kept.entry();
        String title = Texts.say("review.title", player.name(), entry.day());
        String score =
                entry.score().isPresent() ? Integer.toString(entry.score().getAsInt()) : Texts.say("review.noScore");
        Optional<Job<PlayerReport>> job = job(ctx, player, entry.id());
        Optional<ReportPanel> report = job.flatMap(Job::findResult).map(r -> new ReportPanel(r, units()));
        List<RoundReview> others = keeping.rounds(player.id()).stream()
                .filter(k -> !k.entry().id().equals(entry.id())
                        && !k.record().team()
                        && !k.entry().lesson())
                .map(k -> RoundReview.of(k.record(), baseline))
                .filter(r -> !r.holes().isEmpty())
                .toList();
        new Page("rounds", title)
                .with("job")
                .answer(
                        ctx,
                        h1(title),
                        nav(a(Texts.say("review.back", player.name())).withHref("/rounds?player=" + player.id()))
                                .withClass("steps")
                                .attr("aria-label", Texts.say("data.players")),
                        p(Texts.say("review.what", entry.course(), entry.tees(), entry.holes(), score))
                                .withClass("lead"),
                        new ReviewPage(RoundReview.of(kept.record(), baseline), others, units())
                                .content(opening(ctx, player, job, report), report));
    }

    /** The report on a round, under way or made; none while nobody has said what score is to be reached. */
    private Optional<Job<PlayerReport>> job(Context ctx, Shelf.Entry player, String round) {
        String typed = PlanQuery.text(ctx, "target", "");
        OptionalInt asked = typed.isEmpty() ? OptionalInt.empty() : OptionalInt.of(PlanQuery.whole("target", typed));
        OptionalInt target = reports.target(player, asked);
        if (target.isEmpty()) {
            return Optional.empty();
        }
        Job<PlayerReport> job = reports.whole(player, round, target.getAsInt());
        job.await(JobPlace.AT_ONCE_MILLIS);
        return Optional.of(job);
    }

    /** The three sentences; or how far they are, or what is missing for them. */
    private static DomContent opening(
            Context ctx, Shelf.Entry player, Optional<Job<PlayerReport>> job, Optional<ReportPanel> report) {
        if (job.isEmpty()) {
            return RecordForms.target(player.id(), PlanQuery.text(ctx, "round", ""));
        }
        return job.get()
                .findFailure()
                .<DomContent>map(trouble -> {
                    if (trouble instanceof UserFault) {
                        return p(trouble.getMessage()).withClass("beware");
                    }
                    throw trouble;
                })
                .or(() -> report.map(ReportPanel::opening))
                .orElseGet(() -> JobPlace.waiting(job.get(), Texts.say("report.working")));
    }

    private RoundSheet asked(Context ctx, Shelf.Entry course) {
        Course map = room.course(course.id(), course.version());
        TeeSet tees = PlanQuery.tees(map, PlanQuery.text(ctx, "tees", "middle"));
        String tier = PlanQuery.text(ctx, "tier", "b").toUpperCase(Locale.ROOT);
        if (!tier.matches("[ABCD]")) {
            throw new UserFault(Texts.say("rounds.noTier"));
        }
        return new RoundSheet(
                player(ctx),
                map,
                tees,
                Tier.valueOf(tier),
                PlanQuery.text(ctx, "lesson", "").equals("yes"),
                units());
    }

    private Shelf.Entry course(Context ctx) {
        return PlanQuery.entry(room.store().courses(), ctx.queryParam("course"), "course")
                .orElseThrow(() -> new UserFault(Texts.say("course.none")));
    }

    private void write(Context ctx) {
        Shelf.Entry course = course(ctx);
        RoundSheet sheet = asked(ctx, course);
        new Page("rounds", Texts.say("rounds.write"))
                .with("sheet")
                .with("entry")
                .withStyle("entry")
                .answer(
                        ctx,
                        h1(Texts.say(
                                "sheet.title",
                                sheet.course().name(),
                                sheet.tees().name(),
                                sheet.player().name())),
                        p(Texts.say("sheet.notKept"))
                                .withId("lost")
                                .withClass("beware")
                                .attr("hidden", ""),
                        div().withId("entry")
                                .withClass("entry")
                                .attr("data-sheet", sheet.page(course.id()))
                                .attr("data-texts", RoundSheet.texts()));
    }

    private void sheet(Context ctx) {
        RoundSheet sheet = asked(ctx, course(ctx));
        if (sheet.tier() == Tier.C || sheet.tier() == Tier.D) {
            throw new UserFault(Texts.say("rounds.sheetTier"));
        }
        ctx.contentType("text/html; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"round-sheet.html\"")
                .result(sheet.file());
    }

    private void take(Context ctx) {
        UploadedFile file = ctx.uploadedFile("file");
        String text = Uploads.text(ctx, "file");
        String label = file == null ? "" : Uploads.name(file);
        Optional<String> chosen = Optional.ofNullable(ctx.formParam("player")).filter(p -> !p.isEmpty());
        Optional<String> written = TakeRounds.playerOf(text);
        if (chosen.isPresent() && written.isPresent() && !chosen.equals(written)) {
            throw new UserFault(Texts.say("rounds.otherPlayer", label));
        }
        String player = chosen.or(() -> written).orElseThrow(() -> new UserFault(Texts.say("rounds.noPlayer", label)));
        String id = room.store().players().get(player).id();
        TakeRounds.Taken taken = taking.take(id, label, text, "yes".equals(ctx.formParam("replace")));
        Said.then(ctx, sentence(taken), "/rounds?player=" + id);
    }

    private static String sentence(TakeRounds.Taken taken) {
        List<String> out = new ArrayList<>();
        if (!taken.kept().isEmpty()) {
            out.add(Texts.say("rounds.taken", taken.kept().size()));
        }
        if (taken.changed() > 0) {
            out.add(Texts.say("rounds.changed", taken.changed()));
        }
        if (taken.known() > 0) {
            out.add(Texts.say("rounds.known", taken.known()));
        }
        if (!taken.beside().isEmpty()) {
            out.add(Texts.say("rounds.beside", String.join(", ", taken.beside())));
        }
        return String.join(" ", out);
    }

    private static String param(Context ctx, String name) {
        return Optional.ofNullable(ctx.formParam(name)).orElse("").strip();
    }

    private void erase(Context ctx) {
        String player = param(ctx, "player");
        room.store().records().eraseRound(player, param(ctx, "round"));
        Said.then(ctx, Texts.say("rounds.erased"), "/rounds?player=" + player);
    }

    private static Optional<LocalDate> day(String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            throw new UserFault(Texts.say("lesson.noDay", text), e);
        }
    }

    private void lesson(Context ctx) {
        String player = room.store().players().get(param(ctx, "player")).id();
        KeptLesson lesson = new KeptLesson(
                "",
                day(param(ctx, "day")).orElseGet(() -> LocalDate.now(clock)),
                param(ctx, "notes"),
                param(ctx, "agreed"),
                param(ctx, "homework"),
                day(param(ctx, "due")),
                false,
                Instant.EPOCH);
        room.store().records().addLesson(player, lesson);
        Said.then(ctx, Texts.say("lesson.kept"), "/rounds?player=" + player);
    }

    private void lessonDone(Context ctx) {
        String player = param(ctx, "player");
        KeptLesson lesson = room.store().records().listLessons(player).stream()
                .filter(l -> l.id().equals(param(ctx, "lesson")))
                .findFirst()
                .orElseThrow(() -> new UserFault(Texts.say("lesson.gone")));
        room.store().records().changeLesson(player, lesson.whenDone());
        Said.then(ctx, Texts.say("lesson.kept"), "/rounds?player=" + player);
    }

    private void file(Context ctx) {
        String player = room.store().players().get(param(ctx, "player")).id();
        Map<String, String> answers = new HashMap<>();
        Intake.ITEMS.forEach(item -> answers.put(item, param(ctx, item)));
        room.store().records().setIntake(player, new Intake(answers).answers());
        Said.then(ctx, Texts.say("intake.kept"), "/rounds?player=" + player);
    }
}
