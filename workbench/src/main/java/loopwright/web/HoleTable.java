package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.tfoot;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.List;
import loopwright.action.PlanChoice;
import loopwright.action.RoundPlan;

/** The holes of a plan, a row each. */
final class HoleTable {
    private static final List<String> COLUMNS =
            List.of("hole", "par", "length", "first", "expect", "habit", "penalty", "double");

    private final RoundPlan plan;
    private final PlanChoice choice;
    private final Units units;

    HoleTable(RoundPlan plan, PlanChoice choice, Units units) {
        this.plan = plan;
        this.choice = choice;
        this.units = units;
    }

    /** Address of one hole of a plan. */
    static String link(PlanChoice choice, int hole) {
        return "/plan/hole?" + choice.query() + "&hole=" + hole;
    }

    DomContent section() {
        return j2html.TagCreator.section(
                h2(Texts.say("holes.title")),
                div(table(
                                caption(Texts.say(
                                        "holes.caption",
                                        plan.course().name(),
                                        plan.tees().name(),
                                        plan.par(),
                                        units.length(plan.lengthMetres()))),
                                thead(tr(each(
                                        COLUMNS,
                                        c -> th(Texts.say("holes." + c))
                                                .attr("scope", "col")
                                                .withCondClass(c.equals("first"), "words")))),
                                tbody(each(plan.holes(), this::row)),
                                tfoot(total())))
                        .withClass("wide")
                        .withTabindex(0)
                        .attr("role", "region")
                        .attr("aria-label", Texts.say("holes.title")));
    }

    private DomContent row(RoundPlan.HolePlan h) {
        RoundPlan.ShotPlan first = h.shots().get(0);
        return tr(
                th(a(Texts.say("holes.number", h.number())).withHref(link(choice, h.number())))
                        .attr("scope", "row"),
                td(Integer.toString(h.par())),
                td(units.length(h.lengthMetres())),
                td(Words.aimed(first.club(), first.landmark(), first.offsetMetres(), units))
                        .withClass("words"),
                td(Words.of("%.2f", h.expected())).attr("data-expected", h.number()),
                td(Words.of("%.2f", h.habitExpected())),
                td(Words.percent(h.penalty())),
                td(Words.percent(h.probability(h.par() + 2, h.scores().size()))));
    }

    private DomContent total() {
        return tr(
                th(Texts.say("holes.total")).attr("scope", "row"),
                td(Integer.toString(plan.par())),
                td(units.length(plan.lengthMetres())),
                td(),
                td(Words.of("%.2f", plan.total().mean())),
                td(Words.of("%.2f", plan.habitExpected())),
                td(),
                td());
    }
}
