package loopwright.adapter.chart;

import java.util.List;

/** How a trace is drawn: ink, width in points, and the lengths of dashes and gaps (empty: unbroken). */
record Pen(Ink ink, double width, List<Double> dashes) {
    Pen {
        dashes = List.copyOf(dashes);
        if (!(width > 0)) {
            throw new IllegalArgumentException("a pen needs a width above zero");
        }
    }

    static Pen of(Ink ink, double width) {
        return new Pen(ink, width, List.of());
    }

    Pen dashed(Double... lengths) {
        return new Pen(ink, width, List.of(lengths));
    }
}
