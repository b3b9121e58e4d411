package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.PracticeChoice;
import loopwright.action.PracticePlan;
import loopwright.action.PracticeProgress;
import loopwright.action.PracticeReasons;
import loopwright.action.PracticeWords;
import loopwright.practice.PracticeHours;
import loopwright.practice.PracticeWeek;
import loopwright.practice.RoundOdds;
import loopwright.practice.Skill;
import loopwright.practice.SkillGain;
import loopwright.practice.TimeSplit;

/** A practice plan: where the hours go and why, what it is worth beside other splits, how far to trust it, and its week. */
final class PracticePanel {
    /** Half the width of a bar's field, in the bar's own units. */
    private static final double HALF = 60;

    private final PracticePlan plan;
    private final PracticeReasons reasons;

    PracticePanel(PracticePlan plan) {
        this.plan = plan;
        this.reasons = new PracticeReasons(plan);
    }

    DomContent content(PracticeChoice choice) {
        return div(
                        div(each(reasons.first(), s -> p(s).withClass("lead")))
                                .withClass(plan.canBeSaid() ? "good" : "beware"),
                        plan.progress().map(PracticePanel::progress).orElse(text("")),
                        div(
                                        section(h2(Texts.say("practice.split")), split(), links(choice)),
                                        section(h2(Texts.say("practice.worth")), forecasts()))
                                .withClass("beside"),
                        section(
                                h2(Texts.say("practice.trust")),
                                ul(each(reasons.trust(), s -> li(s))).withClass("list")),
                        section(
                                h2(Texts.say("practice.step")),
                                p(Texts.say("practice.stepMeans")).withClass("note"),
                                gains()),
                        cautions())
                .withClass("result");
    }

    /** What was practised since the player file was made, and where he stands. */
    private static DomContent progress(PracticeProgress progress) {
        if (progress.lines().isEmpty()) {
            return p(Texts.say("practice.nothingYet")).withClass("note");
        }
        return section(
                h2(Texts.say("practice.stands")),
                div(table(
                                caption(Texts.say("practice.standsMeans")),
                                ColumnHeads.of(
                                        "practice.skill",
                                        "practice.done",
                                        "practice.playings",
                                        "practice.leftNow",
                                        "practice.tau"),
                                tbody(each(
                                        progress.lines(),
                                        l -> tr(
                                                th(PracticeWords.of(l.skill())).attr("scope", "row"),
                                                td(Words.of("%.2f", l.hours())),
                                                td(
                                                        l.playings() == 0
                                                                ? Texts.say("practice.assumed")
                                                                : Integer.toString(l.playings())),
                                                td(String.format(
                                                                Locale.ROOT,
                                                                "%.2f (%.2f %s %.2f)",
                                                                l.left(),
                                                                l.low(),
                                                                Texts.say("words.to"),
                                                                l.high()))
                                                        .attr("data-left", PracticeWords.typed(l.skill())),
                                                td(Words.of(
                                                        "%.0f",
                                                        progress.rates()
                                                                .get(l.skill())
                                                                .hours())))))))
                        .withClass("wide")
                        .withTabindex(0)
                        .attr("role", "region")
                        .attr("aria-label", Texts.say("practice.stands")));
    }

    private static DomContent links(PracticeChoice choice) {
        return p(
                a(Texts.say("practice.week")).withHref("/practice/week?" + choice.query()),
                text(" \u00b7 "),
                a(Texts.say("practice.drills"))
                        .withHref("/practice/drills?player="
                                + choice.round().player().id()));
    }

    private DomContent split() {
        List<Skill> skills = plan.curves().curves().keySet().stream()
                .filter(s -> plan.split().of(s) > 0)
                .sorted((x, y) -> plan.split().of(y) - plan.split().of(x))
                .toList();
        int idle = plan.hours().blocks() - plan.split().total();
        return div(
                div(table(
                                caption(Texts.say(
                                        "practice.splitMeans",
                                        hours(plan.hours().blocks()),
                                        plan.hours().weeks())),
                                ColumnHeads.of("practice.skill", "practice.time", "practice.range", "practice.where"),
                                tbody(each(
                                        skills,
                                        s -> tr(
                                                th(PracticeWords.of(s)).attr("scope", "row"),
                                                td(hours(plan.split().of(s)))
                                                        .attr("data-skill", PracticeWords.typed(s)),
                                                td(hours(plan.doubt().usual(s).low()) + " " + Texts.say("words.to")
                                                        + " "
                                                        + hours(plan.doubt()
                                                                .usual(s)
                                                                .high())),
                                                td(places(s)).withClass("words"))))))
                        .withClass("wide")
                        .withTabindex(0)
                        .attr("role", "region")
                        .attr("aria-label", Texts.say("practice.split")),
                idle > 0 ? p(Texts.say("practice.idle", hours(idle))) : text(""));
    }

    private String places(Skill skill) {
        return String.join(
                ", ",
                plan.split().blocks().keySet().stream()
                        .filter(c -> c.skill() == skill)
                        .map(TimeSplit.Cell::facility)
                        .map(f -> PracticeWords.of(f))
                        .toList());
    }

