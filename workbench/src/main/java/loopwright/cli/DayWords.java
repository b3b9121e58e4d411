package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import loopwright.action.PlanDay;
import loopwright.flight.Air;
import loopwright.flight.Wind;
import loopwright.ground.Firmness;
import loopwright.units.Distance;

/** The day of a plan in words and as JSON, in the units it is typed in. */
final class DayWords {
    private static final double METRES_PER_SECOND_OF_MPH = 0.44704;
    private static final double PASCALS_OF_INHG = 3386.389;

    private DayWords() {}

    /** "wind 15 mph from 270 gusting 22 mph; 24 C, 30.0 inHg, 50 %; ordinary ground; greens 10 ft". */
    static String of(PlanDay day) {
        Air air = day.conditions().air();
        return String.format(
                Locale.ROOT,
                "%s; %.0f C, %.1f inHg, %.0f %%; %s ground; greens %s ft",
                wind(day.conditions().wind()),
                celsius(air),
                air.stationPascals() / PASCALS_OF_INHG,
                100 * air.relativeHumidity(),
                firmness(day.conditions().firmness()),
                trimmed(feet(day)));
    }

    static String wind(Wind wind) {
        if (wind.isStill()) {
            return "no wind";
        }
        String gusts =
                wind.isGusty() ? String.format(Locale.ROOT, " gusting %.0f mph", mph(wind.gustMetresPerSecond())) : "";
        return String.format(
                Locale.ROOT, "wind %.0f mph from %.0f%s", mph(wind.speedMetresPerSecond()), degrees(wind), gusts);
    }

    static Map<String, Object> json(PlanDay day) {
        Wind wind = day.conditions().wind();
        Air air = day.conditions().air();
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("windMph", mph(wind.speedMetresPerSecond()));
        out.put("windFromDegrees", degrees(wind));
        out.put("gustMph", mph(wind.gustMetresPerSecond()));
        out.put("airCelsius", celsius(air));
        out.put("airHectopascals", air.stationPascals() / 100);
        out.put("airHumidityPercent", 100 * air.relativeHumidity());
        out.put("airDensityKgPerCubicMetre", air.densityKgPerCubicMetre());
        out.put("firmness", firmness(day.conditions().firmness()));
        out.put("greenSpeedFeet", feet(day));
        return out;
    }

    private static double celsius(Air air) {
        return air.kelvin() - Air.ZERO_CELSIUS_KELVIN;
    }

    private static String firmness(Firmness firmness) {
        return firmness.equals(Firmness.ORDINARY) ? "ordinary" : firmness.value() < 0 ? "soft" : "firm";
    }

    private static double mph(double metresPerSecond) {
        return metresPerSecond / METRES_PER_SECOND_OF_MPH;
    }

    private static double degrees(Wind wind) {
        return Math.toDegrees(wind.fromBearingRadians());
    }

    private static double feet(PlanDay day) {
        return Distance.ofMetres(day.greens().rollMetres()).feet();
    }

    private static String trimmed(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replace(".0", "");
    }
}
