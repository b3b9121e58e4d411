package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.li;
import static j2html.TagCreator.ol;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.tfoot;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import loopwright.action.PlayerReport;
import loopwright.action.ReportWords;
import loopwright.scoring.Band;
import loopwright.scoring.ClubMiss;
import loopwright.scoring.OrdinaryMiss;
import loopwright.scoring.RoundReview;
import loopwright.scoring.ScoreGap;
import loopwright.scoring.ShotAttribution;

/** What a report says, drawn as ledgers: the three sentences, gains on three yardsticks, causes, misses, what stands between. */
final class ReportPanel {
    /** Strokes that lost less are not listed. */
    private static final double LEAST_SHOWN = 0.1;
    /** A stroke that lost more is drawn so. */
    private static final double DEAR = 0.5;
    /** At this share or less a miss is out of the ordinary. */
    private static final double UNUSUAL = 0.1;

    private final PlayerReport report;
    private final Units units;

    ReportPanel(PlayerReport report, Units units) {
        this.report = report;
        this.units = units;
    }

    /** One thing done well, one decision, one practice item. */
    DomContent opening() {
        return ol(each(
                        List.of(
                                ReportWords.doneWell(report, units.sentences()),
                                ReportWords.decision(report),
                                ReportWords.practice(report, units.sentences())),
                        ReportPanel::sentence))
                .withId("opening")
                .withClass("opening");
    }

    private static DomContent sentence(String words) {
        int colon = words.indexOf(':') + 1;
        return li(strong(words.substring(0, colon)), text(words.substring(colon)));
    }

    /** Gains of the round on three yardsticks; each column adds up to what its player needs less the strokes played. */
    DomContent yardsticks() {
        if (report.tour().rows().isEmpty()) {
            return text("");
        }
        return details(
                summary(Texts.say("report.yardsticks")),
                ul(
                        li(Texts.say("report.a", report.tour().baseline())),
                        li(Texts.say(
                                "report.b",
                                report.benchmark().map(RoundReview::baseline).orElse(Texts.say("report.noBenchmark")))),
                        li(Texts.say(
                                "report.c",
                                report.past().map(RoundReview::baseline).orElse(Texts.say("report.noPast"))))),
                scrolled(
                        table(
                                caption(Texts.say("report.yardsticksMean")),
                                ColumnHeads.of("gains.part", "gains.strokes", "report.inA", "report.inB", "report.inC"),
                                tbody(each(
                                        report.tour().rows(),
                                        g -> tr(
                                                th(GainsTable.label(g.band(), units))
                                                        .attr("scope", "row"),
                                                td(Integer.toString(g.strokes())),
                                                td(Words.of("%+.2f", g.gained())),
                                                td(in(report.benchmark(), g.band())),
                                                td(in(report.past(), g.band()))))),
                                tfoot(tr(
                                        th(Texts.say("report.sum")).attr("scope", "row"),
                                        td(Integer.toString(report.tour().strokes())),
                                        td(Words.of("%+.2f", report.tour().total())),
                                        td(total(report.benchmark())),
                                        td(total(report.past()))))),
                        "report.yardsticks"));
    }

    private static String in(Optional<RoundReview> review, Band band) {
        return review.map(v -> Words.of("%+.2f", ReportWords.gained(v.rows(), band)))
                .orElse("");
    }

    private static String total(Optional<RoundReview> review) {
        return review.map(v -> Words.of("%+.2f", v.total())).orElse("");
    }

