package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;

import loopwright.flight.BallFlight;
import loopwright.flight.Flight;
import loopwright.flight.FlightPoint;
import loopwright.flight.FlightSetting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlightShapeTest {
    private static final double MPH = 0.44704;

    /**
     * The height over an edge 6 m off, against our flight model. Within a third: the curve knows carry and apex only, and
     * irons differ from drivers by that much.
     */
    @ParameterizedTest
    @CsvSource({
        "driver, DRIVER, 125",
        "5-iron, IRON, 100",
        "7-iron, IRON, 95",
        "9-iron, IRON, 90",
        "56-wedge, WEDGE, 75"
    })
    void theStartOfAFullShotIsThatOfTheFlightModel(String name, Club.Family family, double mph) {
        BallFlight model = new BallFlight(FlightSetting.standard(), 0.01);
        var launch = TypicalLaunch.of(new Club(name, family)).at(mph * MPH);
        Flight flight = model.fly(launch, 0);
        double flown = model.trace(launch, 0).stream()
                .filter(p -> p.forwardMetres() >= 6)
                .mapToDouble(FlightPoint::heightMetres)
                .findFirst()
                .orElseThrow();
        double ours = FlightShape.startHeightMetres(flight.apexMetres(), flight.carryMetres(), 6);
        assertThat(ours / flown).isBetween(2.0 / 3, 4.0 / 3);
    }

    @Test
    void aShotThatComesDownBeforeTheEdgeDoesNotClearIt() {
        assertThat(FlightShape.clears(3, 10, 0, 12, 0.1)).isFalse();
        assertThat(FlightShape.clears(3, 14, 0, 12, 0.1)).isTrue();
    }

    @Test
    void aHigherEdgeNeedsAHigherShot() {
        assertThat(FlightShape.clears(4.5, 15, 0, 3, 2)).isTrue();
        assertThat(FlightShape.clears(4.5, 15, 0, 3, 3)).isFalse();
        assertThat(FlightShape.clears(7.5, 15, 0, 3, 3)).isTrue();
    }
}
