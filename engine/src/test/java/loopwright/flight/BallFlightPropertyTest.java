package loopwright.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Laws and closed forms. */
class BallFlightPropertyTest {
    private static final double VACUUM = 0;

    @Test
    void vacuumIsAParabola() {
        // 70 m/s, 12 deg, g 9.80665: range v^2 sin(2a)/g, apex (v sin a)^2 / 2g, time 2 v sin a / g
        Flight flight = new BallFlight(constant(VACUUM, 0)).fly(launch(70, 12, 0), 0);
        assertThat(flight.carryMetres()).isCloseTo(203.230, within(203.230 * 1e-4));
        assertThat(flight.apexMetres()).isCloseTo(10.7995, within(10.7995 * 1e-4));
        assertThat(flight.seconds()).isCloseTo(2.96815, within(2.96815 * 1e-4));
        assertThat(flight.speedMetresPerSecond()).isCloseTo(70, within(70 * 1e-4)); // energy is kept
    }

    @Test
    void constantDragDropMeetsItsClosedForm() {
        // A ball dropped 30 m in air of 1.225 with C_D .25: v = vt sqrt(1 - exp(-2 g h / vt^2)), t = vt/g acosh(exp(g
        // h/vt^2))
        FlightSetting setting = constant(0.25, 1.225);
        Flight flight = new BallFlight(setting, 0.05).fly(launch(1e-6, -90, 0), -30);
        assertThat(flight.speedMetresPerSecond()).isCloseTo(22.621, within(22.621 * 1e-4));
        assertThat(flight.seconds()).isCloseTo(2.5329, within(2.5329 * 1e-4));
    }

    @Test
    void theStepIsFineEnough() {
        // The design's limit is 0.05 m against the converged solution, for chips to long drives, in winds to 10 m/s
        SplittableRandom random = new SplittableRandom(20260101);
        for (int i = 0; i < 300; i++) {
            Launch launch = anyLaunch(random);
            Breeze breeze = new Breeze(20 * random.nextDouble() - 10, 20 * random.nextDouble() - 10);
            FlightSetting setting = FlightSetting.standard().withBreeze(breeze);
            Flight ours = new BallFlight(setting).fly(launch, 0);
            Flight converged = new BallFlight(setting, 0.005).fly(launch, 0);
            assertThat(Math.hypot(
                            ours.forwardMetres() - converged.forwardMetres(),
                            ours.rightMetres() - converged.rightMetres()))
                    .as("%s in %s", launch, breeze)
                    .isLessThan(0.05);
        }
    }

    @Test
    void halvingTheStepMovesTheCarryLessThanACentimetre() {
        FlightSetting setting = FlightSetting.standard();
        Launch drive = launch(75, 10.8, 272);
        double whole = new BallFlight(setting).fly(drive, 0).carryMetres();
        double half = new BallFlight(setting, BallFlight.STEP_SECONDS / 2)
                .fly(drive, 0)
                .carryMetres();
        assertThat(half).isCloseTo(whole, within(0.01));
    }

    @Test
    void errorFallsSteeplyWithTheStep() {
        // Smooth coefficients: the grid's straight pieces would hide the order
        FlightSetting smooth = constant(0.25, 1.2);
        double coarse = speedError(smooth, 0.4);
        double fine = speedError(smooth, 0.2);
        // the method is of order 4 (a factor of 16), the landing cubic's slope of order 3 (8): at least 6
        assertThat(coarse / fine).isGreaterThan(6);
    }

    private static double speedError(FlightSetting setting, double step) {
        Launch drive = launch(70, 12, 250);
        double exact = new BallFlight(setting, 0.001).fly(drive, -5).speedMetresPerSecond();
        return Math.abs(new BallFlight(setting, step).fly(drive, -5).speedMetresPerSecond() - exact);
    }

    @Test
    void mirrorSymmetry() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 100; i++) {
            Launch right = anyLaunch(random);
            Launch left = right.withStart(-right.startRadians()).withAxis(-right.axisRadians());
            double along = 10 * random.nextDouble() - 5;
            double across = 10 * random.nextDouble() - 5;
            Flight a = new BallFlight(FlightSetting.standard().withBreeze(new Breeze(along, across))).fly(right, 0);
            Flight b = new BallFlight(FlightSetting.standard().withBreeze(new Breeze(along, -across))).fly(left, 0);
            // the same sums with signs turned: only rounding may differ
            assertThat(b.forwardMetres()).isCloseTo(a.forwardMetres(), within(1e-9));
            assertThat(b.rightMetres()).isCloseTo(-a.rightMetres(), within(1e-9));
            assertThat(b.seconds()).isCloseTo(a.seconds(), within(1e-10));
        }
    }

    @Test
    void turningTheStartTurnsTheFlight() {
        BallFlight still = new BallFlight(FlightSetting.standard());
        Launch straight = new Launch(60, 0.22, 0, 500, 0.1);
        Flight a = still.fly(straight, 0);
        Flight b = still.fly(straight.withStart(0.3), 0);
        assertThat(b.carryMetres()).isCloseTo(a.carryMetres(), within(1e-9)); // rounding
        assertThat(b.directionRadians()).isCloseTo(a.directionRadians() + 0.3, within(1e-12));
    }

    @Test
    void sameInputsSameBits() {
        BallFlight flight = new BallFlight(FlightSetting.standard().withBreeze(new Breeze(3, -4)));
        Launch launch = new Launch(60, 0.22, 0.02, 500, 0.1);
        assertThat(flight.fly(launch, 2)).isEqualTo(flight.fly(launch, 2));
    }

    @Test
    void landingHigherIsShorterAndSteeperIsLess() {
        BallFlight flight = new BallFlight(FlightSetting.standard());
        Launch iron = launch(53, 17, 740);
        double level = flight.fly(iron, 0).carryMetres();
        assertThat(flight.fly(iron, 10).carryMetres()).isLessThan(level);
        assertThat(flight.fly(iron, -10).carryMetres()).isGreaterThan(level);
    }

    @Test
    void aPlaceAboveTheApexIsNotReached() {
        Flight flight = new BallFlight(FlightSetting.standard()).fly(launch(53, 17, 740), 200);
        assertThat(flight.reached()).isFalse();
        assertThat(flight.apexMetres()).isLessThan(200);
    }

    static Launch anyLaunch(SplittableRandom random) {
        double speed = 12 + 70 * random.nextDouble();
        double up = Math.toRadians(3 + (45 - 0.5 * speed) * random.nextDouble());
        double spin = (1000 + 8500 * random.nextDouble()) * Math.PI / 30;
        double start = Math.toRadians(16 * random.nextDouble() - 8);
        double axis = Math.toRadians(50 * random.nextDouble() - 25);
        return new Launch(speed, Math.max(up, 0.05), start, spin, axis);
    }

    private static Launch launch(double speed, double degrees, double spin) {
        return new Launch(speed, Math.toRadians(degrees), 0, spin, 0);
    }

    private static FlightSetting constant(double drag, double density) {
        Aerodynamics constant = new Aerodynamics() {
            @Override
            public double drag(double reynolds, double spinRatio) {
                return drag;
            }

            @Override
            public double lift(double reynolds, double spinRatio) {
                return 0;
            }
        };
        double kelvin = 288.15;
        double pascals = Math.max(density, 0.6) * StandardAtmosphere.DRY_GAS_CONSTANT * kelvin;
        return new FlightSetting(new Air(kelvin, pascals, 0), Breeze.NONE, GolfBall.STANDARD, constant, 0);
    }
}
