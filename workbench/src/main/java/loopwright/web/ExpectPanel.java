package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import loopwright.action.Expectation;
import loopwright.action.Expectation.Counts;

/** What a round is made of, usually and when it beats the target, and the odds of putts. */
final class ExpectPanel {
    private static final int LEFT = 34;
    private static final int WIDTH = 420;
    private static final int HEIGHT = 200;

    private final Expectation expectation;
    private final Units units;

    ExpectPanel(Expectation expectation, Units units) {
        this.expectation = expectation;
        this.units = units;
    }

    DomContent content() {
        Expectation e = expectation;
        List<DomContent> out = new ArrayList<>();
        out.add(p(
                        text(Texts.say("expect.rounds", e.rounds(), e.course(), e.tees(), e.holes(), e.par()) + " "),
                        strong(Texts.say(
                                "expect.beaten",
                                e.target(),
                                e.beaten(),
                                Words.of("%.1f", 100.0 * e.beaten() / e.rounds()))))
                .withClass("lead"));
        out.add(new TodayPanel(e.today(), units).section());
        e.typical().ifPresent(m -> out.add(p(Texts.say("expect.typical", e.target(), makeUp(m)))));
        if (e.atTarget().isEmpty()) {
            out.add(p(Texts.say("expect.few")).withClass("beware"));
        }
        out.add(div(section(h2(Texts.say("expect.made")), counts()), section(h2(Texts.say("expect.putts")), putts()))
                .withClass("beside"));
        out.add(p(Texts.say("expect.odds")).withClass("note"));
        return div(out.toArray(DomContent[]::new));
    }

    private static String makeUp(Expectation.MakeUp m) {
        Map<String, Integer> parts = new LinkedHashMap<>();
        parts.put("birdie", m.birdiesOrBetter());
        parts.put("par", m.pars());
        parts.put("bogey", m.bogeys());
        parts.put("double", m.doubles());
        parts.put("triple", m.triplesOrWorse());
        return parts.entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(e -> Texts.say("expect." + e.getKey() + (e.getValue() == 1 ? "" : "s"), e.getValue()))
                .collect(java.util.stream.Collectors.joining(", "));
    }

    private DomContent counts() {
        Map<String, ToDoubleFunction<Counts>> rows = new LinkedHashMap<>();
        rows.put("strokes", Counts::strokes);
        rows.put("birdiesOrBetter", Counts::birdiesOrBetter);
        rows.put("pars", Counts::pars);
        rows.put("bogeys", Counts::bogeys);
        rows.put("doubles", Counts::doubles);
        rows.put("triplesOrWorse", Counts::triplesOrWorse);
        rows.put("fairways", Counts::fairways);
        rows.put("greens", Counts::greens);
        rows.put("upAndDownTries", Counts::upAndDownTries);
        rows.put("upAndDownShare", c -> 10 * c.upAndDownShare());
        rows.put("putts", Counts::putts);
        rows.put("threePutts", Counts::threePutts);
        rows.put("penaltyStrokes", Counts::penalties);
        return div(table(
                        caption(Texts.say("expect.caption")),
                        ColumnHeads.of("expect.a", "expect.usual", "expect.whenBeaten", "expect.difference"),
                        tbody(each(rows.entrySet(), r -> row(r.getKey(), r.getValue())))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("expect.made"));
    }

    private DomContent row(String name, ToDoubleFunction<Counts> of) {
        double usual = of.applyAsDouble(expectation.usual());
        String words = Texts.say("expect.row." + name, expectation.drivingHoles(), expectation.holes());
        String beaten = expectation
                .atTarget()
                .map(c -> Words.of("%.1f", of.applyAsDouble(c)))
                .orElse("");
        String more = expectation
                .atTarget()
                .map(c -> Words.of("%+.1f", of.applyAsDouble(c) - usual)
                        .replace("-0.0", "0.0")
                        .replace("+0.0", "0.0"))
                .orElse("");
        return tr(
                th(words).attr("scope", "row"),
                td(Words.of("%.1f", usual)).attr("data-usual", name),
                td(beaten),
                td(more));
    }

    /** Holed, and three or more, over the distance; the table below has the numbers. */
    private DomContent putts() {
        List<Expectation.Putt> putts = expectation.putts();
        double longest = putts.get(putts.size() - 1).metres();
        Svg svg = Svg.picture("curves", WIDTH, HEIGHT, Texts.say("expect.puttPicture"));
        for (int share = 0; share <= 100; share += 25) {
            double y = y(share / 100.0);
            svg.line("rule", LEFT, y, WIDTH - 8, y).words("at-end", LEFT - 5, y + 4, Integer.toString(share));
        }
        for (Expectation.Putt putt : putts) {
            double x = x(putt.metres(), longest);
            if (Math.round(putt.metres() / 0.3048) >= 8 || putt.equals(putts.get(0))) {
                svg.words("at-middle", x, HEIGHT - 6, Words.of("%.0f", units.greenNumber(putt.metres())));
            }
        }
        svg.path("holed", trace(putts, longest, Expectation.Putt::one));
        svg.path("three", trace(putts, longest, Expectation.Putt::threeOrMore));
        Expectation.Putt middle = putts.get(putts.size() / 2);
        svg.words("at-start strong", x(middle.metres(), longest) + 8, y(middle.one()) - 6, Texts.say("expect.holed"));
        svg.words(
                "at-end beware", WIDTH - 10, y(putts.get(putts.size() - 1).threeOrMore()) - 8, Texts.say("putt.three"));
        return div(
                svg.drawn(),
                table(
                        caption(Texts.say("expect.puttCaption")),
                        ColumnHeads.of("expect.from", "expect.holed", "putt.three"),
                        tbody(each(
                                putts,
                                t -> tr(
                                        th(units.shortLength(t.metres())).attr("scope", "row"),
                                        td(Words.of("%.0f", 100 * t.one())),
                                        td(Words.of("%.0f", 100 * t.threeOrMore())))))));
    }

    private static String trace(
            List<Expectation.Putt> putts, double longest, ToDoubleFunction<Expectation.Putt> share) {
        StringBuilder d = new StringBuilder();
        for (Expectation.Putt putt : putts) {
            d.append(String.format(
                    Locale.ROOT,
                    "%s%.1f %.1f",
                    d.length() == 0 ? "M" : "L",
                    x(putt.metres(), longest),
                    y(share.applyAsDouble(putt))));
        }
        return d.toString();
    }

    private static double x(double metres, double longest) {
        return LEFT + (WIDTH - LEFT - 12) * metres / longest;
    }

    private static double y(double share) {
        return 10 + (HEIGHT - 34) * (1 - share);
    }
}
