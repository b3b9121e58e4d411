package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
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
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleGains;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Lie;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.RoundReview;
import loopwright.scoring.Share;
import loopwright.scoring.ShotRecord;
import loopwright.scoring.Tally;

/** A round looked back on: what was written down and what that can tell, gains by part, counts, and a strip of each hole. */
final class ReviewPage {
    private static final int STRIP = 400;
    private static final int EDGE = 12;
    /** Below one the ground near the flag is stretched, where most strokes are. */
    private static final double STRETCH = 0.55;

    private static final int FOOT = 44;

    private final RoundReview review;
    private final List<RoundReview> others;
    private final Units units;

    /** {@code others} are the player's other rounds of which something can be measured. */
    ReviewPage(RoundReview review, List<RoundReview> others, Units units) {
        this.review = review;
        this.others = others;
        this.units = units;
    }

    /** {@code opening} comes first; the report joins once it is made. */
    DomContent content(DomContent opening, Optional<ReportPanel> report) {
        RoundRecord round = review.round();
        GainsTable gains = GainsTable.of(review, others);
        return div(
                opening,
                p(Texts.say("review.tier." + round.tier())).withClass("note"),
                div(
                                section(
                                        h2(Texts.say("gains.title")),
                                        gains.isEmpty() ? p(Texts.say("review.noGains")) : gains.content(units),
                                        review.leftOut().isEmpty()
                                                ? text("")
                                                : p(Texts.say("review.leftOut", numbers(review.leftOut())))
                                                        .withClass("note")),
                                section(h2(Texts.say("review.counts")), counts(review.tally())))
                        .withClass("beside"),
                report.map(ReportPanel::yardsticks).orElse(text("")),
                section(
                        h2(Texts.say("review.split")),
                        report.flatMap(ReportPanel::causes).orElseGet(() -> missing(round))),
                section(h2(Texts.say("review.holes")), strips(report)),
                oddities(),
                report.map(ReportPanel::ordinary).orElse(text("")),
                report.flatMap(ReportPanel::gap)
                        .<DomContent>map(g -> section(h2(Texts.say("between.title")), g))
                        .orElse(text("")),
                report.map(ReportPanel::misses).orElse(text("")),
                report.map(ReportPanel::standing).orElse(text("")));
    }

    private static String numbers(List<Integer> holes) {
        return holes.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static DomContent counts(Tally t) {
        List<String> out = new ArrayList<>();
        out.add(Texts.say("review.scores", t.birdiesOrBetter(), t.pars(), t.bogeys(), t.doublesOrWorse()));
        share(out, "inPlay", t.teeBallsInPlay());
        share(out, "fairways", t.fairways());
        share(out, "greens", t.greens());
        share(out, "upAndDown", t.upAndDowns());
        share(out, "threePutts", t.threePutts());
        t.putts().ifPresent(n -> out.add(Texts.say("review.putts", n)));
        t.penaltyStrokes().ifPresent(n -> out.add(Texts.say("review.penalties", n)));
        return ul(each(out, w -> li(w)));
    }

    private static void share(List<String> out, String key, Share share) {
        if (share.of() > 0) {
            out.add(Texts.say("review." + key, share.made(), share.of()));
        }
    }

    private DomContent strips(Optional<ReportPanel> report) {
        return div(table(
                        caption(Texts.say("review.stripMeans")),
                        ColumnHeads.withWords(
                                List.of("review.strip"),
                                "holes.hole",
                                "holes.par",
                                "rounds.score",
                                "gains.gained",
                                "review.strip"),
                        tbody(each(review.round().holes(), h -> strip(h, report)))))
                .withClass("wide strips")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("review.holes"));
    }

    private DomContent strip(HoleRecord hole, Optional<ReportPanel> report) {
        String gained = review.holes().stream()
                .filter(g -> g.hole() == hole.number())
                .findFirst()
                .map(HoleGains::total)
                .map(v -> Words.of("%+.2f", v))
                .orElse("");
        return tr(
                th(Integer.toString(hole.number())).attr("scope", "row"),
                td(hole.par().isPresent() ? Integer.toString(hole.par().getAsInt()) : ""),
                td(hole.score().isPresent() ? Integer.toString(hole.score().getAsInt()) : "x"),
                td(gained),
                td(hole.shots().isEmpty() ? text(counted(hole)) : drawn(hole, report))
                        .withClass("words"));
    }

