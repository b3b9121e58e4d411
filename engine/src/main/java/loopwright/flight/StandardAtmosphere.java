package loopwright.flight;

/**
 * The standard atmosphere of the lowest layer: T = T0 - L H, p = p0 (T / T0)^n with n = g / (R L).
 *
 * <p>Source: ISO 2533:1975 / ICAO Doc 7488; T0 288.15 K, p0 101325 Pa, L 6.5 K/km, R 287.05287 J/(kg K), g 9.80665
 * m/s2. Valid to 11 km of geopotential height H; golf is played below 5 km, where geometric and geopotential height
 * differ by less than 4 m.
 */
public final class StandardAtmosphere {
    static final double GRAVITY = 9.80665;
    static final double DRY_GAS_CONSTANT = 287.05287;

    private static final double SEA_LEVEL_KELVIN = 288.15;
    private static final double SEA_LEVEL_PASCALS = 101325;
    private static final double LAPSE_KELVIN_PER_METRE = 0.0065;
    private static final double EXPONENT = GRAVITY / (DRY_GAS_CONSTANT * LAPSE_KELVIN_PER_METRE);

    private StandardAtmosphere() {}

    public static double kelvinAt(double altitudeMetres) {
        return SEA_LEVEL_KELVIN - LAPSE_KELVIN_PER_METRE * altitudeMetres;
    }

    public static double pascalsAt(double altitudeMetres) {
        return SEA_LEVEL_PASCALS * Math.pow(kelvinAt(altitudeMetres) / SEA_LEVEL_KELVIN, EXPONENT);
    }

    public static double densityAt(double altitudeMetres) {
        return pascalsAt(altitudeMetres) / (DRY_GAS_CONSTANT * kelvinAt(altitudeMetres));
    }

    /**
     * The pressure a barometer shows at a height, from the pressure "reduced to sea level" that weather services and
     * airfields give: the height in the standard atmosphere with that pressure at its foot.
     */
    public static double stationPascals(double seaLevelPascals, double altitudeMetres) {
        double foot = Math.pow(seaLevelPascals / SEA_LEVEL_PASCALS, 1 / EXPONENT);
        double ratio = foot - LAPSE_KELVIN_PER_METRE * altitudeMetres / SEA_LEVEL_KELVIN;
        return SEA_LEVEL_PASCALS * Math.pow(ratio, EXPONENT);
    }
}
