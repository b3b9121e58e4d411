package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loopwright.flight.Air;
import loopwright.flight.DayConditions;
import loopwright.flight.Strike;
import loopwright.flight.Wind;
import loopwright.ground.Firmness;
import loopwright.numerics.Watch;
import org.junit.jupiter.api.Test;

class DayFlightTest {
    private static final Swing DRIVE = swing("driver", 200, 18);
    private static final Swing WOOD = swing("3-wood", 172, 16);
    private static final Swing IRON = swing("7-iron", 130, 6);
    private static final Swing WEDGE = swing("56-wedge", 70, 1);
    private static final List<Swing> BAG = List.of(DRIVE, IRON, WEDGE);

    private final Strike strike = new Strike();

    @Test
    void aStandardDayGivesBackThePattern() {
        DayFlight day = new DayFlight(BAG, DayConditions.STANDARD, Watch.NONE);
        for (Swing swing : BAG) {
            day.toward(swing, 2).land(swing.pattern().carryMetres(), 0, false, 0, 0, strike);
            // 1 mm of the launch finder and float tables
            assertThat(strike.forwardMetres).isCloseTo(swing.pattern().carryMetres(), within(0.005));
            assertThat(strike.rightMetres).isCloseTo(0, within(0.005));
            assertThat(strike.fairwayRunMetres).isCloseTo(swing.pattern().runMetres(), within(0.01));
        }
    }

    @Test
    void intoTheWindIsShorterThanDownwindIsLonger() {
        double head = land(DRIVE, wind(6, 0), 0).forwardMetres - 200;
        double tail = land(DRIVE, wind(6, 0), Math.PI).forwardMetres - 200;
        assertThat(head).isNegative();
        assertThat(tail).isPositive();
        assertThat(-head).isGreaterThan(tail);
    }

    @Test
    void aWindFromTheLeftPushesRight() {
        // aim north, wind from west
        assertThat(land(IRON, wind(5, -Math.PI / 2), 0).rightMetres).isGreaterThan(3);
        assertThat(land(IRON, wind(5, Math.PI / 2), 0).rightMetres).isLessThan(-3);
    }

    @Test
    void aHeadwindWidensThePatternAndATailwindNarrowsIt() {
        double still = spread(wind(0, 0));
        assertThat(spread(wind(7, 0))).isGreaterThan(still);
        assertThat(spread(wind(7, Math.PI))).isLessThan(still);
    }

    @Test
    void beforeTheWindABallRunsFarther() {
        for (Swing swing : List.of(DRIVE, WOOD, IRON)) {
            double still = land(swing, DayConditions.STANDARD, 0).fairwayRunMetres;
            assertThat(land(swing, wind(8, Math.PI), 0).fairwayRunMetres).isGreaterThan(still);
        }
    }

    private double spread(DayConditions day) {
        AimedSwing aimed = new DayFlight(List.of(DRIVE), day, Watch.NONE).toward(DRIVE, 0);
        aimed.land(200, 0.1, false, 0, 0, strike);
        double right = Math.atan2(strike.rightMetres, strike.forwardMetres);
        aimed.land(200, -0.1, false, 0, 0, strike);
        return right - Math.atan2(strike.rightMetres, strike.forwardMetres);
    }

    @Test
    void aLowBallMindsTheWindLess() {
        AimedSwing aimed = new DayFlight(List.of(IRON), wind(8, 0), Watch.NONE).toward(IRON, 0);
        aimed.land(100, 0, false, 0, 0, strike);
        double solid = strike.forwardMetres;
        double apex = strike.apexMetres;
        aimed.land(100, 0, true, 0, 0, strike);
        assertThat(strike.apexMetres).isLessThan(0.7 * apex);
        assertThat(strike.forwardMetres).isGreaterThan(solid);
    }

    @Test
    void thinAirCarriesFarther() {
        DayConditions high = new DayConditions(
                Air.atAltitude(297.15, 1600, 0.5),
                Wind.NONE,
                Firmness.ORDINARY,
                DayConditions.ORDINARY_GREEN_RESISTANCE);
        // 5,000 ft: about 4.6 to 6.4 % for the driver by published coefficient sets
        assertThat(land(DRIVE, high, 0).forwardMetres / 200).isBetween(1.03, 1.075);
    }

    @Test
    void gustsSpreadWithoutMovingTheMiddle() {
        DayConditions day = new DayConditions(
                Air.STANDARD, new Wind(6, 0, 1.5), Firmness.ORDINARY, DayConditions.ORDINARY_GREEN_RESISTANCE);
        AimedSwing aimed = new DayFlight(List.of(DRIVE), day, Watch.NONE).toward(DRIVE, 0);
        assertThat(aimed.isGusty()).isTrue();
        aimed.land(200, 0, false, 0, 0, strike);
        double middle = strike.forwardMetres;
        aimed.land(200, 0, false, 1, 0, strike);
        assertThat(strike.forwardMetres).isLessThan(middle - 2);
        aimed.land(200, 0, false, 0, 1, strike);
        assertThat(strike.rightMetres).isLessThan(-1); // veered to the right: pushes left
    }

    @Test
    void firmGroundAddsRun() {
        DayConditions firm =
                new DayConditions(Air.STANDARD, Wind.NONE, Firmness.FIRM, DayConditions.ORDINARY_GREEN_RESISTANCE);
        assertThat(land(DRIVE, firm, 0).fairwayRunMetres).isGreaterThan(21);
    }

    @Test
    void higherGroundIsReachedSooner() {
        land(IRON, DayConditions.STANDARD, 0);
        double level = strike.forwardMetres;
        double descent = strike.descentRadians;
        strike.shiftToHeight(5);
        double shorter = level - strike.forwardMetres;
        // along the descent, and a little more, because higher up it is flatter
        assertThat(shorter * Math.tan(descent)).isBetween(5.0, 6.0);
    }

    private Strike land(Swing swing, DayConditions day, double bearing) {
        new DayFlight(List.of(swing), day, Watch.NONE)
                .toward(swing, bearing)
                .land(swing.pattern().carryMetres(), 0, false, 0, 0, strike);
        return strike;
    }

    private static DayConditions wind(double speed, double from) {
        return new DayConditions(
                Air.STANDARD, Wind.steady(speed, from), Firmness.ORDINARY, DayConditions.ORDINARY_GREEN_RESISTANCE);
    }

    private static Swing swing(String club, double carry, double run) {
        ShotPattern pattern = new ShotPattern(carry, 0.05 * carry, 0, 0.07, 0, run, 0.15 * carry, 0.7, List.of());
        return new Swing(ClubTable.find(club).orElseThrow(), Swing.FULL, pattern, Evidence.ASSUMED);
    }
}
