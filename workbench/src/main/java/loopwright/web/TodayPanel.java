package loopwright.web;

import static j2html.TagCreator.each;
import static j2html.TagCreator.p;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.action.Today;
import loopwright.player.TodaysBalls;

/** What the warm-up and the coach's dial change, in sentences; nothing on a day like any other. */
final class TodayPanel {
    private static final double REACH = 1.645;
    private static final double AS_USUAL = 0.005;

    private final Today today;
    private final Units units;

    TodayPanel(Today today, Units units) {
        this.today = today;
        this.units = units;
    }

    DomContent section() {
        List<String> out = new ArrayList<>();
        today.balls().ifPresent(r -> balls(r, out));
        if (!today.dial().isEmpty()) {
            out.add(Texts.say(
                    "warm.dial",
                    Words.of("%+.1f", today.playsLongerPercent()),
                    today.dial().stream()
                            .map(s -> s.cause().label() + " " + Words.of("%+.1f", s.percent()) + ", "
                                    + s.cause().words())
                            .collect(Collectors.joining("; "))));
        }
        return j2html.TagCreator.section(each(out, sentence -> p(sentence))).withId("warm-up");
    }

    private void balls(TodaysBalls.Reading r, List<String> out) {
        out.add(Texts.say(
                r.balls() == 1 ? "warm.ball" : "warm.balls",
                r.balls(),
                side(today.seenMetres()),
                Words.of("%.0f", 100 * r.taken()),
                side(today.sideMetres()),
                side(today.sideMetres() - REACH * today.sideSdMetres()),
                side(today.sideMetres() + REACH * today.sideSdMetres())));
        out.add(Texts.say(
                "warm.spread",
                Math.abs(r.day().spread() - 1) < AS_USUAL
                        ? Texts.say("warm.asUsual")
                        : "x " + Words.of("%.2f", r.day().spread()),
                r.lengthFactor() == 1 ? Texts.say("warm.asUsual") : "x " + Words.of("%.3f", r.lengthFactor())));
    }

    private String side(double metres) {
        return Words.of("%.1f ", Math.abs(units.number(metres))) + units.unit() + " "
                + Texts.say(metres < 0 ? "side.left" : "side.right");
    }
}
