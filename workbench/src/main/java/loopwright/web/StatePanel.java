package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
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
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import loopwright.action.Counting;
import loopwright.action.RoundPlan;
import loopwright.action.StateOfPlay;
import loopwright.action.TargetChanges;

/** What playing for the target is worth: the chance on every tee by strokes in hand, and the tee shots that change. */
final class StatePanel {
    private static final double[] LEVELS = {0.1, 0.25, 0.5, 0.75, 0.9};
    private static final int LEFT = 46;
    private static final int COLUMN = 36;
    /** The holes of a short round stand farther apart, together as wide as this. */
    private static final int LEAST_WIDTH = 240;

    private static final int RIGHT = 46;
    private static final int HEIGHT = 300;
    private static final int TOP = 14;
    private static final int FOOT = 30;

    private final RoundPlan plan;
    private final StateOfPlay state;
    private final Units units;
    private final int column;

    StatePanel(RoundPlan plan, StateOfPlay state, Units units) {
        this.plan = plan;
        this.state = state;
        this.units = units;
        this.column = Math.max(COLUMN, LEAST_WIDTH / plan.holes().size());
    }

    /** The answer in a paragraph, then all of it. */
    DomContent content() {
        return div(new TargetPanel(plan, units).lead(), section());
    }

    DomContent section() {
        List<TargetChanges.Change> changes = TargetChanges.list(plan, state);
        return j2html.TagCreator.section(
                        h2(Texts.say("target.state")),
                        div(
                                        div(
                                                chart(),
                                                p(Texts.say("target.chart")).withClass("note")),
                                        changes.isEmpty()
                                                ? p(Texts.say(
                                                        "target.noChange",
                                                        Words.of("%.1f", 100 * TargetChanges.WORTH_TELLING)))
                                                : div(
                                                        p(Texts.say("target.changesMean")),
                                                        ul(each(changes, c -> li(change(c))))))
                                .withClass("beside"),
                        details(summary(Texts.say("target.byTotal")), byTotal()),
                        details(
                                summary(Texts.say("target.onTees")),
                                each(
                                        plan.holes(),
                                        h -> details(summary(Texts.say("holes.number", h.number())), onTee(h)))))
                .withId("state");
    }

    private boolean points() {
        return plan.counting().form() == Counting.Form.STABLEFORD;
    }

    /** Lines of equal chance over the holes, each with its number, like pressure on a weather chart. */
    private DomContent chart() {
        List<List<OptionalDouble>> lines = new ArrayList<>();
        for (double level : LEVELS) {
            lines.add(IntStream.range(0, plan.holes().size())
                    .mapToObj(i -> ahead(i, level))
                    .toList());
        }
        double most = lines.stream()
                .flatMap(List::stream)
                .mapToDouble(v -> Math.abs(v.orElse(0)))
                .max()
                .orElse(1);
        double reach = Math.ceil(most + 0.5);
        double width = LEFT + column * plan.holes().size() + RIGHT;
        Svg svg = Svg.picture("state", width, HEIGHT, Texts.say("target.picture"));
        double step = reach > 6 ? 4 : reach > 3 ? 2 : 1;
        for (double v = -step * Math.floor(reach / step); v <= reach; v += step) {
            svg.line(v == 0 ? "axis" : "rule", LEFT, y(v, reach), width - RIGHT + 4, y(v, reach))
                    .words("at-end", LEFT - 6, y(v, reach) + 4, v == 0 ? "0" : Words.of("%+.0f", v));
        }
        for (int i = 0; i < plan.holes().size(); i++) {
            svg.words(
                    "at-middle",
                    x(i),
                    HEIGHT - 8,
                    Integer.toString(plan.holes().get(i).number()));
        }
        for (int k = 0; k < LEVELS.length; k++) {
            line(svg, LEVELS[k], lines.get(k), reach);
        }
        return svg.drawn();
    }

