package loopwright.web;

import static j2html.TagCreator.br;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import loopwright.action.ShortGameTable;
import loopwright.action.ShortGameTable.Spot;
import loopwright.action.ShortGameTable.Way;
import loopwright.ground.Situation;

/** What to play from round the green, lie by lie, the chance of up and down drawn. */
final class ShortGamePanel {
    private final ShortGameTable table;
    private final Units units;

    ShortGamePanel(ShortGameTable table, Units units) {
        this.table = table;
        this.units = units;
    }

    DomContent content() {
        List<DomContent> out = new ArrayList<>();
        out.add(p(Texts.say("short.means", table.player())).withClass("lead"));
        if (!table.assumed().isEmpty()) {
            out.add(p(Texts.say("short.assumed", String.join(", ", table.assumed())))
                    .withClass("beware"));
        }
        Map<String, List<Spot>> byLie = table.spots().stream()
                .collect(Collectors.groupingBy(ShortGamePanel::lie, LinkedHashMap::new, Collectors.toList()));
        out.add(div(each(
                        byLie.entrySet(),
                        e -> section(
                                h2(Texts.say("short.from", e.getKey())),
                                scrolled(best(e.getValue(), e.getKey()), e.getKey()),
                                details(
                                        summary(Texts.say("short.all", e.getKey())),
                                        scrolled(all(e.getValue(), e.getKey()), Texts.say("short.all", e.getKey()))))))
                .withClass("beside"));
        return div(out.toArray(DomContent[]::new));
    }

    private static DomContent scrolled(DomContent content, String words) {
        return div(content)
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", words);
    }

    private static String lie(Spot spot) {
        String lie = Words.lie(spot.lie());
        return spot.situation() == Situation.DOWN ? Texts.say("short.down", lie) : lie;
    }

    /** The best from every distance (down) with every room (across). */
    private DomContent best(List<Spot> spots, String lie) {
        List<Double> rooms =
                spots.stream().map(Spot::roomMetres).distinct().sorted().toList();
        List<Double> from = spots.stream().map(Spot::metres).distinct().sorted().toList();
        return table(
                        caption(Texts.say("short.caption", lie)),
                        thead(tr(
                                th(Texts.say("expect.from")).attr("scope", "col"),
                                each(
                                        rooms,
                                        r -> th(Texts.say("short.withRoom", units.length(r)))
                                                .attr("scope", "col")
                                                .withClass("words")))),
                        tbody(each(
                                from,
                                metres -> tr(
                                        th(units.length(metres)).attr("scope", "row"),
                                        each(
                                                rooms,
                                                room -> td(spots.stream()
                                                        .filter(s -> s.metres() == metres && s.roomMetres() == room)
                                                        .findFirst()
                                                        .map(this::cell)
                                                        .orElse(text(""))))))))
                .withClass("cells");
    }

    private DomContent cell(Spot spot) {
        Way best = spot.best();
        return span(
                strong(best.shot()),
                text(" "),
                span(Words.of("%.2f", best.expected()))
                        .attr("data-strokes", table.spots().indexOf(spot)),
                br(),
                text(Texts.say("short.of", Words.of("%.0f", 100 * best.upAndDown()))),
                Svg.share(best.upAndDown()));
    }

    private DomContent all(List<Spot> spots, String lie) {
        return table(
                caption(Texts.say("short.allCaption", lie)),
                ColumnHeads.of(
                        "expect.from",
                        "short.room",
                        "wedges.play",
                        "wedges.strokes",
                        "short.three",
                        "short.six",
                        "short.upAndDown",
                        "short.second"),
                tbody(each(spots, s -> each(s.ways(), w -> way(s, w)))));
    }

    private DomContent way(Spot spot, Way w) {
        return tr(
                th(units.length(spot.metres())).attr("scope", "row"),
                td(units.length(spot.roomMetres())),
                td(w.shot()),
                td(Words.of("%.2f", w.expected())),
                td(Words.of("%.0f", 100 * w.insideThreeFeet())),
                td(Words.of("%.0f", 100 * w.insideSixFeet())),
                td(Words.of("%.0f", 100 * w.upAndDown())),
                td(Words.of("%.0f", 100 * w.secondChip())));
    }
}
