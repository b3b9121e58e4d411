package loopwright.drawing;

/** The rim of paper that keeps letters legible over lines. */
public final class Halo {
    private Halo() {}

    public static double width(double textSize) {
        return Math.max(2, textSize * 0.3);
    }
}
