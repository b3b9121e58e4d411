package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.action.ReadLengths;
import loopwright.action.Today;
import loopwright.player.TodaysBalls;

/** Prints what the warm-up and the coach's dial change. */
final class TodayPage {
    private final PrintWriter out;
    private final ReadLengths lengths;

    TodayPage(PrintWriter out, ReadLengths lengths) {
        this.out = out;
        this.lengths = lengths;
    }

    void print(Today today) {
        today.balls().ifPresent(r -> balls(today, r));
        if (!today.dial().isEmpty()) {
            line(
                    "The coach's dial: plays %+.1f %% longer (%s; common practice, no source). Air, wind, height, ground and"
                            + " lies are computed beside it.",
                    today.playsLongerPercent(),
                    today.dial().stream()
                            .map(s -> String.format(
                                    Locale.ROOT,
                                    "%s %+.1f, %s",
                                    s.cause().label(),
                                    s.percent(),
                                    s.cause().words()))
                            .collect(Collectors.joining("; ")));
        }
    }

    private void balls(Today today, TodaysBalls.Reading r) {
        double low = today.sideMetres() - 1.645 * today.sideSdMetres();
        double high = today.sideMetres() + 1.645 * today.sideSdMetres();
        line(
                "Today: your %s lay %s of what your pattern says (at driver length); %.0f of 100 of that is taken, so the"
                        + " plan counts on %s (%s to %s, 9 in 10).",
                r.balls() == 1 ? "one ball" : r.balls() + " balls",
                side(today.seenMetres()),
                100 * r.taken(),
                side(today.sideMetres()),
                side(low),
                side(high));
        line(
                "Spread %s; %s. Your shape is planned with, not corrected.",
                Math.abs(r.day().spread() - 1) < 0.005
                        ? "as usual"
                        : String.format(Locale.ROOT, "x %.2f", r.day().spread()),
                r.lengthFactor() == 1
                        ? "lengths as usual"
                        : String.format(Locale.ROOT, "lengths x %.3f", r.lengthFactor()));
    }

    /** "4.4 yd left"; "0.0 yd" has no side. */
    private String side(double metres) {
        String size = lengths.fine(Math.abs(metres));
        return size.startsWith("0.0 ") ? size : size + (metres < 0 ? " left" : " right");
    }

    private void line(String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values));
    }
}