    /** How far ahead of what the plan still needs a chance is reached on a tee: fewer strokes needed, or more in hand. */
    private OptionalDouble ahead(int hole, double level) {
        double needed = 0;
        for (RoundPlan.HolePlan h : plan.holes().subList(hole, plan.holes().size())) {
            needed += plan.counting().form() == Counting.Form.STROKES
                    ? h.expected()
                    : plan.total().mean() / plan.holes().size();
        }
        OptionalDouble inHand = inHandFor(state.onTee(plan.holes().get(hole).number()), level);
        return inHand.isPresent() ? OptionalDouble.of(inHand.getAsDouble() - needed) : inHand;
    }

    /**
     * A line with its chance written where the lines lie farthest apart, on the first tee; a tee without neighbours is a
     * level stretch.
     */
    private void line(Svg svg, double level, List<OptionalDouble> ahead, double reach) {
        StringBuilder d = new StringBuilder();
        int first = -1;
        for (int i = 0; i < ahead.size(); i++) {
            if (ahead.get(i).isPresent()) {
                double y = y(ahead.get(i).getAsDouble(), reach);
                boolean before = isKnown(ahead, i - 1);
                double aside = before || isKnown(ahead, i + 1) ? 0 : 0.4 * column;
                d.append(String.format(Locale.ROOT, "%s%.1f %.1f", before ? "L" : "M", x(i) - aside, y));
                if (aside > 0) {
                    d.append(String.format(Locale.ROOT, "H%.1f", x(i) + aside));
                }
                first = first < 0 ? i : first;
            }
        }
        if (first >= 0) {
            String words = Words.of("%.0f %%", 100 * level);
            double here = ahead.get(first).getAsDouble();
            boolean rises = isKnown(ahead, first + 1) && ahead.get(first + 1).getAsDouble() > here;
            svg.path(level == 0.5 ? "even" : "level", d.toString())
                    .words("at-start", x(first), y(here, reach) + (rises ? 13 : -4), words);
        }
    }

    private static boolean isKnown(List<OptionalDouble> ahead, int hole) {
        return hole >= 0 && hole < ahead.size() && ahead.get(hole).isPresent();
    }

    /** Strokes in hand at which the chance crosses a level, between two whole numbers straight. */
    private static OptionalDouble inHandFor(List<StateOfPlay.OnTee> tees, double level) {
        for (int i = 1; i < tees.size(); i++) {
            StateOfPlay.OnTee a = tees.get(i - 1);
            StateOfPlay.OnTee b = tees.get(i);
            if (a.targetPlay() < level && b.targetPlay() >= level) {
                return OptionalDouble.of(a.inHand()
                        + (b.inHand() - a.inHand()) * (level - a.targetPlay()) / (b.targetPlay() - a.targetPlay()));
            }
        }
        return OptionalDouble.empty();
    }

    private double x(int hole) {
        return LEFT + column * (hole + 0.5);
    }

    private static double y(double ahead, double reach) {
        return TOP + (HEIGHT - TOP - FOOT) * (reach - ahead) / (2 * reach);
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
        return points() ? Texts.say("target.points", -inHand) : Texts.say("target.inHand", inHand);
    }

    private DomContent byTotal() {
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

    private DomContent onTee(RoundPlan.HolePlan hole) {
        List<DomContent> rows = new ArrayList<>();
        for (StateOfPlay.OnTee t : state.onTee(hole.number())) {
            rows.add(tr(
                    th(inHand(t.inHand())).attr("scope", "row"),
                    td(Words.percent(t.meanPlay())),
                    td(Words.percent(t.targetPlay())),
                    td(t.other()
                                    .map(o -> Words.aimed(o.club(), o.landmark(), o.offsetMetres(), units))
                                    .orElse(""))
                            .withClass("words")));
        }
        return table(
                caption(Texts.say("target.onTee", hole.number())),
                ColumnHeads.withWords(
                        List.of("target.other"), "target.hand", "target.mean", "target.target", "target.other"),
                tbody(rows.toArray(DomContent[]::new)));
    }
}
