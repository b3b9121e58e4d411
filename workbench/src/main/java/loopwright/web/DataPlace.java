package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.li;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loopwright.action.BenchStore;
import loopwright.action.BenchStore.Selection;
import loopwright.action.CarryStore;
import loopwright.action.CourseChoice;
import loopwright.action.KeptPlan;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;

/** What is kept: carried in and out, read in which units, erased; and what the numbers were checked against. */
public final class DataPlace implements Place {
    private static final int PLANS_SHOWN = 10;

    private final Workroom room;
    private final CarryStore carry;

    public DataPlace(Workroom room, CarryStore carry) {
        this.room = room;
        this.carry = carry;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/data", this::page);
        routes.get("/data/ledger", LedgerPage::answer);
        routes.get("/data/export", this::export);
        routes.post("/data/import", this::take);
        routes.post("/data/restore", this::restore);
        routes.post("/data/units", this::units);
        routes.post("/data/erase", this::erase);
    }

    private void page(Context ctx) {
        BenchStore store = room.store();
        new Page("data", Texts.say("data.title"))
                .with("drop")
                .answer(
                        ctx,
                        h1(Texts.say("data.title")),
                        Said.on(ctx),
                        p(Texts.say("data.where", store.where())).withClass("note"),
                        section(
                                h2(Texts.say("data.kept")),
                                wide("data.players", kept("player")),
                                wide("data.courses", kept("course")),
                                wide("data.plans", plans())),
                        section(h2(Texts.say("data.import")), importForm()),
                        section(
                                h2(Texts.say("data.backup")),
                                p(Texts.say("data.backupMeans")),
                                p(a(Texts.say("data.backupNow"))
                                        .withHref("/data/export?all=1")
                                        .withClass("button")),
                                restoreForm()),
                        section(h2(Texts.say("data.unitsTitle")), UnitsForm.form(store.listPreferences(), "/data")),
                        section(
                                h2(Texts.say("data.checks")),
                                p(a(Texts.say("data.ledger")).withHref("/data/ledger"))),
                        section(
                                h2(Texts.say("data.cautions")),
                                ul(each(List.of(1, 2, 3, 4, 5), n -> li(Texts.say("caution." + n))))),
                        section(h2(Texts.say("data.erase")), p(Texts.say("data.eraseMeans")), eraseForm()));
    }

