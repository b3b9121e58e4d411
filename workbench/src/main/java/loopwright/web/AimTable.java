package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.action.AimField;

/** Expected strokes over the aims from a spot as a table: lengths down, farthest first as on the chart, sides across. */
final class AimTable {
    /** The chart has aims twice as near to each other. */
    private static final int EVERY = 2;

    private final AimField field;
    private final Units units;

    AimTable(AimField field, Units units) {
        this.field = field;
        this.units = units;
    }

    DomContent content() {
        AimField.Aim best = field.best();
        List<AimField.Row> rows = new ArrayList<>(field.rows());
        Collections.reverse(rows);
        return div(
                h2(Texts.say("aims.title")),
                p(Texts.say("aims.means")).withClass("note"),
                div(table(
                                caption(Texts.say("aims.caption", best.club(), Words.of("%.2f", best.strokes()))),
                                thead(head()),
                                tbody(each(rows, this::row))))
                        .withClass("wide")
                        .withTabindex(0)
                        .attr("role", "region")
                        .attr("aria-label", Texts.say("aims.title")));
    }

    private DomContent head() {
        List<DomContent> cells = new ArrayList<>();
        cells.add(th(Texts.say("aims.length")).attr("scope", "col"));
        for (int c = 0; c < field.asideMetres().size(); c += EVERY) {
            String side = units.side(field.asideMetres().get(c));
            cells.add(th(side.isEmpty() ? Texts.say("aims.middle") : side).attr("scope", "col"));
        }
        return tr(cells.toArray(DomContent[]::new));
    }

    private DomContent row(AimField.Row row) {
        List<DomContent> cells = new ArrayList<>();
        cells.add(th(units.length(row.metres()) + ", " + row.best().club()).attr("scope", "row"));
        double least = IntStream.range(0, row.aims().size())
                .filter(c -> c % EVERY == 0)
                .mapToDouble(c -> row.aims().get(c).strokes())
                .min()
                .orElseThrow();
        for (int c = 0; c < row.aims().size(); c += EVERY) {
            AimField.Aim aim = row.aims().get(c);
            String strokes = Words.of("%.2f", aim.strokes());
            String other = aim.club().equals(row.best().club()) ? "" : " (" + aim.club() + ")";
            cells.add(td(aim.strokes() == least ? strong(strokes) : text(strokes), text(other)));
        }
        return tr(cells.toArray(DomContent[]::new));
    }
}
