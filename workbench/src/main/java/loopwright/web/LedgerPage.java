package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The ledger of checks, read from {@code docs/validation.md}: headings, paragraphs and tables. */
final class LedgerPage {
    private static final Pattern LINK = Pattern.compile("\\[([^\\]]*)\\]\\([^)]*\\)");

    private LedgerPage() {}

    static void answer(Context ctx) {
        List<DomContent> content = new ArrayList<>();
        content.add(p(a(Texts.say("ledger.back")).withHref("/data")));
        content.addAll(content(lines()));
        new Page("data", Texts.say("ledger.title")).answer(ctx, content.toArray(DomContent[]::new));
    }

    private static List<String> lines() {
        try (InputStream in = LedgerPage.class.getResourceAsStream("validation.md")) {
            if (in == null) {
                throw new IllegalStateException("the ledger was not built in");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<DomContent> content(List<String> lines) {
        List<DomContent> out = new ArrayList<>();
        List<String> rows = new ArrayList<>();
        int tables = 0;
        for (String line : lines) {
            if (line.startsWith("|")) {
                rows.add(line);
                continue;
            }
            if (!rows.isEmpty()) {
                out.add(table(rows, ++tables));
                rows = new ArrayList<>();
            }
            if (line.startsWith("# ")) {
                out.add(h1(plain(line.substring(2))));
            } else if (line.startsWith("#")) {
                out.add(h2(plain(line.replaceFirst("^#+\\s*", ""))));
            } else if (!line.isBlank()) {
                out.add(p(plain(line)));
            }
        }
        if (!rows.isEmpty()) {
            out.add(table(rows, ++tables));
        }
        return out;
    }

    private static DomContent table(List<String> rows, int number) {
        List<String> head = cells(rows.get(0));
        List<String> body = rows.subList(Math.min(2, rows.size()), rows.size());
        return div(j2html.TagCreator.table(
                        thead(tr(each(head, c -> th(c).attr("scope", "col").withClass("words")))),
                        tbody(each(body, r -> tr(each(cells(r), c -> td(c).withClass("words")))))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("ledger.table", number));
    }

    private static List<String> cells(String row) {
        String inner = row.strip().replaceFirst("^\\|", "").replaceFirst("\\|$", "");
        List<String> out = new ArrayList<>();
        for (String cell : inner.split("(?<!\\\\)\\|", -1)) {
            out.add(plain(cell.strip().replace("\\|", "|")));
        }
        return out;
    }

    private static String plain(String text) {
        return LINK.matcher(text).replaceAll("$1").replace("`", "").replace("**", "");
    }
}
