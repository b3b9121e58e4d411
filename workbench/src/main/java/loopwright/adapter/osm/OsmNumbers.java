package loopwright.adapter.osm;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;

/** Numbers as mappers write them; what cannot be read is null or empty, never an exception. */
final class OsmNumbers {
    private static final Pattern REF = Pattern.compile("^\\D{0,6}0*(\\d{1,2})(?:st|nd|rd|th)?\\b.*$");
    private static final Pattern LENGTH =
            Pattern.compile("^([0-9]+(?:[.,][0-9]+)?)\\s*(m|metres?|meters?|yds?|yards?|ft|feet|km)?\\.?$");

    private OsmNumbers() {}

    static @Nullable Long id(String text) {
        try {
            return Long.valueOf(text);
        } catch (NumberFormatException e) {
            return null;
        }
    }

    /** Degrees as a multiple of 1e-7, or null if unreadable or beyond the limit. */
    static @Nullable Integer degreesE7(String text, double limit) {
        try {
            return degreesE7(Double.parseDouble(text), limit);
        } catch (NumberFormatException e) {
            return null;
        }
    }

    static @Nullable Integer degreesE7(double degrees, double limit) {
        return Math.abs(degrees) <= limit ? (int) Math.round(degrees * 1e7) : null;
    }

    /** The number of a hole in a ref such as "7", "07", "#7", "T1" or "1st". */
    static OptionalInt holeNumber(String ref) {
        Matcher m = REF.matcher(ref.strip());
        return m.matches() ? OptionalInt.of(Integer.parseInt(m.group(1))) : OptionalInt.empty();
    }

    static OptionalInt wholeNumber(String text) {
        return text.strip().matches("\\d{1,4}") ? OptionalInt.of(Integer.parseInt(text.strip())) : OptionalInt.empty();
    }

    /** Metres from "320", "320 m", "350 yd"; a number without a unit is metres, as OSM documents for dist. */
    static OptionalDouble metres(String text) {
        Matcher m = LENGTH.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!m.matches()) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(m.group(1).replace(',', '.'));
        String unit = m.group(2) == null ? "m" : m.group(2);
        double factor = unit.startsWith("y")
                ? Distance.METRES_PER_YARD
                : unit.startsWith("f") ? Distance.METRES_PER_FOOT : unit.equals("km") ? 1000 : 1;
        return OptionalDouble.of(value * factor);
    }
}
