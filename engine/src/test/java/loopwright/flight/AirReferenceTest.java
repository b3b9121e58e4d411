package loopwright.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class AirReferenceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/flight/iso-2533.csv", useHeadersInDisplayName = true)
    void standardAtmosphere(double height, double kelvin, double pascals, double density) {
        assertThat(StandardAtmosphere.kelvinAt(height)).isCloseTo(kelvin, within(0.005)); // printed digits
        assertThat(StandardAtmosphere.pascalsAt(height)).isCloseTo(pascals, within(0.5)); // rounding of the exponent
        assertThat(StandardAtmosphere.densityAt(height)).isCloseTo(density, within(0.0002)); // table print precision
    }

    @ParameterizedTest
    @CsvSource({
        // celsius, pascals, humidity, density: printed table of a moist air example (760 mmHg, dew point 10 C), 3
        // digits
        "20, 101325, 0.525, 1.199",
        // computed from the mixture formula elsewhere
        "20, 101325, 0.5, 1.1989",
        "20, 101325, 0, 1.2041",
        "23.889, 101325, 0.5, 1.1818",
        "35, 101325, 1, 1.1215",
        "35, 101325, 0, 1.1455",
        // air of the governing body's overall distance standard: 75 F, 30.00 inHg, 50 % (from memory), density computed
        "23.889, 101591.7, 0.5, 1.1849"
    })
    void moistAir(double celsius, double pascals, double humidity, double density) {
        Air air = new Air(celsius + Air.ZERO_CELSIUS_KELVIN, pascals, humidity);
        assertThat(air.densityKgPerCubicMetre()).isCloseTo(density, within(0.001)); // table print precision
    }

    @Test
    void viscosityAtFifteenCelsius() {
        Air air = Air.atAltitude(288.15, 0, 0);
        assertThat(air.viscosityPascalSeconds()).isCloseTo(1.789e-5, within(0.0005e-5)); // printed digits
        assertThat(air.kinematicViscosity()).isCloseTo(1.4607e-5, within(0.0005e-5)); // printed digits
    }

    @ParameterizedTest
    @CsvSource({"101325, 1000", "102500, 1609.34", "99000, 300"})
    void seaLevelPressureIsTheStandardAtmosphereShifted(double seaLevel, double height) {
        // Definition: the station pressure p at H and the sea level pressure are on one standard column, so climbing
        // back
        // down by H returns it. Computed here with the height that has pressure p, not with the formula under test.
        double station = StandardAtmosphere.stationPascals(seaLevel, height);
        double pressureHeight = heightWithPressure(station);
        assertThat(StandardAtmosphere.pascalsAt(pressureHeight - height))
                .isCloseTo(seaLevel, within(0.01)); // bisection
    }

    private static double heightWithPressure(double pascals) {
        double low = -1000;
        double high = 6000;
        while (high - low > 1e-7) {
            double middle = (low + high) / 2;
            if (StandardAtmosphere.pascalsAt(middle) > pascals) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
