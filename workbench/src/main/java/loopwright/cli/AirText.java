package loopwright.cli;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.UserFault;
import loopwright.flight.Air;
import loopwright.flight.StandardAtmosphere;
import org.jspecify.annotations.Nullable;

/**
 * Reads the day's air: "24 C, 30.0 inHg, 50 %", any part left out taking its default (24 C, pressure of the altitude, 50 %).
 *
 * <p>Weather services give pressure reduced to sea level. With an altitude a pressure is therefore taken as reduced and
 * converted, unless it is called "station"; without one, as measured at the place.
 *
 * @param air at the place
 * @param remark a sentence about a converted pressure, or empty
 */
record AirText(Air air, String remark) {
    private static final Pattern TEMPERATURE = Pattern.compile("([+-]?\\d{1,3}(?:\\.\\d+)?)\\s*°?\\s*([cf])");
    private static final Pattern PRESSURE =
            Pattern.compile("(\\d{1,4}(?:\\.\\d+)?)\\s*(inhg|hpa|mbar|mmhg)(?:\\s+(station|sea level))?");
    private static final Pattern HUMIDITY = Pattern.compile("(\\d{1,3}(?:\\.\\d+)?)\\s*%");
    private static final double DEFAULT_CELSIUS = 24;
    private static final double DEFAULT_HUMIDITY = 0.5;

    static AirText parse(String option, String text, double altitudeMetres, boolean altitudeGiven) {
        double celsius = DEFAULT_CELSIUS;
        double humidity = DEFAULT_HUMIDITY;
        @Nullable Matcher pressure = null;
        for (String part : text.toLowerCase(Locale.ROOT).split(",", -1)) {
            String word = part.strip();
            Matcher t = TEMPERATURE.matcher(word);
            Matcher p = PRESSURE.matcher(word);
            Matcher h = HUMIDITY.matcher(word);
            if (t.matches()) {
                double value = Double.parseDouble(t.group(1));
                celsius = t.group(2).equals("f") ? (value - 32) / 1.8 : value;
            } else if (p.matches()) {
                pressure = p;
            } else if (h.matches()) {
                humidity = Double.parseDouble(h.group(1)) / 100;
            } else if (!word.isEmpty()) {
                throw refusal(option, text, "\"" + part.strip() + "\"");
            }
        }
        if (!(celsius >= -25 && celsius <= 50)) {
            throw refusal(option, text, "its temperature");
        }
        if (humidity > 1) {
            throw refusal(option, text, "its humidity");
        }
        double kelvin = celsius + Air.ZERO_CELSIUS_KELVIN;
        if (pressure == null) {
            return new AirText(Air.atAltitude(kelvin, altitudeMetres, humidity), "");
        }
        return withPressure(option, text, pressure, kelvin, humidity, altitudeMetres, altitudeGiven);
    }

    private static AirText withPressure(
            String option,
            String text,
            Matcher pressure,
            double kelvin,
            double humidity,
            double altitudeMetres,
            boolean altitudeGiven) {
        double given = Double.parseDouble(pressure.group(1)) * pascals(pressure.group(2));
        boolean reduced =
                pressure.group(3) == null ? altitudeGiven : pressure.group(3).equals("sea level");
        if (!(given >= 50_000 && given <= 109_000) || (reduced && given < 85_000)) {
            throw refusal(option, text, "its pressure");
        }
        double station = reduced ? StandardAtmosphere.stationPascals(given, altitudeMetres) : given;
        String remark = reduced && altitudeMetres != 0
                ? String.format(
                        Locale.ROOT,
                        "%s %s was taken as reduced to sea level and converted to %.2f inHg (%.0f hPa) at %.0f m; write"
                                + " \"%s %s station\" if it was measured there.",
                        pressure.group(1),
                        shown(pressure.group(2)),
                        station / pascals("inhg"),
                        station / 100,
                        altitudeMetres,
                        pressure.group(1),
                        shown(pressure.group(2)))
                : "";
        return new AirText(new Air(kelvin, station, humidity), remark);
    }

    private static String shown(String unit) {
        return switch (unit) {
            case "inhg" -> "inHg";
            case "hpa" -> "hPa";
            case "mmhg" -> "mmHg";
            default -> unit;
        };
    }

    private static double pascals(String unit) {
        return switch (unit) {
            case "inhg" -> 3386.389;
            case "mmhg" -> 133.3224;
            default -> 100;
        };
    }

    private static UserFault refusal(String option, String text, String what) {
        return new UserFault(option + " \"" + text + "\" cannot be used because of " + what
                + "; give -25 to 50 C (-13 to 122 F), 14.8 to 32.1 inHg (500 to 1,090 hPa; reduced to sea level 25.1 or more)"
                + " and 0 to 100 %, like \"24 C, 30.0 inHg, 50 %\".");
    }
}
