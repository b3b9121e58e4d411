package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
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
import java.util.stream.Collectors;
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
    private static final int STRIP = 300;

    private final RoundReview review;
    private final Units units;

    ReviewPage(RoundReview review, Units units) {
        this.review = review;
        this.units = units;
    }

    DomContent content() {
        RoundRecord round = review.round();
        GainsTable gains = GainsTable.of(review);
        return div(
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
                section(h2(Texts.say("review.holes")), strips()),
                missing(round),
                oddities());
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

    private DomContent strips() {
        return div(table(
                        caption(Texts.say("review.stripMeans")),
                        ColumnHeads.of("holes.hole", "holes.par", "rounds.score", "gains.gained", "review.strip"),
                        tbody(each(review.round().holes(), this::strip))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("review.holes"));
    }

    private DomContent strip(HoleRecord hole) {
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
                td(hole.shots().isEmpty() ? text(counted(hole)) : rawHtml(drawn(hole)))
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

    /** The strokes along the hole, tee at the left, hole at the right; the letter is the lie, a triangle a penalty. */
    private String drawn(HoleRecord hole) {
        double whole = hole.shots().stream()
                .mapToDouble(s -> s.toHole().metres())
                .max()
                .orElse(1);
        StringBuilder out = new StringBuilder("<svg class=\"strip\" viewBox=\"-12 0 " + (STRIP + 40)
                + " 34\" role=\"img\""
                + " aria-label=\"" + HoleSvg.escaped(told(hole)) + "\"><path class=\"axis\" d=\"M0 24H" + STRIP
                + "\"/><path class=\"flag\" d=\"M" + STRIP + " 24V8L" + (STRIP + 9) + " 12L" + STRIP + " 16\"/>");
        for (ShotRecord s : hole.shots()) {
            double x = STRIP * (1 - s.toHole().metres() / Math.max(1, whole));
            out.append(String.format(
                    Locale.ROOT,
                    "<circle cx=\"%.1f\" cy=\"24\" r=\"3.5\"/><text x=\"%.1f\" y=\"14\">%s</text>%s",
                    x,
                    x,
                    letter(s.lie()),
                    s.penaltyStrokes() > 0
                            ? String.format(Locale.ROOT, "<path class=\"found\" d=\"M%.1f 27l5 7h-10z\"/>", x)
                            : ""));
        }
        return out.append("</svg>").toString();
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
        return section(h2(Texts.say("review.split")), p(Texts.say("review.needs." + round.tier())));
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