    private DomContent forecasts() {
        List<DomContent> rows = new ArrayList<>();
        rows.add(odds(Texts.say("practice.byHabit"), plan.byHabit()));
        rows.add(odds(Texts.say("practice.byPlan"), plan.byPlan()));
        rows.add(odds(Texts.say("practice.after", plan.hours().weeks()), plan.after()));
        plan.beside().forEach(b -> rows.add(odds(PracticeWords.of(b.kind()), b.after())));
        return div(table(
                        caption(Texts.say("practice.worthMeans")),
                        ColumnHeads.of("practice.what", "practice.strokes", "practice.chance"),
                        tbody(rows.toArray(DomContent[]::new))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("practice.worth"));
    }

    private static DomContent odds(String what, RoundOdds odds) {
        return tr(
                th(what).attr("scope", "row"), td(Words.of("%.1f", odds.expected())), td(Words.percent(odds.chance())));
    }

    private DomContent gains() {
        double most = plan.gradient().gains().stream()
                .mapToDouble(g -> Math.max(Math.abs(g.chanceLow()), Math.abs(g.chanceHigh())))
                .max()
                .orElse(1);
        return div(table(
                        caption(Texts.say("practice.stepTable")),
                        ColumnHeads.of(
                                "practice.skill",
                                "practice.strokes",
                                "practice.points",
                                "gains.bar",
                                "practice.known",
                                "practice.curve"),
                        tbody(each(plan.gradient().gains(), g -> gain(g, HALF / Math.max(1e-9, most))))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("practice.step"));
    }

    private DomContent gain(SkillGain g, double scale) {
        return tr(
                th(PracticeWords.of(g.skill())
                                + (g.skill() == Skill.DRIVER_DISTANCE ? ", " + Texts.say("practice.atLeast") : ""))
                        .attr("scope", "row"),
                td(fewer(g.strokes())),
                td(String.format(
                        Locale.ROOT,
                        "%+.1f (%+.1f %s %+.1f)",
                        100 * g.chance(),
                        100 * g.chanceLow(),
                        Texts.say("words.to"),
                        100 * g.chanceHigh())),
                td(rawHtml(bar(g, scale))),
                td(Texts.say(plan.isMeasured(g.skill()) ? "practice.measured" : "practice.assumed")),
                td(Texts.say(
                        plan.setByCoach().contains(g.skill()) ? "practice.curveSet" : "practice.curveAssumed",
                        Words.of("%.0f", plan.curves().get(g.skill()).hours()),
                        Words.of("%.2f", plan.curves().get(g.skill()).floor()))));
    }

    /** Fewer strokes with a minus; what rounds to nothing without a sign. */
    private static String fewer(double strokes) {
        return Math.abs(strokes) < 0.005 ? "0.00" : Words.of("%+.2f", -strokes);
    }

    /** To the right of the axis the chance rises. */
    private static String bar(SkillGain g, double scale) {
        double w = scale * Math.abs(g.chance());
        return String.format(
                Locale.ROOT,
                "<svg class=\"gain-bar\" viewBox=\"-64 0 128 18\" aria-hidden=\"true\"><rect class=\"%s\" x=\"%.1f\""
                        + " y=\"4\" width=\"%.1f\" height=\"10\"/><path d=\"M%.1f 9H%.1fM%.1f 5V13M%.1f 5V13\"/><path"
                        + " class=\"axis\" d=\"M0 0V18\"/></svg>",
                g.chance() >= 0 ? "gained" : "lost",
                g.chance() >= 0 ? 0 : -w,
                w,
                scale * g.chanceLow(),
                scale * g.chanceHigh(),
                scale * g.chanceLow(),
                scale * g.chanceHigh());
    }

    /** The week to print and tick, session by session. */
    DomContent week(PracticeChoice choice) {
        List<DomContent> out = new ArrayList<>();
        int number = 1;
        int blocks = 0;
        for (PracticeWeek.Session session : plan.week().sessions()) {
            List<DomContent> rows = new ArrayList<>();
            for (PracticeWeek.Block block : session.blocks()) {
                rows.add(block(++blocks, block, choice));
            }
            out.add(section(
                    h2(Texts.say("practice.session", number++, session.minutes())),
                    ul(rows.toArray(DomContent[]::new)).withClass("blocks")));
        }
        out.add(p(PracticeReasons.ORDER).withClass("note"));
        out.add(cautions());
        return div(out.toArray(DomContent[]::new));
    }

    private static DomContent block(int number, PracticeWeek.Block b, PracticeChoice choice) {
        return li(
                label(
                                input().withType("checkbox").withName("done").withValue(TickedBlock.value(number, b)),
                                span(strong(Texts.say(
                                        b.balls() > 0 ? "practice.blockBalls" : "practice.block",
                                        b.minutes(),
                                        PracticeWords.of(b.skill()),
                                        PracticeWords.of(b.facility()),
                                        b.balls()))))
                        .withClass("tick"),
                b.drill()
                        .<DomContent>map(d -> p(
                                text(Texts.say("practice.blockDrill", d.name(), d.minutes(), d.most()) + " "),
                                a(Texts.say("practice.log", d.name()))
                                        .withHref("/practice/log?player="
                                                + choice.round().player().id() + "&drill=" + d.name())))
                        .orElseGet(() -> p(PracticeReasons.withoutDrill(b.skill()))));
    }

    private static DomContent cautions() {
        return div(h3(Texts.say("practice.cautions")), each(PracticeReasons.CAUTIONS, s -> p(s)))
                .withClass("note");
    }

    private static String hours(int blocks) {
        int minutes = blocks * PracticeHours.MINUTES;
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }
}
