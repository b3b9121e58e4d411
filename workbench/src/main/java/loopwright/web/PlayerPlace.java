package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.img;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.li;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;
import static j2html.TagCreator.textarea;
import static j2html.TagCreator.ul;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import loopwright.action.InterviewAnswers;
import loopwright.action.KeepPlayer;
import loopwright.action.KeptList;
import loopwright.action.Shelf;
import loopwright.action.Workroom;
import loopwright.player.Player;

/** A player: what he says, what was measured, and the patterns that follow. */
public final class PlayerPlace implements Place {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,4}(\\.\\d{1,4})?");

    private final Workroom room;
    private final KeepPlayer keeping;

    public PlayerPlace(Workroom room, KeepPlayer keeping) {
        this.room = room;
        this.keeping = keeping;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/player", this::page);
        routes.get(
                "/player/new",
                ctx -> new Page("player", Texts.say("player.new"))
                        .answer(
                                ctx,
                                h1(Texts.say("player.new")),
                                p(Texts.say("player.newMeans")),
                                interview(
                                        "/player/new",
                                        new InterviewAnswers(Map.of()),
                                        Optional.empty(),
                                        Units.of(room))));
        routes.post("/player/new", this::add);
        routes.post("/player/answers", this::change);
        routes.post("/player/list", this::addList);
        routes.post("/player/list/erase", this::eraseList);
        routes.get("/player/patterns.svg", this::patterns);
    }

    private void page(Context ctx) {
        Optional<Shelf.Entry> found = PlanQuery.entry(room.store().players(), ctx.queryParam("player"), "player");
        if (found.isEmpty()) {
            ctx.redirect("/player/new");
            return;
        }
        Shelf.Entry entry = found.get();
        Player player = room.player(entry.id(), entry.version()).player();
        Units units = Units.of(room);
        new Page("player", player.name())
                .with("drop")
                .answer(
                        ctx,
                        h1(player.name()),
                        others(entry),
                        Said.on(ctx),
                        p(Texts.say(
                                "player.what",
                                Texts.say("hand." + player.hand().name()),
                                Words.of("%.0f", player.level()),
                                entry.version())),
                        section(
                                h2(Texts.say("player.patterns")),
                                new BagTable(player, keeping.findResult(entry), units).content(),
                                img().withSrc("/player/patterns.svg?player=" + entry.id() + "&version="
                                                + entry.version())
                                        .withAlt(Texts.say("player.picture", player.name()))
                                        .withClass("picture")
                                        .attr("loading", "lazy")),
                        section(h2(Texts.say("player.lists")), lists(entry), listForm(entry)),
                        section(
                                h2(Texts.say("player.interview")),
                                interview(
                                        "/player/answers", keeping.answersOf(entry.id()), Optional.of(entry), units)));
    }

    private DomContent others(Shelf.Entry now) {
        return nav(
                        each(room.store().players().list(), e -> {
                            var link = a(e.name()).withHref("/player?player=" + e.id());
                            return e.id().equals(now.id()) ? link.attr("aria-current", "true") : link;
                        }),
                        a(Texts.say("player.add")).withHref("/player/new"))
                .withClass("steps")
                .attr("aria-label", Texts.say("data.players"));
    }

    private static DomContent interview(String action, InterviewAnswers now, Optional<Shelf.Entry> seen, Units units) {
        return form(
                        seenFields(seen),
                        div(
                                        line(now, "name"),
                                        choice(now, "hand", List.of("right", "left")),
                                        line(now, "level"),
                                        line(now, "scores"),
                                        length(now, "driver", units),
                                        length(now, "seven", units),
                                        choice(now, "miss", List.of("none", "left", "right")),
                                        line(now, "lost"),
                                        line(now, "bag"),
                                        choice(now, "on", List.of("range", "mat", "course")),
                                        PlanForm.field(
                                                "ask.counts",
                                                textarea(now.get("counts"))
                                                        .withName("counts")
                                                        .withRows("3")))
                                .withClass("fields"),
                        h2(Texts.say("player.habits")),
                        p(Texts.say("player.habitsMean")).withClass("note"),
                        div(
                                        line(now, "teeShort"),
                                        line(now, "teeFour"),
                                        line(now, "teeFive"),
                                        choice(now, "aim", List.of("flag", "middle")),
                                        choice(now, "chip", List.of("ground", "chip", "pitch")),
                                        length(now, "layUp", units))
                                .withClass("fields"),
                        button(Texts.say("player.fit")).withType("submit"))
                .withMethod("post")
                .withAction(action)
                .withClass("sheet");
    }

    /** A length in the reader's unit; what is no number stands as it was typed. */
    private static DomContent length(InterviewAnswers now, String question, Units units) {
        String typed = now.get(question);
        String shown = units.metric() && NUMBER.matcher(typed).matches()
                ? Words.of("%.0f", units.number(Units.YARDS.metres(Double.parseDouble(typed))))
                : typed;
        return label(
                span(Texts.say("ask." + question) + ", " + units.unit()),
                input().withType("text").withName(question).withValue(shown).withMaxlength("400"));
    }

    private static DomContent line(InterviewAnswers now, String question) {
        return PlanForm.field(
                "ask." + question,
                input().withType("text")
                        .withName(question)
                        .withValue(now.get(question))
                        .withMaxlength("400"));
    }

    private static DomContent choice(InterviewAnswers now, String question, List<String> values) {
        return PlanForm.field(
                "ask." + question,
                select(each(
                                values,
                                v -> option(Texts.say("ask." + question + "." + v))
                                        .withValue(v)
                                        .withCondSelected(v.equals(now.get(question)))))
                        .withName(question));
    }

    private DomContent lists(Shelf.Entry entry) {
        List<KeptList> lists = room.store().listLists(entry.id()).stream()
                .filter(l -> l.kind() != KeptList.Kind.DRILLS)
                .toList();
        if (lists.isEmpty()) {
            return p(Texts.say("player.noLists"));
        }
        return ul(each(
                lists,
                l -> li(
                        text(Texts.say(
                                "player.list",
                                l.name(),
                                Texts.say("kind." + l.kind().word()),
                                l.text().lines().count() - 1)),
                        form(
                                        seenFields(Optional.of(entry)),
                                        input().withType("hidden")
                                                .withName("list")
                                                .withValue(l.id()),
                                        button(Texts.say("player.eraseList", l.name()))
                                                .withType("submit")
                                                .withClass("quiet"))
                                .withMethod("post")
                                .withAction("/player/list/erase"))));
    }

    private static DomContent listForm(Shelf.Entry entry) {
        return form(
                        seenFields(Optional.of(entry)),
                        p(Texts.say("player.listMeans")),
                        div(
                                        PlanForm.field(
                                                "player.kind",
                                                select(
                                                                option(Texts.say("kind.shots"))
                                                                        .withValue("SHOTS"),
                                                                option(Texts.say("kind.putts"))
                                                                        .withValue("PUTTS"))
                                                        .withName("kind")),
                                        label(
                                                span(Texts.say("upload.file")),
                                                input().withType("file")
                                                        .withName("file")
                                                        .isRequired()))
                                .withClass("fields"),
                        button(Texts.say("player.addList")).withType("submit"))
                .withMethod("post")
                .withAction("/player/list")
                .withEnctype("multipart/form-data")
                .withClass("sheet drop");
    }

    private static DomContent seenFields(Optional<Shelf.Entry> seen) {
        return seen.<DomContent>map(e -> div(
                        input().withType("hidden").withName("player").withValue(e.id()),
                        input().withType("hidden").withName("seen").withValue(Integer.toString(e.version()))))
                .orElse(text(""));
    }

    private InterviewAnswers typed(Context ctx) {
        Units units = Units.of(room);
        Map<String, String> out = new HashMap<>();
        for (String question : InterviewAnswers.QUESTIONS) {
            String answer = ctx.formParam(question);
            if (answer != null && !answer.isBlank()) {
                out.put(question, InterviewAnswers.LENGTHS.contains(question) ? yards(answer, units) : answer.strip());
            }
        }
        return new InterviewAnswers(out);
    }

    /** A length as answers keep it; what is no number is refused where it is read. */
    private static String yards(String answer, Units units) {
        String typed = answer.strip().replace(',', '.');
        return units.metric() && NUMBER.matcher(typed).matches()
                ? Words.of("%.1f", Units.YARDS.number(units.metres(Double.parseDouble(typed))))
                : answer.strip();
    }

    private void add(Context ctx) {
        Shelf.Document kept = keeping.add(typed(ctx));
        Said.then(ctx, Texts.say("player.added", kept.name()), "/player?player=" + kept.id());
    }

    private static String id(Context ctx) {
        return String.valueOf(ctx.formParam("player"));
    }

    private static int seen(Context ctx) {
        return PlanQuery.whole("seen", String.valueOf(ctx.formParam("seen")));
    }

    private void change(Context ctx) {
        Shelf.Document kept = keeping.change(id(ctx), seen(ctx), typed(ctx), Texts.say("player.noteInterview"));
        Said.then(ctx, Texts.say("player.changed", kept.version()), "/player?player=" + kept.id());
    }

    private void addList(Context ctx) {
        KeptList.Kind kind = "PUTTS".equals(ctx.formParam("kind")) ? KeptList.Kind.PUTTS : KeptList.Kind.SHOTS;
        String name = Uploads.nameOf(ctx, "file");
        Shelf.Document kept = keeping.addList(id(ctx), seen(ctx), kind, name, Uploads.text(ctx, "file"));
        Said.then(ctx, Texts.say("player.changed", kept.version()), "/player?player=" + kept.id());
    }

    private void eraseList(Context ctx) {
        String id = id(ctx);
        room.store().eraseList(id, String.valueOf(ctx.formParam("list")));
        InterviewAnswers answers = keeping.answersOf(id);
        Shelf.Document kept = keeping.change(id, seen(ctx), answers, Texts.say("player.noteErased"));
        Said.then(ctx, Texts.say("player.changed", kept.version()), "/player?player=" + kept.id());
    }

    private void patterns(Context ctx) {
        String id = PlanQuery.text(ctx, "player", "");
        int version = PlanQuery.whole("version", PlanQuery.text(ctx, "version", "1"));
        ctx.contentType("image/svg+xml")
                .result(keeping.patterns(id, version, Units.of(room).lengths()));
    }
}
