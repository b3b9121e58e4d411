package loopwright.adapter.chart;

/** The rim of paper that keeps letters legible over lines. */
final class Halo {
    private Halo() {}

    static double width(double textSize) {
        return Math.max(2, textSize * 0.3);
    }
}