    /** A table that scrolls by itself where the screen is narrow. */
    private static DomContent wide(String key, DomContent table) {
        return div(table)
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say(key));
    }

    private Shelf shelf(String kind) {
        return kind.equals("player") ? room.store().players() : room.store().courses();
    }

    private DomContent kept(String kind) {
        return table(
                caption(Texts.say("data." + kind + "s")),
                thead(tr(
                        th(Texts.say("data.name")).attr("scope", "col"),
                        th(Texts.say("data.version")).attr("scope", "col"),
                        th(Texts.say("data.note")).attr("scope", "col").withClass("words"),
                        th(Texts.say("data.export")).attr("scope", "col"))),
                tbody(each(
                        shelf(kind).list(),
                        e -> tr(
                                th(a(e.name()).withHref("/" + kind + "?" + kind + "=" + e.id()))
                                        .attr("scope", "row"),
                                td(Integer.toString(e.version())),
                                td(e.note()).withClass("words"),
                                td(a(Texts.say("data.exportOne", e.name()))
                                        .withHref("/data/export?" + kind + "=" + e.id()))))));
    }

    private DomContent plans() {
        List<KeptPlan> plans =
                room.store().listPlans().stream().limit(PLANS_SHOWN).toList();
        return table(
                caption(Texts.say("data.plans")),
                ColumnHeads.of("data.plan", "data.mean", "data.chance", "data.seed", "data.engine"),
                tbody(each(
                        plans,
                        k -> tr(
                                th(a(k.inputs().replace('&', ' '))
                                                .withHref("/plan?player=" + k.player() + "&course=" + k.course() + "&"
                                                        + k.inputs()))
                                        .attr("scope", "row"),
                                td(Words.of("%.1f", k.scoreMean())),
                                td(Words.percent(k.targetChance())),
                                td(Long.toString(k.seed())),
                                td(k.engine())))));
    }

    private static DomContent importForm() {
        return form(
                        p(Texts.say("data.importMeans")),
                        label(
                                span(Texts.say("upload.file")),
                                input().withType("file").withName("file").isRequired()),
                        PlanForm.field("data.which", input().withType("text").withName("which")),
                        label(
                                        input().withType("checkbox")
                                                .withName("replace")
                                                .withValue("yes"),
                                        span(Texts.say("data.replace")))
                                .withClass("tick"),
                        button(Texts.say("data.take")).withType("submit"))
                .withMethod("post")
                .withAction("/data/import")
                .withEnctype("multipart/form-data")
                .withClass("sheet drop");
    }

    private static DomContent restoreForm() {
        return form(
                        label(
                                span(Texts.say("data.restoreFile")),
                                input().withType("file").withName("file").isRequired()),
                        sure("data.restoreSure"),
                        button(Texts.say("data.restore")).withType("submit").withClass("grave"))
                .withMethod("post")
                .withAction("/data/restore")
                .withEnctype("multipart/form-data")
                .withClass("sheet");
    }

    private DomContent eraseForm() {
        return form(
                        PlanForm.field(
                                "data.eraseWhat",
                                select(
                                                each(
                                                        shelf("player").list(),
                                                        e -> option(Texts.say(
                                                                        "data.eraseOne",
                                                                        Texts.say("plan.player"),
                                                                        e.name()))
                                                                .withValue("player:" + e.id())),
                                                each(
                                                        shelf("course").list(),
                                                        e -> option(Texts.say(
                                                                        "data.eraseOne",
                                                                        Texts.say("plan.course"),
                                                                        e.name()))
                                                                .withValue("course:" + e.id())),
                                                option(Texts.say("data.eraseAll"))
                                                        .withValue("all:"))
                                        .withName("what")),
                        sure("data.eraseSure"),
                        button(Texts.say("data.erase")).withType("submit").withClass("grave"))
                .withMethod("post")
                .withAction("/data/erase")
                .withClass("sheet");
    }

    private static DomContent sure(String key) {
        return label(
                        input().withType("checkbox")
                                .withName("sure")
                                .withValue("yes")
                                .isRequired(),
                        span(Texts.say(key)))
                .withClass("tick");
    }

    private void export(Context ctx) {
        String player = ctx.queryParam("player");
        String course = ctx.queryParam("course");
        Selection what = player != null
                ? Selection.player(shelf("player").get(player).id())
                : course != null ? Selection.course(shelf("course").get(course).id()) : Selection.ALL;
        String name = player != null ? "player" : course != null ? "course" : "bench";
        ctx.contentType("application/zip").header("Content-Disposition", "attachment; filename=\"" + name + ".zip\"");
        try {
            room.store().export(what, ctx.outputStream());
        } catch (UncheckedIOException e) {
            // the browser went away in the middle; there is nobody left to tell
            ctx.status(499);
        }
    }

    private void take(Context ctx) {
        boolean replace = "yes".equals(ctx.formParam("replace"));
        String which = ctx.formParam("which");
        CourseChoice choice = which == null || which.isBlank() ? CourseChoice.ONLY : CourseChoice.named(which.strip());
        String sentence =
                Uploads.with(ctx, room, "file", (file, name) -> carry.importFile(file, name, choice, replace));
        Said.then(ctx, sentence, "/data");
    }

    private void restore(Context ctx) {
        requireSure(ctx);
        UploadedFile file = ctx.uploadedFile("file");
        if (file == null || file.size() == 0) {
            throw new UserFault(Texts.say("upload.none"));
        }
        try (InputStream in = file.content()) {
            room.store().restore(in, Uploads.name(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Said.then(ctx, Texts.say("data.restored"), "/data");
    }

    private void units(Context ctx) {
        Map<String, String> chosen = new LinkedHashMap<>();
        Units.CHOICES.forEach((name, units) -> {
            String unit = ctx.formParam(name);
            if (unit != null) {
                if (!units.contains(unit)) {
                    throw new UserFault(Texts.say("data.unitsUnknown", unit, String.join(", ", units)));
                }
                chosen.put(name, unit);
            }
        });
        chosen.forEach(room.store()::setPreference);
        List<String> words = chosen.values().stream()
                .map(u -> Texts.say("unit." + u))
                .distinct()
                .toList();
        String back = "/account".equals(ctx.formParam("back")) ? "/account" : "/data";
        Said.then(ctx, Texts.say("data.unitsSet", String.join(", ", words)), back);
    }

    private void erase(Context ctx) {
        requireSure(ctx);
        String what = String.valueOf(ctx.formParam("what"));
        String id = what.substring(what.indexOf(':') + 1);
        if (what.startsWith("player:")) {
            room.store().players().erase(shelf("player").get(id).id());
        } else if (what.startsWith("course:")) {
            room.store().courses().erase(shelf("course").get(id).id());
        } else if (what.equals("all:")) {
            room.store().eraseEverything();
        } else {
            throw new UserFault(Texts.say("data.eraseUnknown"));
        }
        Said.then(ctx, Texts.say("data.erased"), "/data");
    }

    private static void requireSure(Context ctx) {
        if (!"yes".equals(ctx.formParam("sure"))) {
            throw new UserFault(Texts.say("data.notSure"));
        }
    }
}
