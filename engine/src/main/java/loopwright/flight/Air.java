package loopwright.flight;

/**
 * The air of the day: rho = p_d / (R_d T) + p_v / (R_v T), with vapour pressure p_v = RH x 611.2 exp(17.62 t / (243.12
 * + t)) (t in Celsius) and p_d = p - p_v.
 *
 * <p>Sources: ideal gas mixture, R_d 287.05287 and R_v 461.495 J/(kg K); Magnus form of the vapour pressure as in the
 * WMO guide (from memory); Sutherland's viscosity mu = 1.458e-6 T^1.5 / (T + 110.4), US Standard Atmosphere 1976 (from
 * memory). The pressure is the one at the place (station pressure), never the one reduced to sea level. Valid for
 * weather in which golf is played, -30 to 55 C; the accuracy is in {@code docs/validation.md}.
 *
 * @param kelvin temperature, 240 to 330
 * @param stationPascals pressure at the place, 40 kPa to 110 kPa
 * @param relativeHumidity 0 to 1
 */
public record Air(double kelvin, double stationPascals, double relativeHumidity) {
    public static final double ZERO_CELSIUS_KELVIN = 273.15;

    /** The air patterns are stated in: 24 C, sea level, 50 % humidity. */
    public static final Air STANDARD = atAltitude(24 + ZERO_CELSIUS_KELVIN, 0, 0.5);

    private static final double VAPOUR_GAS_CONSTANT = 461.495;

    public Air {
        if (!(kelvin >= 240 && kelvin <= 330)) {
            throw new IllegalArgumentException("air temperature lies between 240 and 330 K, not " + kelvin);
        }
        if (!(stationPascals >= 40_000 && stationPascals <= 110_000)) {
            throw new IllegalArgumentException("station pressure lies between 40 and 110 kPa, not " + stationPascals);
        }
        if (!(relativeHumidity >= 0 && relativeHumidity <= 1)) {
            throw new IllegalArgumentException("relative humidity lies between 0 and 1, not " + relativeHumidity);
        }
    }

    /** Air whose pressure is the standard one of its height; temperature and humidity stay as given. */
    public static Air atAltitude(double kelvin, double altitudeMetres, double relativeHumidity) {
        return new Air(kelvin, StandardAtmosphere.pascalsAt(altitudeMetres), relativeHumidity);
    }

    public double celsius() {
        return kelvin - ZERO_CELSIUS_KELVIN;
    }

    public double densityKgPerCubicMetre() {
        double vapour = relativeHumidity * saturationPascals(celsius());
        return (stationPascals - vapour) / (StandardAtmosphere.DRY_GAS_CONSTANT * kelvin)
                + vapour / (VAPOUR_GAS_CONSTANT * kelvin);
    }

    public double viscosityPascalSeconds() {
        return 1.458e-6 * Math.pow(kelvin, 1.5) / (kelvin + 110.4);
    }

    public double kinematicViscosity() {
        return viscosityPascalSeconds() / densityKgPerCubicMetre();
    }

    private static double saturationPascals(double celsius) {
        return 611.2 * Math.exp(17.62 * celsius / (243.12 + celsius));
    }
}
