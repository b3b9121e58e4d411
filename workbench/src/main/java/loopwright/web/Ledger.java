package loopwright.web;

import j2html.tags.DomContent;

/** Signed bars from one axis with the whiskers of their interval: a row of a ledger drawn. */
final class Ledger {
    private static final double HALF = 62;
    private static final double HEIGHT = 18;
    private static final double MIDDLE = HEIGHT / 2;

    private final double perStroke;
    private final boolean moreIsBetter;

    /** {@code most} is the largest value that has to be shown, either way; less than a stroke is drawn as a part of one. */
    Ledger(double most, boolean moreIsBetter) {
        perStroke = HALF / Math.max(1, most);
        this.moreIsBetter = moreIsBetter;
    }

    /** What helps is filled, what costs is open. */
    DomContent bar(double value) {
        return bar(value, Double.NaN, Double.NaN);
    }

    /** {@code low} and {@code high} are the ends of the interval, NaN where there is none. */
    DomContent bar(double value, double low, double high) {
        double axis = HALF + 2;
        double width = perStroke * Math.abs(value);
        Svg svg = Svg.beside("gain-bar", 2 * axis, HEIGHT)
                .rectangle(
                        value >= 0 == moreIsBetter ? "gained" : "lost",
                        value >= 0 ? axis : axis - width,
                        4,
                        width,
                        HEIGHT - 8);
        if (!Double.isNaN(low)) {
            double from = axis + perStroke * low;
            double to = axis + perStroke * high;
            svg.line("whisker", from, MIDDLE, to, MIDDLE)
                    .line("whisker", from, 5, from, HEIGHT - 5)
                    .line("whisker", to, 5, to, HEIGHT - 5);
        }
        return svg.line("axis", axis, 0, axis, HEIGHT).drawn();
    }

    /** "+0.35 (-0.1 to +0.8)". */
    static String number(double value, double low, double high) {
        return Words.of("%+.2f", value)
                + (Double.isNaN(low)
                        ? ""
                        : " (" + Words.of("%+.1f", low) + " " + Texts.say("words.to") + " " + Words.of("%+.1f", high)
                                + ")");
    }
}
