package loopwright.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BounceAndRollPropertyTest {
    private static final double GREEN = 0.0784;
    private static final Touchdown DRIVE = new Touchdown(29.5, Math.toRadians(35), 0, 215);
    private static final Touchdown WEDGE = new Touchdown(20, Math.toRadians(48), 0, 780);
    private final BounceAndRoll ordinary = new BounceAndRoll(Firmness.ORDINARY, GREEN);
    private final RunWorkspace ball = new RunWorkspace();

    @Test
    void turningTheLandingTurnsTheRun() {
        double north = ordinary.planeRunMetres(DRIVE, Surface.FAIRWAY, 0, ball);
        Touchdown turned = new Touchdown(29.5, Math.toRadians(35), 2.1, 215);
        ordinary.run(turned, Terrain.plane(Surface.FAIRWAY, 0, 0), 0, 0, ball);
        // rounding; hops near the smallest may fall on either side of it
        assertThat(ball.east()).isCloseTo(north * Math.sin(2.1), within(0.01));
        assertThat(ball.north()).isCloseTo(north * Math.cos(2.1), within(0.01));
    }

    @Test
    void mirrorSymmetryOnSideSlopes() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 100; i++) {
            double side = 0.2 * random.nextDouble() - 0.1;
            double along = 0.1 * random.nextDouble() - 0.05;
            double bearing = random.nextDouble() - 0.5;
            Touchdown a = new Touchdown(25, 0.7, bearing, 400);
            Touchdown b = new Touchdown(25, 0.7, -bearing, 400);
            ordinary.run(a, Terrain.plane(Surface.FAIRWAY, side, along), 0, 0, ball);
            double east = ball.east();
            double north = ball.north();
            ordinary.run(b, Terrain.plane(Surface.FAIRWAY, -side, along), 0, 0, ball);
            assertThat(ball.east()).isCloseTo(-east, within(1e-9)); // rounding
            assertThat(ball.north()).isCloseTo(north, within(1e-9));
        }
    }

    @Test
    void aSideSlopeKicksTheBallDownhill() {
        ordinary.run(DRIVE, Terrain.plane(Surface.FAIRWAY, 0.08, 0), 0, 0, ball);
        assertThat(ball.east()).isLessThan(-0.5);
    }

    @Test
    void uphillIsShorterAndDownhillLonger() {
        double level = ordinary.planeRunMetres(DRIVE, Surface.FAIRWAY, 0, ball);
        assertThat(ordinary.planeRunMetres(DRIVE, Surface.FAIRWAY, 0.05, ball)).isLessThan(level);
        assertThat(ordinary.planeRunMetres(DRIVE, Surface.FAIRWAY, -0.05, ball)).isGreaterThan(level);
    }

    @Test
    void firmerGroundRunsFarther() {
        double before = 0;
        for (double f = -1; f <= 1; f += 0.25) {
            double run = new BounceAndRoll(new Firmness(f), GREEN).planeRunMetres(DRIVE, Surface.FAIRWAY, 0, ball);
            assertThat(run).isGreaterThan(before);
            before = run;
        }
    }

    @Test
    void softIsAboutHalfAndFirmHalfAgain() {
        double middle = ordinary.planeRunMetres(DRIVE, Surface.FAIRWAY, 0, ball);
        double soft = new BounceAndRoll(Firmness.SOFT, GREEN).planeRunMetres(DRIVE, Surface.FAIRWAY, 0, ball);
        double firm = new BounceAndRoll(Firmness.FIRM, GREEN).planeRunMetres(DRIVE, Surface.FAIRWAY, 0, ball);
        // what Firmness promises, to a tenth
        assertThat(soft / middle).isBetween(0.4, 0.6);
        assertThat(firm / middle).isBetween(1.4, 1.6);
    }

    @Test
    void averageDriveRunsThePublishedGap() {
        // 289.7 yd total (from memory) less the computed carry of 268 yd: 22 yd; the factor was set to a yard
        assertThat(ordinary.planeRunMetres(DRIVE, Surface.FAIRWAY, 0, ball) / 0.9144)
                .isCloseTo(22, within(1.0));
    }

    @ParameterizedTest
    @EnumSource(Surface.class)
    void longGrassAndSandHoldTheBallAsTheirResistanceSays(Surface surface) {
        double fairway = ordinary.planeRunMetres(DRIVE, Surface.FAIRWAY, 0, ball);
        double here = ordinary.planeRunMetres(DRIVE, surface, 0, ball);
        if (RunResistance.of(surface) > 1) {
            // the short cut and the simulated bounce are both assumed; they agree to within 2.5 m of run
            assertThat(here).isCloseTo(fairway / RunResistance.of(surface), within(2.5));
        } else if (surface != Surface.GREEN) {
            assertThat(here).isGreaterThanOrEqualTo(fairway);
        }
    }

    @Test
    void rollMeetsItsClosedForm() {
        // A ball that lands at a graze without spin slides, then rolls at 5/7 of its speed: v^2 / (2 a), a = 5/7 rho g
        Touchdown graze = new Touchdown(2, 1e-6, 0, 0);
        double v = 2 * 5.0 / 7;
        double expected = v * v / (2 * 5.0 / 7 * GREEN * 9.80665);
        RunWorkspace out = new RunWorkspace();
        // 5 %: the green's crater lifts even a graze a little, which the closed form does not know
        double ours = ordinary.planeRunMetres(graze, Surface.GREEN, 0, out);
        assertThat(ours).isCloseTo(expected, within(0.05 * expected));
    }

    @Test
    void aPenaltyAreaStopsTheBallWhereItEnters() {
        Terrain water = new Terrain() {
            @Override
            public Surface surfaceAt(double x, double y) {
                return y > 10 ? Surface.RED_PENALTY_AREA : Surface.FAIRWAY;
            }

            @Override
            public double slopeEastAt(double x, double y) {
                return 0;
            }

            @Override
            public double slopeNorthAt(double x, double y) {
                return 0;
            }
        };
        ordinary.run(DRIVE, water, 0, 0, ball);
        assertThat(ball.north()).isGreaterThan(10).isLessThan(16); // within one hop of the edge
    }

    @Test
    void steepGroundStopsTheSimulationInTheEnd() {
        ordinary.run(WEDGE, Terrain.plane(Surface.GREEN, 0, -0.3), 0, 0, ball);
        assertThat(ball.north()).isGreaterThan(20);
        assertThat(Double.isFinite(ball.north())).isTrue();
    }

    @Test
    void sameInputsSameBits() {
        ordinary.run(WEDGE, Terrain.plane(Surface.GREEN, 0.02, 0.01), 0, 0, ball);
        double east = ball.east();
        double north = ball.north();
        ordinary.run(WEDGE, Terrain.plane(Surface.GREEN, 0.02, 0.01), 0, 0, ball);
        assertThat(ball.east()).isEqualTo(east);
        assertThat(ball.north()).isEqualTo(north);
    }
}
