package loopwright.adapter.chart;

import java.util.Locale;
import loopwright.units.Distance;

/** Numbers as they are printed on charts. */
final class Wording {
    private Wording() {}

    static String yards(double metres) {
        return Math.round(Distance.ofMetres(metres).yards()) + " yd";
    }

    static String bareYards(double metres) {
        return Long.toString(Math.round(Distance.ofMetres(metres).yards()));
    }

    /** "the back tees", "tee 2". */
    static String tees(String set) {
        return set.startsWith("tee ") ? set : "the " + set + " tees";
    }

    /** A bearing as three figures and a degree sign: "012\u00b0". */
    static String bearing(double radians) {
        long degrees = Math.floorMod(Math.round(Math.toDegrees(radians)), 360L);
        return String.format(Locale.ROOT, "%03d\u00b0", degrees);
    }
}
