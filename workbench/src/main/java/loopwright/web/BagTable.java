package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.List;
import java.util.Optional;
import loopwright.action.FitResult;
import loopwright.player.Player;
import loopwright.player.Swing;
import loopwright.units.Distance;

/** The bag of a player: with intervals where the fit is at hand, else the numbers that are planned with. */
final class BagTable {
    private final Player player;
    private final Optional<FitResult> result;
    private final Units units;

    BagTable(Player player, Optional<FitResult> result, Units units) {
        this.player = player;
        this.result = result;
        this.units = units;
    }

    DomContent content() {
        DomContent rows = result.<DomContent>map(r -> div(fitted(r), ul(each(r.notes(), n -> li(n)))))
                .orElseGet(() -> div(planned(), p(Texts.say("bag.noIntervals")).withClass("note")));
        return div(rows)
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("player.patterns"));
    }

    private DomContent planned() {
        return table(
                caption(Texts.say("bag.planned")),
                head(List.of("club", "carry", "total", "bias", "spread", "mishits", "balls", "assumed")),
                tbody(each(player.swings(), this::row)));
    }

    private DomContent row(Swing s) {
        var pattern = s.pattern();
        return tr(
                th(s.label()).attr("scope", "row"),
                td(units.length(pattern.carryMetres())),
                td(units.length(pattern.totalMetres())),
                td(side(Math.toDegrees(pattern.directionRadians()))),
                td(Words.of("%.1f\u00b0", Math.toDegrees(pattern.directionSdRadians()))),
                td(Words.percent(pattern.mishitRate())),
                td(Integer.toString(s.evidence().balls())),
                td(assumed(s.evidence().assumedShare())));
    }

    private DomContent fitted(FitResult r) {
        return table(
                caption(Texts.say("bag.fitted")),
                head(List.of("club", "carry", "total", "bias", "eight", "mishits", "balls", "assumed")),
                tbody(each(r.clubs(), this::row)));
    }

    private DomContent row(FitResult.ClubResult c) {
        return tr(
                th(c.effort().equals(Swing.FULL) ? c.club() : c.club() + " " + c.effort())
                        .attr("scope", "row"),
                td(range(c.carryYards())),
                td(range(c.totalYards())),
                td(side(c.biasDegrees().middle())),
                td(range(c.eightInTenYards())),
                td(Words.percent(c.mishitRate().middle())),
                td(Integer.toString(c.balls())),
                td(assumed(c.assumedShare())));
    }

    private static DomContent head(List<String> columns) {
        return thead(tr(each(columns, c -> th(Texts.say("bag." + c)).attr("scope", "col"))));
    }

    private String range(FitResult.Range yards) {
        return length(yards.middle()) + " (" + number(yards.low()) + " to " + number(yards.high()) + ")";
    }

    private String length(double yards) {
        return units.length(Distance.ofYards(yards).metres());
    }

    private String number(double yards) {
        return Words.of("%.0f", units.number(Distance.ofYards(yards).metres()));
    }

    private static String side(double degrees) {
        return Words.of("%.1f\u00b0 ", Math.abs(degrees)) + Texts.say(degrees < 0 ? "side.left" : "side.right");
    }

    /** Said in words too: a share alone reads like a grade. */
    private static String assumed(double share) {
        return Words.of("%.0f %%", 100 * share)
                + (share > 0.75
                        ? " " + Texts.say("bag.mostlyAssumed")
                        : share < 0.25 ? " " + Texts.say("bag.measured") : "");
    }
}
