package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.p;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import loopwright.action.SolvedHole;
import loopwright.ground.Surface;

/** Two choices from a spot side by side: what the one costs beside the other, and where each finishes. */
final class PairPanel {
    /** Finishes less likely on both sides are left out. */
    private static final double RARE = 0.005;

    private static final double LEAST = 0.01;

    private final String first;
    private final SolvedHole.Aimed one;
    private final String second;
    private final SolvedHole.Aimed two;
    private final Units units;

    PairPanel(String first, SolvedHole.Aimed one, String second, SolvedHole.Aimed two, Units units) {
        this.first = first;
        this.one = one;
        this.second = second;
        this.two = two;
        this.units = units;
    }

    DomContent content() {
        String left = Words.club(first, one.offsetMetres(), units);
        String right = Words.club(second, two.offsetMetres(), units);
        return div(
                h3(Texts.say("pair.title", left, right)),
                p(difference()).withId("pair-difference"),
                p(Texts.say("pair.working")).withId("pair-chance").withClass("note"),
                table(
                        caption(Texts.say("pair.caption")),
                        thead(tr(
                                th(Texts.say("pair.where")).attr("scope", "col"),
                                th("1: " + left).attr("scope", "col"),
                                th("2: " + right).attr("scope", "col"))),
                        tbody(
                                tr(
                                        th(Texts.say("pair.expected")).attr("scope", "row"),
                                        td(Words.of("%.2f", one.expected())),
                                        td(Words.of("%.2f", two.expected()))),
                                each(
                                        surfaces(),
                                        s -> tr(
                                                th(Words.lie(s)).attr("scope", "row"),
                                                td(share(one, s)),
                                                td(share(two, s)))))));
    }

    private String difference() {
        double cost = two.expected() - one.expected();
        double doubt = 2 * Math.hypot(one.standardError(), two.standardError());
        String key = Math.abs(cost) < doubt ? "pair.same" : cost > 0 ? "pair.first" : "pair.second";
        return Texts.say(key, Words.of("%.2f", Math.abs(cost)), Words.of("%.2f", doubt));
    }

    private List<Surface> surfaces() {
        List<Surface> out = new ArrayList<>();
        Stream.concat(one.finish().share().keySet().stream(), two.finish().share().keySet().stream())
                .distinct()
                .filter(s -> larger(s) >= RARE)
                .sorted(Comparator.comparingDouble(this::larger).reversed())
                .forEach(out::add);
        return out;
    }

    private double larger(Surface s) {
        return Math.max(
                one.finish().share().getOrDefault(s, 0.0), two.finish().share().getOrDefault(s, 0.0));
    }

    private static String share(SolvedHole.Aimed aimed, Surface s) {
        return Words.percent(aimed.finish().share().getOrDefault(s, 0.0));
    }

    /** How sure it is, from the probability that the first beats the second. */
    static String chance(double first) {
        return Texts.say("pair.chance", told(first), told(1 - first));
    }

    /** So few draws of the player do not tell certainty. */
    private static String told(double chance) {
        return chance > 1 - LEAST
                ? Texts.say("pair.most")
                : chance < LEAST ? Texts.say("pair.least") : Words.percent(chance);
    }
}
