package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import loopwright.action.WedgeTable;

/** Which swing covers which distance: the swings as bars over the distance, the best from each, the gaps. */
final class WedgePanel {
    private static final int LEFT = 190;
    private static final int WIDTH = 760;
    private static final int ROW = 22;
    private static final int TOP = 8;
    private static final int FOOT = 26;
    private static final int TICK = 20;

    private final WedgeTable wedges;
    private final Units units;

    WedgePanel(WedgeTable wedges, Units units) {
        this.wedges = wedges;
        this.units = units;
    }

    DomContent content() {
        List<DomContent> out = new ArrayList<>();
        out.add(p(strong(Texts.say(
                        "wedges.title",
                        wedges.player(),
                        Words.lie(wedges.lie()),
                        units.length(WedgeTable.GREEN_METRES))))
                .withClass("lead"));
        out.add(p(wedges.findGapToFill()
                .map(g -> Texts.say("wedges.add", units.length(g.middleMetres())))
                .orElse(Texts.say("wedges.noGap"))));
        if (!wedges.measure().isEmpty()) {
            out.add(p(Texts.say("wedges.measure", String.join(", ", wedges.measure())))
                    .withClass("beware"));
        }
        out.add(section(
                h2(Texts.say("wedges.swings")),
                div(ladder())
                        .withClass("wide")
                        .withTabindex(0)
                        .attr("role", "region")
                        .attr("aria-label", Texts.say("wedges.swings")),
                details(summary(Texts.say("score.table")), swings()),
                gaps()));
        out.add(section(h2(Texts.say("wedges.best")), scrolled(best(), "wedges.best")));
        return div(out.toArray(DomContent[]::new));
    }

    private static DomContent scrolled(DomContent table, String key) {
        return div(table)
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say(key));
    }

    /** Each swing over the distance at which 8 of 10 solid balls stop, the middle marked. */
    private DomContent ladder() {
        List<WedgeTable.Reach> swings = wedges.swings();
        double longest = swings.stream().mapToDouble(WedgePanel::far).max().orElse(1);
        double height = TOP + ROW * swings.size() + FOOT;
        Svg svg = Svg.picture("ladder", WIDTH, height, Texts.say("wedges.picture"));
        for (int n = TICK; n <= units.number(longest); n += TICK) {
            double x = x(units.metres(n), longest);
            svg.line("rule", x, TOP, x, height - FOOT + 4).words("at-middle", x, height - 8, n + " " + units.unit());
        }
        for (int i = 0; i < swings.size(); i++) {
            WedgeTable.Reach r = swings.get(i);
            double y = TOP + ROW * i;
            double total = r.carryMetres() + r.runMetres();
            boolean assumed = r.swing().evidence().isMostlyAssumed();
            svg.words("at-end", LEFT - 8, y + 15, r.swing().label())
                    .rectangle(
                            assumed ? "assumed" : "measured",
                            x(total - r.depthMetres() / 2, longest),
                            y + 4,
                            x(total + r.depthMetres() / 2, longest) - x(total - r.depthMetres() / 2, longest),
                            ROW - 9)
                    .line("mark", x(total, longest), y + 1, x(total, longest), y + ROW - 2);
        }
        return svg.drawn();
    }

    private static double far(WedgeTable.Reach r) {
        return r.carryMetres() + r.runMetres() + r.depthMetres() / 2;
    }

    private static double x(double metres, double longest) {
        return LEFT + (WIDTH - LEFT - 14) * metres / longest;
    }

    private DomContent swings() {
        return scrolled(
                table(
                        caption(Texts.say("wedges.swingCaption", units.unit())),
                        ColumnHeads.of(
                                "wedges.swing",
                                "bag.carry",
                                "wedges.run",
                                "wedges.depth",
                                "wedges.width",
                                "bag.mishits",
                                "bag.balls"),
                        tbody(each(
                                wedges.swings(),
                                r -> tr(
                                        th(r.swing().label()
                                                        + (r.swing().evidence().isMostlyAssumed()
                                                                ? " " + Texts.say("bag.mostlyAssumed")
                                                                : ""))
                                                .attr("scope", "row"),
                                        td(number(r.carryMetres())),
                                        td(number(r.runMetres())),
                                        td(number(r.depthMetres())),
                                        td(number(r.widthMetres())),
                                        td(Words.percent(r.mishitRate())),
                                        td(Integer.toString(r.swing().evidence().balls())))))),
                "wedges.swings");
    }

    private String number(double metres) {
        return Words.of("%.0f", units.number(metres));
    }

    private DomContent gaps() {
        return ul(each(
                wedges.gaps(),
                g -> li(Texts.say(
                        "wedges.gap",
                        units.length(g.longerMetres() - g.shorterMetres()),
                        g.shorter(),
                        units.length(g.shorterMetres()),
                        g.longer(),
                        units.length(g.longerMetres()),
                        units.length(g.middleMetres()),
                        g.saving() < 2 * g.standardError()
                                ? Texts.say("wedges.nothing")
                                : Texts.say("wedges.saves", Words.of("%.2f", g.saving()))))));
    }

    private DomContent best() {
        return table(
                caption(Texts.say("wedges.bestCaption")),
                ColumnHeads.withWords(
                        List.of("wedges.play", "wedges.next"),
                        "expect.from",
                        "wedges.play",
                        "wedges.strokes",
                        "wedges.green",
                        "wedges.near",
                        "wedges.next"),
                tbody(each(
                        wedges.rows(),
                        r -> tr(
                                th(units.length(r.metres())).attr("scope", "row"),
                                td(r.shot()).withClass("words"),
                                td(Words.of("%.2f", r.expected())).attr("data-from", Math.round(r.metres())),
                                td(Words.of("%.0f", 100 * r.onGreen())),
                                td(units.shortLength(r.nearMetres())),
                                td(r.next()
                                                .map(a -> a.club() + " " + Words.cost(a))
                                                .orElse(""))
                                        .withClass("words")))));
    }
}
