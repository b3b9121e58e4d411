package loopwright.web;

import java.util.Locale;
import java.util.Map;
import loopwright.units.Distance;

/** Lengths as the person of this bench likes to read them. */
record Units(boolean metric) {
    static final String PREFERENCE = "units";

    static Units of(Map<String, String> preferences) {
        return new Units("metres".equals(preferences.get(PREFERENCE)));
    }

    /** A length on the course: "172 yd". */
    String length(double metres) {
        return metric
                ? String.format(Locale.ROOT, "%.0f m", metres)
                : String.format(
                        Locale.ROOT, "%.0f yd", Distance.ofMetres(metres).yards());
    }

    /** A length on the green: "12 ft". */
    String shortLength(double metres) {
        return metric
                ? String.format(Locale.ROOT, "%.1f m", metres)
                : String.format(
                        Locale.ROOT, "%.0f ft", Distance.ofMetres(metres).feet());
    }

    /** A length as a bare number in the unit of {@link #unit}. */
    double number(double metres) {
        return metric ? metres : Distance.ofMetres(metres).yards();
    }

    double metres(double number) {
        return metric ? number : Distance.ofYards(number).metres();
    }

    String unit() {
        return metric ? "m" : "yd";
    }

    /** A place beside a line: " 6 yd left", or nothing where it is on the line. */
    String side(double offsetMetres) {
        String length = length(Math.abs(offsetMetres));
        if (length.startsWith("0 ")) {
            return "";
        }
        return length + (offsetMetres < 0 ? " left" : " right");
    }
}
