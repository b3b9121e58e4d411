package loopwright.web;

import static j2html.TagCreator.div;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.HowSure;
import loopwright.action.PlayerRecords;
import loopwright.action.RoundPlan;
import loopwright.action.Standing;
import loopwright.action.StateOfPlay;

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

    /** How far the chances of a player were held against his real scores. */
    static DomContent standing(PlayerRecords records, String player) {
        return p(capital(Standing.of(records, player).sentence()) + ".").withClass("note");
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    /** What is known only where the round was played for the target, or the doubt was carried through. */
    DomContent sections() {
        return div(
                plan.howSure().map(TargetPanel::measureNext).orElse(text("")),
                plan.stateOfPlay()
                        .map(s -> new StatePanel(plan, s, units).section())
                        .orElse(text("")));
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
}
