package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loopwright.action.DrillCards;
import loopwright.action.DrillLog;
import loopwright.action.Jobs.Job;
import loopwright.action.Jobs.State;
import loopwright.action.PracticeBench;
import loopwright.action.PracticeChoice;
import loopwright.action.PracticePictures.DrillCard;
import loopwright.action.PracticePlan;
import loopwright.action.ReadLengths;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.player.Player;
import loopwright.practice.Drill;

/** Practice: where the hours go, the week, the drills, the log, and whether it works. */
public final class PracticePlace implements Place {
    private final Workroom room;
    private final PracticeBench practice;
    private final Clock clock;

    public PracticePlace(Workroom room, PracticeBench practice, Clock clock) {
        this.room = room;
        this.practice = practice;
        this.clock = clock;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/practice", this::page);
        routes.get("/practice/week", this::week);
        routes.get("/practice/week.pdf", this::print);
        routes.get("/practice/calendar.ics", this::calendar);
        routes.post("/practice/next", this::next);
        routes.get("/practice/drills", this::drills);
        routes.post("/practice/drills", this::takeDrills);
        routes.post("/practice/drills/erase", this::eraseDrills);
        routes.get("/practice/drill.svg", this::picture);
        routes.get("/practice/log", this::log);
        routes.get("/practice/sheet", this::sheet);
        routes.post("/practice/log", this::take);
        routes.get("/practice/review", this::review);
    }

    /** The parts of the place. */
    private enum Part {
        PLAN("/practice"),
        DRILLS("/practice/drills"),
        LOG("/practice/log"),
        REVIEW("/practice/review");

        private final String address;

        Part(String address) {
            this.address = address;
        }
    }

    private static DomContent parts(String player, Part now) {
        return nav(each(Arrays.asList(Part.values()), part -> {
                    var link = a(Texts.say("practice.part." + part)).withHref(part.address + "?player=" + player);
                    return part == now ? link.attr("aria-current", "true") : link;
                }))
                .withClass("steps")
                .attr("aria-label", Texts.say("practice.parts"));
    }

    private void page(Context ctx) {
        Optional<PracticeChoice> choice = PracticeQuery.find(ctx, room);
        if (choice.isPresent() && ctx.queryParam("make") != null) {
            ctx.redirect("/practice?" + choice.get().query());
            return;
        }
        List<DomContent> content = new ArrayList<>();
        content.add(h1(Texts.say("place.practice")));
        if (choice.isEmpty()) {
            content.add(p(Texts.say("plan.nothing")));
        } else {
            content.add(parts(choice.get().round().player().id(), Part.PLAN));
            content.add(Said.on(ctx));
            content.add(new PracticeForm(room, choice.get()).form());
            content.add(ctx.queryParam("hours") == null ? p(Texts.say("practice.start")) : result(choice.get()));
        }
        new Page("practice", Texts.say("place.practice")).with("job").answer(ctx, content.toArray(DomContent[]::new));
    }

    private DomContent result(PracticeChoice choice) {
        Job<PracticePlan> job = job(choice);
        return job.findResult()
                .map(plan -> new PracticePanel(plan).content(choice))
                .orElseGet(() -> JobPlace.waiting(job, Texts.say("practice.working")));
    }

    private Job<PracticePlan> job(PracticeChoice choice) {
        Job<PracticePlan> job = practice.plan(choice);
        if (job.await(JobPlace.AT_ONCE_MILLIS) == State.FAILED) {
            throw job.findFailure().orElseThrow();
        }
        return job;
    }

    private PracticeChoice choice(Context ctx) {
        return PracticeQuery.find(ctx, room).orElseThrow(() -> new UserFault(Texts.say("plan.nothing")));
    }

    private PracticePlan made(Context ctx) {
        return job(choice(ctx)).findResult().orElseThrow(() -> new UserFault(Texts.say("practice.notMade")));
    }

    private void week(Context ctx) {
        PracticeChoice choice = choice(ctx);
        Job<PracticePlan> job = job(choice);
        String title = Texts.say("practice.weekOf", choice.round().player().name());
        new Page("practice", title)
                .with("job")
                .answer(
                        ctx,
                        h1(title),
                        nav(a(Texts.say("practice.back")).withHref("/practice?" + choice.query()))
                                .withClass("steps")
                                .attr("aria-label", Texts.say("practice.parts")),
                        job.findResult()
                                .map(plan -> div(take(choice), nextWeek(choice, new PracticePanel(plan).week(choice))))
                                .orElseGet(() -> div(JobPlace.waiting(job, Texts.say("practice.working")))));
    }

