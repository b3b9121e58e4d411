package loopwright.action;

import java.util.Locale;
import loopwright.units.Distance;

/** Lengths in sentences as a reader likes them: on the course in one unit, on greens in another. */
public record ReadLengths(LengthUnit course, boolean metricGreens) {
    /** Yards and feet. */
    public static final ReadLengths USUAL = new ReadLengths(LengthUnit.YARDS, false);

    /** "150 yd". */
    String far(double metres) {
        return course.of(metres);
    }

    /** "32 ft" or "9.8 m". */
    String near(double metres) {
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
        String from = near(fromMetres);
        return from.substring(0, from.indexOf(' ')) + " to " + near(toMetres);
    }
}
