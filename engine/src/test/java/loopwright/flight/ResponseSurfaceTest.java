package loopwright.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import loopwright.ground.Firmness;
import org.junit.jupiter.api.Test;

class ResponseSurfaceTest {
    private static final LaunchStyle DRIVER =
            speed -> new Launch(speed, Math.toRadians(11), 0, Math.min(3.6 * speed, 300), 0);
    private static final LaunchStyle IRON = speed -> new Launch(speed, Math.toRadians(17), 0, 13.8 * speed, 0);
    private static final LaunchStyle WEDGE = speed -> new Launch(speed, Math.toRadians(30), 0, 25 * speed, 0);

    @Test
    void everyNodeFliesToItsCarryAndDirectionInStillAir() {
        LaunchGrid grid = new LaunchGrid(DRIVER, 220);
        BallFlight still = new BallFlight(FlightSetting.standard());
        for (int c = 0; c < LaunchGrid.CARRIES; c++) {
            for (int d = 0; d < LaunchGrid.DIRECTIONS; d++) {
                Flight flight = still.fly(grid.at(c, d), 0);
                assertThat(flight.carryMetres()).isCloseTo((c + 1) * 22.0, within(0.005)); // a few Newton tolerances
                assertThat(flight.directionRadians()).isCloseTo(LaunchGrid.direction(d), within(1e-6));
            }
        }
    }

    @Test
    void aStandardDayChangesNothing() {
        StrikeTable table = new ResponseSurface(
                        new LaunchGrid(IRON, 140), DayConditions.STANDARD, DayGround.of(DayConditions.STANDARD))
                .toward(1.3);
        Strike out = new Strike();
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 200; i++) {
            double carry = 180 * random.nextDouble();
            double direction = 0.8 * random.nextDouble() - 0.4;
            table.read(carry, direction, out);
            // the Newton tolerance of the nodes
            assertThat(out.forwardMetres).isCloseTo(carry * Math.cos(direction), within(0.005));
            assertThat(out.rightMetres).isCloseTo(carry * Math.sin(direction), within(0.005));
        }
    }

    @Test
    void statedErrorHoldsAgainstFlightsOfTheirOwn() {
        double worst = 0;
        SplittableRandom random = new SplittableRandom(11);
        for (LaunchStyle style : new LaunchStyle[] {DRIVER, IRON, WEDGE}) {
            double usual = style == DRIVER ? 220 : style == IRON ? 140 : 80;
            LaunchGrid grid = new LaunchGrid(style, usual);
            for (double speed : new double[] {4, 7, 10}) {
                Wind wind = Wind.steady(speed, 2 * Math.PI * random.nextDouble());
                Air air = Air.atAltitude(280 + 30 * random.nextDouble(), 1500 * random.nextDouble(), 0.5);
                worst = Math.max(worst, worstError(style, grid, usual, air, wind, random));
            }
        }
        assertThat(worst).isLessThan(ResponseSurface.LARGEST_ERROR_METRES);
    }

    @Test
    void aShiftToOtherGroundFollowsTheEndOfTheFlight() {
        BallFlight flight = new BallFlight(FlightSetting.standard());
        Strike out = new Strike();
        for (LaunchStyle style : new LaunchStyle[] {DRIVER, IRON, WEDGE}) {
            double usual = style == DRIVER ? 220 : style == IRON ? 140 : 80;
            LaunchGrid grid = new LaunchGrid(style, usual);
            StrikeTable table =
                    new ResponseSurface(grid, DayConditions.STANDARD, DayGround.of(DayConditions.STANDARD)).toward(0);
            for (double rise : new double[] {-20, -10, -5, -2, 2, 5, 10}) {
                table.read(usual, 0, out);
                out.shiftToHeight(rise);
                double exact = flight.fly(grid.usual(), rise).forwardMetres();
                // lift is about, not exactly, half of gravity; uphill the path is flatter and it counts for more
                double share = rise < 0 ? 0.05 : 0.08;
                assertThat(out.forwardMetres).isCloseTo(exact, within(0.02 + share * Math.abs(rise)));
            }
        }
    }

    private static double worstError(
            LaunchStyle style, LaunchGrid grid, double usual, Air air, Wind wind, SplittableRandom random) {
        DayConditions day = new DayConditions(air, wind, Firmness.ORDINARY, DayConditions.ORDINARY_GREEN_RESISTANCE);
        ResponseSurface surface = new ResponseSurface(grid, day, DayGround.of(day));
        LaunchFinder finder = new LaunchFinder();
        double tilt = finder.tiltPerDirection(style, usual);
        Strike out = new Strike();
        double worst = 0;
        for (int i = 0; i < 60; i++) {
            // solid strikes and mishits: 0.2 to 1.2 of the usual carry, 25 degrees to either side
            double carry = usual * (0.2 + random.nextDouble());
            double direction = Math.toRadians(50 * random.nextDouble() - 25);
            double bearing = 2 * Math.PI * random.nextDouble();
            Launch launch = finder.toward(style, carry, direction, tilt, 40);
            Flight exact = new BallFlight(FlightSetting.of(air, wind.along(bearing))).fly(launch, 0);
            surface.toward(bearing).read(carry, direction, out);
            double error = Math.hypot(out.forwardMetres - exact.forwardMetres(), out.rightMetres - exact.rightMetres());
            worst = Math.max(worst, error);
            assertThat(out.apexMetres).isCloseTo(exact.apexMetres(), within(0.6));
            assertThat(out.descentRadians).isCloseTo(exact.descentRadians(), within(0.03));
        }
        return worst;
    }
}
