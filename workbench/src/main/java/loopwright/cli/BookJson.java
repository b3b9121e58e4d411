package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import loopwright.action.Book;
import loopwright.action.MakeBook;

/** A book as the JSON of {@code docs/schema/book.schema.json}: its text, and the plan it was made from. */
final class BookJson {
    private BookJson() {}

    static Map<String, Object> of(MakeBook.Made made) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("title", made.book().title());
        out.put("language", Book.LANGUAGE);
        out.put("unit", made.book().unit().words());
        out.put("pageWidthInches", Book.PAGE_WIDTH_INCHES);
        out.put("pageHeightInches", Book.PAGE_HEIGHT_INCHES);
        out.put("largestGreenScale", Book.LARGEST_GREEN_SCALE);
        out.put("pages", made.book().pages().stream().map(BookJson::page).toList());
        out.put("plan", PlanJson.of(made.plan()));
        return out;
    }

    private static Map<String, Object> page(Book.Page page) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("kind", word(page.kind().name()));
        if (page.hole() > 0) {
            out.put("hole", page.hole());
        }
        out.put("title", page.title());
        out.put("lines", page.lines().stream().map(BookJson::line).toList());
        page.table().ifPresent(t -> out.put("table", table(t)));
        page.picture().ifPresent(p -> out.put("picture", p.words()));
        return out;
    }

    private static Map<String, Object> line(Book.Line line) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("role", word(line.role().name()));
        out.put("points", line.role().points());
        out.put("text", line.text());
        return out;
    }

    private static Map<String, Object> table(Book.Table table) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("name", table.name());
        out.put("heads", table.heads());
        out.put("rows", table.rows());
        return out;
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