    /** To print, and into a calendar. */
    private DomContent take(PracticeChoice choice) {
        String query = choice.query();
        return form(
                        p(a(Texts.say("practice.print")).withHref("/practice/week.pdf?" + query)),
                        div(
                                        each(
                                                Arrays.asList(query.split("&", -1)),
                                                pair -> input().withType("hidden")
                                                        .withName(pair.substring(0, pair.indexOf('=')))
                                                        .withValue(java.net.URLDecoder.decode(
                                                                pair.substring(pair.indexOf('=') + 1),
                                                                java.nio.charset.StandardCharsets.UTF_8))),
                                        PlanForm.field(
                                                "practice.from",
                                                input().withType("date")
                                                        .withName("from")
                                                        .withValue(LocalDate.now(clock)
                                                                .plusDays(1)
                                                                .toString())),
                                        PlanForm.field(
                                                "practice.at",
                                                input().withType("time")
                                                        .withName("at")
                                                        .withValue("17:00")))
                                .withClass("fields"),
                        button(Texts.say("practice.calendar")).withType("submit"))
                .withMethod("get")
                .withAction("/practice/calendar.ics")
                .withClass("sheet");
    }

    /** The week as a form: what was done is ticked, and one button keeps it and plans the next week from it. */
    private static DomContent nextWeek(PracticeChoice choice, DomContent week) {
        return form(
                        week,
                        p(Texts.say(choice.next().isPresent() ? "practice.nextMeans" : "practice.lastMeans"))
                                .withClass("note"),
                        button(Texts.say(choice.next().isPresent() ? "practice.next" : "practice.last"))
                                .withType("submit"))
                .withMethod("post")
                .withAction("/practice/next?" + choice.query());
    }

    private void next(Context ctx) {
        PracticeChoice choice = choice(ctx);
        String player = choice.round().player().id();
        LocalDate today = LocalDate.now(clock);
        DrillLog.Taken taken = new DrillLog(List.of(), today)
                .takeBlocks(
                        room.store().records(),
                        player,
                        TickedBlock.read(
                                ctx.formParams("done"),
                                choice,
                                room.store().records().listDrills(player),
                                today),
                        clock.instant());
        Said.then(
                ctx,
                Texts.say("practice.ticked", taken.kept(), taken.known()),
                choice.next().map(c -> "/practice?" + c.query()).orElse("/practice/review?player=" + player));
    }

    private void print(Context ctx) {
        byte[] pdf = practice.week(made(ctx));
        ctx.contentType("application/pdf")
                .header("Content-Disposition", "attachment; filename=\"practice-week.pdf\"")
                .result(pdf);
    }

    private void calendar(Context ctx) {
        String from =
                PlanQuery.text(ctx, "from", LocalDate.now(clock).plusDays(1).toString());
        String at = PlanQuery.text(ctx, "at", "17:00");
        byte[] ics;
        try {
            ics = practice.calendar(made(ctx), LocalDate.parse(from), LocalTime.parse(at));
        } catch (DateTimeParseException e) {
            throw new UserFault(Texts.say("practice.noTime", from, at), e);
        }
        ctx.contentType("text/calendar; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"practice.ics\"")
                .result(ics);
    }

    private Optional<Shelf.Entry> findPlayer(Context ctx) {
        return PlanQuery.entry(room.store().players(), ctx.queryParam("player"), "player");
    }

    /** The drills of a player with what to expect, in the reader's units. */
    private List<DrillCard> cards(Shelf.Entry player) {
        ReadLengths lengths = Units.of(room).sentences();
        return practice.cards(player).stream().map(c -> c.told(lengths)).toList();
    }

    private Shelf.Entry player(Context ctx) {
        return findPlayer(ctx).orElseThrow(() -> new UserFault(Texts.say("today.nobody")));
    }

