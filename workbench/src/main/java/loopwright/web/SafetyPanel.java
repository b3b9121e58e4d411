package loopwright.web;

import static j2html.TagCreator.a;
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
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.action.PlanChoice;
import loopwright.action.RoundPlan;

/** Where planned shots may finish among people, as far as the map shows; never a word that a shot is safe. */
final class SafetyPanel {
    private static final int CAUTIONS = 5;

    private final RoundPlan plan;
    private final PlanChoice choice;
    private final Units units;

    private record Row(int hole, int shot, RoundPlan.ShotPlan planned, RoundPlan.Risk risk) {}

    SafetyPanel(RoundPlan plan, PlanChoice choice, Units units) {
        this.plan = plan;
        this.choice = choice;
        this.units = units;
    }

    DomContent content() {
        List<Row> rows = rows();
        List<Row> flagged = rows.stream().filter(r -> r.risk().isFlagged()).toList();
        List<Row> rare = rows.stream().filter(r -> !r.risk().isFlagged()).toList();
        List<DomContent> out = new ArrayList<>();
        out.add(p(strong(Texts.say(flagged.isEmpty() ? "safety.none" : "safety.some", flagged.size())))
                .withClass("lead"));
        out.add(p(strong(Texts.say("shot.beware")), text(" " + Texts.say("safety.map")))
                .withClass("beware"));
        if (!flagged.isEmpty()) {
            out.add(section(h2(Texts.say("safety.title")), table("safety.caption", flagged)));
        }
        if (!rare.isEmpty()) {
            out.add(details(summary(Texts.say("safety.rare", rare.size())), table("safety.rareCaption", rare)));
        }
        out.add(section(
                h2(Texts.say("data.cautions")),
                ul(each(IntStream.rangeClosed(1, CAUTIONS).boxed().toList(), i -> li(Texts.say("caution." + i))))));
        return div(out.toArray(DomContent[]::new));
    }

    private List<Row> rows() {
        List<Row> out = new ArrayList<>();
        for (RoundPlan.HolePlan hole : plan.holes()) {
            for (int i = 0; i < hole.shots().size(); i++) {
                RoundPlan.ShotPlan shot = hole.shots().get(i);
                int number = i + 1;
                shot.risks().forEach(r -> out.add(new Row(hole.number(), number, shot, r)));
            }
        }
        out.sort(Comparator.comparingDouble((Row r) -> -r.risk().chance()));
        return out;
    }

    private DomContent table(String caption, List<Row> rows) {
        return div(j2html.TagCreator.table(
                        caption(Texts.say(caption)),
                        ColumnHeads.withWords(
                                List.of("safety.where", "safety.played"),
                                "safety.shot",
                                "safety.where",
                                "score.chance",
                                "safety.played"),
                        tbody(each(rows, this::row))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say(caption));
    }

    private DomContent row(Row r) {
        return tr(
                th(a(Texts.say("plan.holeShot", r.hole(), r.shot())).withHref(HoleTable.link(choice, r.hole())))
                        .attr("scope", "row"),
                td(r.risk().where()).withClass("words"),
                td(
                        text(Words.percent(r.risk().chance()) + " "),
                        Svg.share(r.risk().chance())),
                td(Words.aimed(
                                r.planned().club(),
                                r.planned().landmark(),
                                r.planned().offsetMetres(),
                                units))
                        .withClass("words"));
    }
}