    /** What was counted of a hole, in words. */
    private String counted(HoleRecord hole) {
        List<String> out = new ArrayList<>();
        var c = hole.counts();
        c.teeBall().ifPresent(t -> out.add(Texts.say("review.tee", word(t.name()))));
        c.approach().ifPresent(a -> out.add(Texts.say("review.approach", word(a.name()))));
        c.penaltyStrokes().ifPresent(n -> {
            if (n > 0) {
                out.add(Texts.say("review.penalties", n));
            }
        });
        c.chips().ifPresent(n -> {
            if (n > 0) {
                out.add(Texts.say("review.chips", n));
            }
        });
        c.firstPutt().ifPresent(d -> out.add(Texts.say("review.firstPutt", units.shortLength(d.metres()))));
        c.putts().ifPresent(n -> out.add(Texts.say("review.putts", n)));
        return String.join(", ", out);
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * The strokes along the hole as hops, tee at the left, flag at the right; letters are lies, a triangle is a penalty, a
     * thick hop lost much.
     */
    private DomContent drawn(HoleRecord hole, Optional<ReportPanel> report) {
        double whole = hole.shots().stream()
                .mapToDouble(s -> s.toHole().metres())
                .max()
                .orElse(1);
        Svg svg = Svg.picture("strip", STRIP + 40.0, FOOT + 12.0, told(hole))
                .line("axis", EDGE, FOOT, EDGE + STRIP, FOOT)
                .path(
                        "flag",
                        String.format(
                                Locale.ROOT,
                                "M%1$d %2$dV%3$dL%4$d %5$dL%1$d %6$d",
                                EDGE + STRIP,
                                FOOT,
                                FOOT - 16,
                                EDGE + STRIP + 9,
                                FOOT - 12,
                                FOOT - 8));
        for (int i = 0; i < hole.shots().size(); i++) {
            int number = i + 1;
            ShotRecord s = hole.shots().get(i);
            double from = x(s, whole);
            double to = i + 1 < hole.shots().size()
                    ? x(hole.shots().get(i + 1), whole)
                    : hole.end() == HoleEnd.HOLED ? EDGE + STRIP : from;
            boolean dear = report.map(r -> r.isDear(hole.number(), number)).orElse(false);
            svg.path(
                    dear ? "hop dear" : "hop",
                    String.format(
                            Locale.ROOT,
                            "M%.1f %dQ%.1f %.1f %.1f %d",
                            from,
                            FOOT,
                            (from + to) / 2,
                            FOOT - 6 - 0.18 * Math.abs(to - from),
                            to,
                            FOOT));
        }
        for (ShotRecord s : hole.shots()) {
            double x = x(s, whole);
            svg.dot("ball", x, FOOT, 3).words("at-middle", x, FOOT + 11, letter(s.lie()));
            if (s.penaltyStrokes() > 0) {
                svg.path("found", String.format(Locale.ROOT, "M%.1f %dl5 8h-10z", x, FOOT - 22));
            }
        }
        return svg.drawn();
    }

    private static double x(ShotRecord shot, double whole) {
        return EDGE + STRIP * (1 - Math.pow(shot.toHole().metres() / Math.max(1, whole), STRETCH));
    }

    private String told(HoleRecord hole) {
        return hole.shots().stream()
                .map(s -> Texts.say("record.lie." + s.lie()) + " "
                        + (s.lie() == Lie.GREEN
                                ? units.shortLength(s.toHole().metres())
                                : units.length(s.toHole().metres())))
                .collect(Collectors.joining(", "));
    }

    private static String letter(Lie lie) {
        return Texts.say("record.lie." + lie).substring(0, 1);
    }

    /** What keeps decision, execution and luck from being told apart. */
    private static DomContent missing(RoundRecord round) {
        return p(Texts.say("review.needs." + round.tier()));
    }

    private DomContent oddities() {
        if (review.oddities().isEmpty()) {
            return text("");
        }
        String holes = review.oddities().stream()
                .map(o -> Integer.toString(o.hole()))
                .distinct()
                .collect(Collectors.joining(", "));
        return p(Texts.say("review.odd", holes)).withClass("beware");
    }
}