    private void drills(Context ctx) {
        Shelf.Entry entry = player(ctx);
        Player player = room.player(entry.id(), entry.version()).player();
        DrillPages pages = new DrillPages(entry);
        String title = Texts.say("drill.title", entry.name());
        new Page("practice", title)
                .answer(
                        ctx,
                        h1(title),
                        parts(entry.id(), Part.DRILLS),
                        Said.on(ctx),
                        p(Texts.say("drill.means")),
                        div(each(cards(entry), c -> pages.drill(c, player))).withClass("drills"),
                        pages.own(practice.own().findFile(entry.id())));
    }

    private void takeDrills(Context ctx) {
        String player = room.store()
                .players()
                .get(String.valueOf(ctx.formParam("player")))
                .id();
        int count = practice.own().keep(player, Uploads.nameOf(ctx, "file"), Uploads.text(ctx, "file"));
        Said.then(ctx, Texts.say("drill.ownTaken", count), "/practice/drills?player=" + player);
    }

    private void eraseDrills(Context ctx) {
        String player = room.store()
                .players()
                .get(String.valueOf(ctx.formParam("player")))
                .id();
        practice.own().erase(player);
        Said.then(ctx, Texts.say("drill.ownErased"), "/practice/drills?player=" + player);
    }

    private void picture(Context ctx) {
        Shelf.Entry entry = player(ctx);
        String name = DrillCards.get(practice.drills(entry), PlanQuery.text(ctx, "drill", ""))
                .name();
        DrillCard card = cards(entry).stream()
                .filter(c -> c.drill().name().equals(name))
                .findFirst()
                .orElseThrow();
        ctx.contentType("image/svg+xml").result(practice.picture(card));
    }

    private void log(Context ctx) {
        Shelf.Entry entry = player(ctx);
        List<Drill> drills = practice.drills(entry);
        String drill = PlanQuery.text(ctx, "drill", drills.get(0).name());
        DrillCards.get(drills, drill);
        DrillPages pages = new DrillPages(entry);
        String title = Texts.say("drillsheet.title", entry.name());
        new Page("practice", title)
                .with("sheet")
                .with("drill")
                .with("drop")
                .withStyle("entry")
                .answer(
                        ctx,
                        h1(title),
                        parts(entry.id(), Part.LOG),
                        Said.on(ctx),
                        p(Texts.say("sheet.notKept"))
                                .withId("lost")
                                .withClass("beware")
                                .attr("hidden", ""),
                        div().withId("entry")
                                .withClass("entry")
                                .attr("data-sheet", new DrillSheet(entry, cards(entry)).page(drill))
                                .attr("data-texts", DrillSheet.texts()),
                        h2(Texts.say("drill.played")),
                        pages.played(room.store().records().listDrills(entry.id())),
                        pages.sheet());
    }

    private void sheet(Context ctx) {
        Shelf.Entry entry = player(ctx);
        ctx.contentType("text/html; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"drill-sheet.html\"")
                .result(new DrillSheet(entry, cards(entry)).file());
    }

    /** What the log or a sheet gave: all of it or nothing, and every playing once. */
    private void take(Context ctx) {
        DrillSheet.Written written = DrillSheet.read(Uploads.nameOf(ctx, "file"), Uploads.text(ctx, "file"));
        String chosen = Optional.ofNullable(ctx.formParam("player")).orElse(written.player());
        if (!chosen.equals(written.player())) {
            throw new UserFault(Texts.say("rounds.otherPlayer", Uploads.nameOf(ctx, "file")));
        }
        Shelf.Entry entry = room.store().players().get(chosen).entry();
        String player = entry.id();
        // a phone may be a day ahead of this clock
        DrillLog log = new DrillLog(practice.drills(entry), LocalDate.now(clock).plusDays(1));
        DrillLog.Taken taken = log.take(room.store().records(), player, written.playings(), clock.instant());
        Said.then(ctx, Texts.say("drill.taken", taken.kept(), taken.known()), "/practice/log?player=" + player);
    }

    private void review(Context ctx) {
        Shelf.Entry entry = player(ctx);
        String title = Texts.say("working.title", entry.name());
        new Page("practice", title)
                .answer(
                        ctx,
                        h1(title),
                        parts(entry.id(), Part.REVIEW),
                        Said.on(ctx),
                        p(Texts.say("working.lead")),
                        new DrillPages(entry).review(practice.review(entry)));
    }
}
