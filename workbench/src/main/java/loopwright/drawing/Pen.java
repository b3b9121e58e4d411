package loopwright.drawing;

import java.util.List;

/** How a trace is drawn: ink, width in points, and the lengths of dashes and gaps (empty: unbroken). */
public record Pen(Ink ink, double width, List<Double> dashes) {
    public Pen {
        dashes = List.copyOf(dashes);
        if (!(width > 0)) {
            throw new IllegalArgumentException("a pen needs a width above zero");
        }
    }

    public static Pen of(Ink ink, double width) {
        return new Pen(ink, width, List.of());
    }

    public Pen dashed(Double... lengths) {
        return new Pen(ink, width, List.of(lengths));
    }
}