    private static DomContent scrolled(DomContent table, String key) {
        return div(table)
                .withClass("wide ledger")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say(key));
    }

    /** Strokes lost, divided into decision, execution and luck; empty where nothing could be divided. */
    Optional<DomContent> causes() {
        List<ShotAttribution> all = report.causes();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        double decision = sum(all, ShotAttribution::decision);
        double execution = sum(all, ShotAttribution::execution);
        double luck = sum(all, ShotAttribution::luck);
        Ledger ledger = new Ledger(
                Stream.of(decision, execution, luck)
                        .mapToDouble(Math::abs)
                        .max()
                        .orElse(1),
                false);
        List<ShotAttribution> shown = all.stream()
                .filter(s -> s.lost() > LEAST_SHOWN || s.decision() > LEAST_SHOWN)
                .toList();
        return Optional.of(div(
                p(Texts.say("causes.means", Words.of("%.2f", decision + execution + luck))),
                table(
                        caption(Texts.say("causes.caption")),
                        ColumnHeads.of("causes.part", "causes.lost", "causes.bar"),
                        tbody(
                                part("decision", decision, ledger),
                                part("execution", execution, ledger),
                                part("luck", luck, ledger))),
                shown.isEmpty() ? p(Texts.say("causes.none")) : strokes(shown)));
    }

    private static double sum(List<ShotAttribution> all, ToDoubleFunction<ShotAttribution> part) {
        return all.stream().mapToDouble(part).sum();
    }

    private static DomContent part(String name, double lost, Ledger ledger) {
        return tr(
                th(Texts.say("causes." + name)).attr("scope", "row"),
                td(Words.of("%+.2f", lost)).attr("data-part", name),
                td(ledger.bar(lost)));
    }

    private DomContent strokes(List<ShotAttribution> shown) {
        Ledger ledger = new Ledger(
                shown.stream()
                        .flatMap(s -> Stream.of(s.decision(), s.execution(), s.luck()))
                        .mapToDouble(Math::abs)
                        .max()
                        .orElse(1),
                false);
        return scrolled(
                table(
                        caption(Texts.say("causes.strokes", Words.of("%.1f", LEAST_SHOWN))),
                        ColumnHeads.withWords(
                                List.of("causes.known", "causes.ordinary"),
                                "causes.stroke",
                                "causes.lost",
                                "causes.decision",
                                "causes.execution",
                                "causes.luck",
                                "causes.known",
                                "causes.ordinary"),
                        tbody(each(
                                shown,
                                s -> tr(
                                        th(Texts.say("causes.of", s.hole(), s.shot(), s.club()))
                                                .attr("scope", "row")
                                                .withClass("words"),
                                        td(Words.of("%.2f", s.lost())),
                                        td(text(Words.of("%+.2f ", s.decision())), ledger.bar(s.decision())),
                                        td(text(Words.of("%+.2f ", s.execution())), ledger.bar(s.execution())),
                                        td(text(Words.of("%+.2f ", s.luck())), ledger.bar(s.luck())),
                                        td(ReportWords.knowledge(s.knowledge())).withClass("words"),
                                        td(ReportWords.ordinaryMiss(s)).withClass("words"))))),
                "causes.title");
    }

    /** True if a stroke lost much, by decision, execution and luck together. */
    boolean isDear(int hole, int shot) {
        return report.causes().stream().anyMatch(s -> s.hole() == hole && s.shot() == shot && s.lost() > DEAR);
    }

    /** How ordinary shots at the hole were: what is out of the ordinary first, the rest folded away. */
    DomContent ordinary() {
        List<OrdinaryMiss> all = report.ordinary();
        if (all.isEmpty()) {
            return text("");
        }
        List<OrdinaryMiss> unusual =
                all.stream().filter(m -> m.farther() <= UNUSUAL).toList();
        return section(
                h2(Texts.say("ordinary.title")),
                unusual.isEmpty()
                        ? p(Texts.say("ordinary.all", all.size()))
                        : div(
                                p(Texts.say("ordinary.some", unusual.size(), all.size())),
                                ul(each(unusual, m -> li(ReportWords.ordinaryMiss(m, units.sentences()))))),
                details(
                        summary(Texts.say("ordinary.each")),
                        ul(each(all, m -> li(ReportWords.ordinaryMiss(m, units.sentences()))))
                                .withClass("list")),
                p(Texts.say("ordinary.means")).withClass("note"));
    }

    /** What stands between the player and the target, with intervals and ties; empty without a benchmark. */
    Optional<DomContent> gap() {
        return report.gap().filter(g -> !g.rows().isEmpty()).map(this::gap);
    }

    private DomContent gap(ScoreGap gap) {
        Ledger ledger = new Ledger(
                gap.rows().stream()
                        .mapToDouble(r -> Math.max(Math.abs(r.low()), Math.abs(r.high())))
                        .max()
                        .orElse(1),
                false);
        boolean ties = gap.tied().size() > 1;
        return div(
                p(gap.separated() ? Texts.say("gap.overlap") : Texts.say("gap.tied", ReportWords.rounds(gap)))
                        .withClass("note"),
                scrolled(
                        table(
                                caption(Texts.say("gap.caption", report.target(), gap.rounds())),
                                ColumnHeads.of("gap.what", "gap.costs", "gap.bar"),
                                tbody(each(
                                        gap.rows(),
                                        r -> tr(
                                                th(ReportWords.obstacle(r.obstacle(), units.sentences())
                                                                + (ties
                                                                                && gap.tied()
                                                                                        .contains(r.obstacle())
                                                                        ? " (" + Texts.say("gap.isTied") + ")"
                                                                        : ""))
                                                        .attr("scope", "row"),
                                                td(Words.of("%+.1f", r.cost())
                                                        + " (" + Words.of("%+.1f", r.low()) + " "
                                                        + Texts.say("words.to") + " " + Words.of("%+.1f", r.high())
                                                        + ")"),
                                                td(ledger.bar(r.cost(), r.low(), r.high())))))),
                        "between.title"));
    }

    /** Misses by club over all rounds, beside what the plan assumes. */
    DomContent misses() {
        List<ClubMiss> noted =
                report.misses().stream().filter(m -> m.noted() > 0).toList();
        List<ClubMiss> counted =
                report.misses().stream().filter(m -> m.approaches() > 0).toList();
        List<DomContent> out = new ArrayList<>();
        if (!noted.isEmpty()) {
            out.add(table(
                    caption(Texts.say("misses.noted")),
                    ColumnHeads.of("ways.club", "misses.swings", "misses.off", "misses.wide"),
                    tbody(each(
                            noted,
                            m -> tr(
                                    th(m.club()).attr("scope", "row"),
                                    td(Integer.toString(m.noted())),
                                    td(Texts.say(
                                            "misses.degrees",
                                            Words.of("%.1f", Math.toDegrees(Math.abs(m.bias()))),
                                            Texts.say(m.bias() < 0 ? "side.left" : "side.right"),
                                            Words.of("%.1f", Math.toDegrees(2 * m.biasError())))),
                                    td("x " + Words.of("%.1f", m.spread())))))));
        }
        if (!counted.isEmpty()) {
            out.add(table(
                    caption(Texts.say("misses.counted")),
                    ColumnHeads.of(
                            "ways.club", "misses.green", "side.left", "side.right", "misses.short", "misses.long"),
                    tbody(each(
                            counted,
                            m -> tr(
                                    th(m.club()).attr("scope", "row"),
                                    td(Texts.say("tees.of", m.onGreen(), m.approaches())),
                                    td(Integer.toString(m.left())),
                                    td(Integer.toString(m.right())),
                                    td(Integer.toString(m.shortOf())),
                                    td(Integer.toString(m.longOf())))))));
        }
        return out.isEmpty() ? text("") : section(h2(Texts.say("misses.title")), div(out.toArray(DomContent[]::new)));
    }

    /** Whether the model knows the player. */
    DomContent standing() {
        return p(Texts.say("report.standing", report.standing().sentence())).withClass("note");
    }
}
