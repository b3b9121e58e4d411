package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
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

import j2html.tags.DomContent;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.action.PuttAdviser;
import loopwright.player.Player;
import loopwright.putting.GreenSpeed;
import loopwright.putting.PlaneGreen;
import loopwright.units.Distance;

/** The side of the hole on which an approach is best left: putts to expect from as far all round it. */
final class ApproachSides {
    /** A putt that a good approach leaves: assumed. */
    private static final double METRES = Distance.ofFeet(15).metres();
    /** Less is no reason to aim elsewhere: assumed. */
    private static final double WORTH = 0.02;

    private ApproachSides() {}

    static DomContent of(Player player, GreenSpeed speed, double slopePercent, int falls, Units units) {
        double fall = Math.toRadians(30.0 * (falls % 12));
        double rise = -slopePercent / 100;
        List<Double> putts = PuttAdviser.around(
                new PlaneGreen(rise * Math.sin(fall), rise * Math.cos(fall)), speed, player.putting(), METRES);
        List<Integer> hours = IntStream.range(0, putts.size()).boxed().toList();
        int best = hours.stream().min(Comparator.comparing(putts::get)).orElseThrow();
        int worst = hours.stream().max(Comparator.comparing(putts::get)).orElseThrow();
        boolean same = putts.get(worst) - putts.get(best) < WORTH;
        return section(
                h2(Texts.say("sides.title")),
                same
                        ? p(Texts.say("sides.same", units.shortLength(METRES)))
                        : p(
                                strong(Texts.say("sides.best", hour(best), Words.of("%.2f", putts.get(best)))),
                                text(" " + Texts.say("sides.worst", hour(worst), Words.of("%.2f", putts.get(worst))))),
                details(
                        summary(Texts.say("score.table")),
                        table(
                                caption(Texts.say("sides.means", units.shortLength(METRES))),
                                ColumnHeads.of("sides.side", "putt.expected"),
                                tbody(each(
                                        hours,
                                        h -> tr(
                                                th(hour(h)).attr("scope", "row"),
                                                td(Words.of("%.2f", putts.get(h)))))))));
    }

    private static String hour(int hour) {
        return Texts.say("green.hour", hour == 0 ? 12 : hour);
    }
}
