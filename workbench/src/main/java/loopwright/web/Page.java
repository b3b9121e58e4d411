package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.body;
import static j2html.TagCreator.div;
import static j2html.TagCreator.document;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.head;
import static j2html.TagCreator.header;
import static j2html.TagCreator.html;
import static j2html.TagCreator.link;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;
import static j2html.TagCreator.script;
import static j2html.TagCreator.title;

import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.Account;

/** The sheet every page is laid on: head, the way to the other places, cautions. */
final class Page {
    private static final List<String> PLACES = List.of(
            "today", "plan", "course", "player", "rounds", "practice", "print", "green", "data", "people", "account");

    private final String place;
    private final String title;
    private final List<String> modules = new ArrayList<>();
    private final List<String> styles = new ArrayList<>();

    /** {@code place} is one of the places, or empty. */
    Page(String place, String title) {
        this.place = place;
        this.title = title;
    }

    /** Adds a script module by its name. */
    Page with(String module) {
        modules.add(module);
        return this;
    }

    /** Adds a style sheet by its name. */
    Page withStyle(String sheet) {
        styles.add(sheet);
        return this;
    }

    void answer(Context ctx, DomContent... content) {
        ctx.html(document(html(
                        head(
                                meta().withCharset("utf-8"),
                                meta().withName("viewport").withContent("width=device-width, initial-scale=1"),
                                title(title + " - Loopwright"),
                                link().withRel("stylesheet").withHref("/static/bench.css"),
                                j2html.TagCreator.each(
                                        styles,
                                        name -> link().withRel("stylesheet").withHref("/static/" + name + ".css")),
                                link().withRel("icon")
                                        .withHref("/static/mark.svg")
                                        .withType("image/svg+xml"),
                                each(modules)),
                        body(
                                a(Texts.say("page.skip")).withHref("#main").withClass("skip"),
                                header(
                                        a("Loopwright").withHref("/").withClass("cartouche"),
                                        nav(links(ctx)).attr("aria-label", Texts.say("page.places"))),
                                main(content).withId("main").withTabindex(-1),
                                footer(p(Texts.say("page.caution"))),
                                div().withId("said").withClass("unseen").attr("aria-live", "polite")))
                .withLang("en")));
    }

    /** The places this visitor may go to; the last is his account, where he has one. */
    private DomContent[] links(Context ctx) {
        Optional<Account> account = Gate.account(ctx);
        boolean stranger = ctx.path().equals("/login") || ctx.path().equals("/join");
        return stranger
                ? new DomContent[0]
                : PLACES.stream()
                        .filter(name -> account.map(
                                        a -> Right.of("GET /" + name).allows(a.role()))
                                .orElse(!name.equals("account")))
                        .map(name -> way(name, account))
                        .toArray(DomContent[]::new);
    }

    private DomContent way(String name, Optional<Account> account) {
        String words = name.equals("account") ? account.map(Account::name).orElse("") : Texts.say("place." + name);
        var link = a(words).withHref("/" + name);
        return name.equals(place) ? link.attr("aria-current", "page") : link;
    }

    private static DomContent each(List<String> modules) {
        return j2html.TagCreator.each(modules, m -> script().withType("module").withSrc("/static/" + m + ".js"));
    }
}
