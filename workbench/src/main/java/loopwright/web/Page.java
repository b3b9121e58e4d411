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

/** The sheet every page is laid on: head, the way to the other places, cautions. */
final class Page {
    private static final List<String> PLACES = List.of("plan", "course", "player", "green", "data");

    private final String place;
    private final String title;
    private final List<String> modules = new ArrayList<>();

    /** {@code place} is one of the five, or empty. */
    Page(String place, String title) {
        this.place = place;
        this.title = title;
    }

    /** Adds a script module by its name. */
    Page with(String module) {
        modules.add(module);
        return this;
    }

    void answer(Context ctx, DomContent... content) {
        ctx.html(document(html(
                        head(
                                meta().withCharset("utf-8"),
                                meta().withName("viewport").withContent("width=device-width, initial-scale=1"),
                                title(title + " - Loopwright"),
                                link().withRel("stylesheet").withHref("/static/bench.css"),
                                link().withRel("icon")
                                        .withHref("/static/mark.svg")
                                        .withType("image/svg+xml"),
                                each(modules)),
                        body(
                                a(Texts.say("page.skip")).withHref("#main").withClass("skip"),
                                header(
                                        a("Loopwright").withHref("/").withClass("cartouche"),
                                        nav(links()).attr("aria-label", Texts.say("page.places"))),
                                main(content).withId("main").withTabindex(-1),
                                footer(p(Texts.say("page.caution"))),
                                div().withId("said").withClass("unseen").attr("aria-live", "polite")))
                .withLang("en")));
    }

    private DomContent[] links() {
        return PLACES.stream()
                .map(name -> {
                    var link = a(Texts.say("place." + name)).withHref("/" + name);
                    return name.equals(place) ? link.attr("aria-current", "page") : link;
                })
                .toArray(DomContent[]::new);
    }

    private static DomContent each(List<String> modules) {
        return j2html.TagCreator.each(modules, m -> script().withType("module").withSrc("/static/" + m + ".js"));
    }
}
