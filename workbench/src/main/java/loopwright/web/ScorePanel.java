package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.RoundPlan;
import loopwright.strategy.ScoreDistribution;

/** The score to expect: in words, as bars with the target's line, and as a table. */
final class ScorePanel {
    private static final double SHOWN = 0.001;
    private static final int BAR = 22;
    private static final int HEIGHT = 150;
    private static final int FOOT = 34;

    private final RoundPlan plan;

    ScorePanel(RoundPlan plan) {
        this.plan = plan;
    }

    DomContent section() {
        ScoreDistribution total = plan.total();
        return j2html.TagCreator.section(
                h2(Texts.say("score.title")),
                p(Texts.say(
                                "score.words",
                                Words.of("%.1f", Math.abs(total.mean())),
                                Words.of("%.1f", total.standardDeviation()),
                                Words.of("%.1f", plan.habitExpected())))
                        .withId("score-words"),
                rawHtml(bars(scores())),
                details(summary(Texts.say("score.table")), numbers(scores())));
    }

    /** Points count below zero, so that less is better in every form. */
    private int limit() {
        return plan.counting().limit(plan.target());
    }

    private List<Integer> scores() {
        List<Integer> out = new ArrayList<>();
        for (int s = plan.total().lowest(); s <= plan.total().highest(); s++) {
            if (plan.total().probability(s) >= SHOWN) {
                out.add(s);
            }
        }
        return out;
    }

    /** Bars up to the target are filled, those beyond it are open: told apart without colour. */
    private String bars(List<Integer> scores) {
        double most =
                scores.stream().mapToDouble(plan.total()::probability).max().orElse(1);
        int width = BAR * scores.size() + 20;
        StringBuilder out = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg class=\"bars\" width=\"%.0f\" viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\">",
                1.6 * width,
                width,
                HEIGHT + FOOT,
                Texts.say("score.picture")));
        for (int i = 0; i < scores.size(); i++) {
            int score = scores.get(i);
            double h = (HEIGHT - 20) * plan.total().probability(score) / most;
            double x = 10 + BAR * i;
            out.append(String.format(
                    Locale.ROOT,
                    "<rect class=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"%d\" height=\"%.1f\"/>"
                            + "<text x=\"%.1f\" y=\"%d\">%d</text>",
                    score <= limit() ? "within" : "over",
                    x + 2,
                    HEIGHT - h,
                    BAR - 4,
                    h,
                    x + BAR / 2.0,
                    HEIGHT + 15,
                    Math.abs(score)));
            if (score == limit()) {
                out.append(String.format(
                        Locale.ROOT,
                        "<path class=\"limit\" d=\"M%.1f 4V%d\"/><text class=\"limit\" x=\"%.1f\" y=\"%d\">%s</text>",
                        x + BAR,
                        HEIGHT + 20,
                        x + BAR / 2.0,
                        HEIGHT + 31,
                        Texts.say("score.target")));
            }
        }
        return out.append("</svg>").toString();
    }

    private DomContent numbers(List<Integer> scores) {
        return table(
                caption(Texts.say("score.caption")),
                ColumnHeads.of("score.score", "score.chance", "score.orBetter"),
                tbody(each(
                        scores,
                        s -> tr(
                                th(Integer.toString(Math.abs(s))).attr("scope", "row"),
                                td(Words.percent(plan.total().probability(s))),
                                td(Words.percent(plan.total().probabilityAtMost(s)))))));
    }
}
