package loopwright.action;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.units.Distance;

/** Lengths in sentences as a reader likes them: on the course in one unit, on greens in another. */
public record ReadLengths(LengthUnit course, boolean metricGreens) {
    /** Yards and feet. */
    public static final ReadLengths USUAL = new ReadLengths(LengthUnit.YARDS, false);

    /** Inches only where what follows cannot be read as "8 in 10". */
    private static final Pattern TOLD = Pattern.compile("(\\d+(?:\\.\\d+)?(?:(?:, | and | to )\\d+(?:\\.\\d+)?)*) "
            + "(yd|ft|paces|in(?= before| behind| past| apart| wide|[.,;]|$))\\b");

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    /** Words in which lengths stand as "104, 92 and 81 yd", "9 ft", "18 in" or "4 paces", with the lengths in these units. */
    public String told(String words) {
        return TOLD.matcher(words).replaceAll(m -> {
            boolean near = m.group(2).equals("ft") || m.group(2).equals("in");
            if (near ? !metricGreens : course == LengthUnit.YARDS) {
                return Matcher.quoteReplacement(m.group());
            }
            return Matcher.quoteReplacement(NUMBER.matcher(m.group(1))
                            .replaceAll(n -> number(Double.parseDouble(n.group()), m.group(2)))
                    + " " + sign(m.group(2)));
        });
    }

    private String number(double told, String sign) {
        return switch (sign) {
            case "ft" -> numberOf(near(Distance.ofFeet(told).metres()));
            case "in" -> numberOf(hand(Distance.ofFeet(told / 12).metres()));
            default -> Long.toString(course.whole(Distance.ofYards(told).metres()));
        };
    }

    private String sign(String told) {
        return switch (told) {
            case "ft" -> "m";
            case "in" -> "cm";
            case "yd" -> course.sign();
            default -> told;
        };
    }

    private static String numberOf(String length) {
        return length.substring(0, length.indexOf(' '));
    }

    /** "18 in" or "46 cm". */
    public String hand(double metres) {
        return metricGreens
                ? String.format(Locale.ROOT, "%.0f cm", 100 * metres)
                : String.format(
                        Locale.ROOT, "%.0f in", 12 * Distance.ofMetres(metres).feet());
    }

    /** One unit for the course; greens in feet with yards, in metres with metres. */
    public static ReadLengths in(LengthUnit unit) {
        return new ReadLengths(unit, unit == LengthUnit.METRES);
    }

    /** A place beside a line, "6 yd left"; empty where it is on it. */
    public String side(double rightMetres) {
        return course.beside(rightMetres).replace(" ", " " + course.sign() + " ");
    }

    /** A place beside a line in brackets after an aim, " (6 yd left)"; empty where it is on it. */
    public String bracketed(double rightMetres) {
        String side = side(rightMetres);
        return side.isEmpty() ? "" : " (" + side + ")";
    }

    /** "4.4 yd". */
    public String fine(double metres) {
        return String.format(Locale.ROOT, "%.1f %s", metres / course.inMetres(), course.sign());
    }

    /** "150 yd". */
    public String far(double metres) {
        return course.of(metres);
    }

    /** "32 ft" or "9.8 m". */
    public String near(double metres) {
        return metricGreens
                ? String.format(Locale.ROOT, "%.1f m", metres)
                : String.format(
                        Locale.ROOT, "%.0f ft", Distance.ofMetres(metres).feet());
    }

    /** "40 to 125 yd". */
    String far(double fromMetres, double toMetres) {
        return course.whole(fromMetres) + " to " + course.of(toMetres);
    }

    /** "6 to 10 ft". */
    String near(double fromMetres, double toMetres) {
        return numberOf(near(fromMetres)) + " to " + near(toMetres);
    }
}
