package loopwright.cli;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.UserFault;
import loopwright.units.Distance;

/** Reads a number with its unit as a golfer writes it ("167.7 mph", "+5m", "12 ft") and holds it to a range. */
enum Measure {
    SPEED("mph|m/s|ft/s|km/h", "mph"),
    LENGTH("m|yd|yards?|ft|feet|in", "m"),
    ANGLE("deg|degrees?|°", "deg"),
    SPIN("rpm|rev/s", "rpm");

    private static final String NUMBER = "([+-]?\\d{1,7}(?:\\.\\d{1,6})?)";

    private final Pattern pattern;
    private final String bareUnit;

    Measure(String units, String bareUnit) {
        this.pattern = Pattern.compile(NUMBER + "\\s*(" + units + ")?");
        this.bareUnit = bareUnit;
    }

    /**
     * The value in SI units.
     *
     * @param what the quantity in words, for the sentence: "a ball speed"
     * @param low and {@code high}: the accepted range, in {@code unit}
     * @param example how to write it
     */
    double parse(String option, String text, String what, double low, double high, String unit, String example) {
        Matcher m = pattern.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (m.matches()) {
            String given = m.group(2) == null ? bareUnit : m.group(2);
            double si = Double.parseDouble(m.group(1)) * perUnit(given);
            double scale = perUnit(unit);
            if (si >= low * scale - 1e-9 && si <= high * scale + 1e-9) {
                return si;
            }
        }
        throw new UserFault(String.format(
                Locale.ROOT,
                "%s \"%s\" is not %s between %s and %s %s; write it like \"%s\".",
                option,
                text,
                what,
                plain(low),
                plain(high),
                unit,
                example));
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%,d", (long) value)
                : String.format(Locale.ROOT, "%s", value);
    }

    private static double perUnit(String unit) {
        return switch (unit) {
            case "mph" -> 0.44704;
            case "ft/s", "ft", "feet" -> Distance.METRES_PER_FOOT;
            case "km/h" -> 1 / 3.6;
            case "yd", "yard", "yards" -> Distance.METRES_PER_YARD;
            case "in" -> 0.0254;
            case "deg", "degree", "degrees", "°" -> Math.PI / 180;
            case "rpm" -> Math.PI / 30;
            case "rev/s" -> 2 * Math.PI;
            default -> 1;
        };
    }
}
