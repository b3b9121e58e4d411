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
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.Counting;
import loopwright.action.HowSure;
import loopwright.action.RoundPlan;
import loopwright.action.StateOfPlay;
import loopwright.action.TargetChanges;

/** The chance of the target: by the plan, played for it, how sure it is, and what is at stake on every tee. */
final class TargetPanel {
    private final RoundPlan plan;
    private final Units units;

    TargetPanel(RoundPlan plan, Units units) {
        this.plan = plan;
        this.units = units;
    }

    /** The answer in one paragraph. */
    DomContent lead() {
        Optional<StateOfPlay> state = plan.stateOfPlay();
        Optional<HowSure> sure = plan.howSure();
        List<DomContent> out = new ArrayList<>();
        out.add(text(capital(plan.counting().words(plan.target())) + ": "));
        out.add(strong(Words.percent(plan.targetProbability())).withId("target-chance"));
        sure.ifPresent(s -> out.add(text(" (" + Words.percent(s.targetLow()) + " " + Texts.say("words.to") + " "
                + Words.percent(s.targetHigh()) + ")")));
        out.add(text(" " + Texts.say("target.forMean")));
        state.ifPresent(s -> {
            out.add(text(", "));
            out.add(strong(Words.percent(s.targetPlay())));
            out.add(text(" " + Texts.say("target.forTarget")));
        });
        out.add(text("."));
        sure.ifPresent(s -> out.add(text(" "
                + Texts.say(
                        "target.sure",
                        Words.of("%.1f", s.expectedLow()),
                        Words.of("%.1f", s.expectedHigh()),
                        s.draws()))));
        return p(out.toArray(DomContent[]::new)).withClass("lead");
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    /** What is known only where the round was played for the target, or the doubt was carried through. */
    DomContent sections() {
        return div(
                plan.howSure().map(TargetPanel::measureNext).orElse(text("")),
                plan.stateOfPlay().map(this::stateOfPlay).orElse(text("")));
    }

    private static DomContent measureNext(HowSure sure) {
        List<DomContent> out = new ArrayList<>();
        sure.measureNext()
                .ifPresent(m -> out.add(p(Texts.say("target.measureNext", m.swing(), Words.of("%.2f", m.strokes())))));
        if (!sure.assumed().isEmpty()) {
            out.add(p(Texts.say("target.assumed", String.join(", ", sure.assumed())))
                    .withClass("note"));
        }
        return out.isEmpty() ? text("") : section(h2(Texts.say("target.doubt")), div(out.toArray(DomContent[]::new)));
    }

    private DomContent stateOfPlay(StateOfPlay state) {
        List<TargetChanges.Change> changes = TargetChanges.list(plan, state);
        return section(
                h2(Texts.say("target.state")),
                changes.isEmpty()
                        ? p(Texts.say("target.noChange", Words.of("%.1f", 100 * TargetChanges.WORTH_TELLING)))
                        : div(p(Texts.say("target.changesMean")), ul(each(changes, c -> li(change(c))))),
                details(summary(Texts.say("target.byTotal")), byTotal(state)),
                details(
                        summary(Texts.say("target.onTees")),
                        each(
                                plan.holes(),
                                h -> details(summary(Texts.say("holes.number", h.number())), onTee(h, state)))));
    }

    private String change(TargetChanges.Change c) {
        return Texts.say(
                "target.change",
                c.hole(),
                inHand(c.inHand()),
                Words.aimed(c.shot().club(), c.shot().landmark(), c.shot().offsetMetres(), units),
                Words.club(c.planned().club(), c.planned().offsetMetres(), units),
                Words.of("%.1f", 100 * c.shot().gain()));
    }

    private String inHand(int inHand) {
        return plan.counting().form() == Counting.Form.STABLEFORD
                ? Texts.say("target.points", -inHand)
                : Texts.say("target.inHand", inHand);
    }

    private static DomContent byTotal(StateOfPlay state) {
        return table(
                caption(Texts.say("target.byTotalMeans")),
                ColumnHeads.of("score.score", "target.mean", "target.target"),
                tbody(each(
                        state.byTotal(),
                        t -> tr(
                                th(Integer.toString(Math.abs(t.total()))).attr("scope", "row"),
                                td(Words.percent(t.meanPlay())),
                                td(Words.percent(t.targetPlay()))))));
    }

    private DomContent onTee(RoundPlan.HolePlan hole, StateOfPlay state) {
        return table(
                caption(Texts.say("target.onTee", hole.number())),
                ColumnHeads.of("target.hand", "target.mean", "target.target", "target.other"),
                tbody(each(
                        state.onTee(hole.number()),
                        t -> tr(
                                th(inHand(t.inHand())).attr("scope", "row"),
                                td(Words.percent(t.meanPlay())),
                                td(Words.percent(t.targetPlay())),
                                td(t.other()
                                                .map(o -> Words.aimed(o.club(), o.landmark(), o.offsetMetres(), units))
                                                .orElse(""))
                                        .withClass("words")))));
    }
}
