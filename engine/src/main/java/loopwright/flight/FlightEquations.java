package loopwright.flight;

/**
 * The equations of {@link BallFlight} with their constants worked out once, and one Runge-Kutta step of them for one
 * ball. {@link FlightBlock} writes the same arithmetic for many balls at once; a test holds both to the same values.
 *
 * <p>State: forward, right, up (m), their rates (m/s), spin (rad/s).
 */
final class FlightEquations {
    static final int SIZE = 7;
    static final int Z = 2;
    static final int VX = 3;
    static final int VY = 4;
    static final int VZ = 5;
    static final int SPIN = 6;

    /** Keeps the direction of motion defined for a ball at rest in its air; far below any speed of golf. */
    static final double TINY_SPEED_SQUARED = 1e-12;

    private static final double DECAY_DENSITY = 1.2;

    final double breezeForward;
    final double breezeRight;
    /** rho A / (2 m). */
    final double k;
    /** Multiplies V omega. */
    final double decay;
    /** Grid cells per m/s. */
    final double cellsPerSpeed;
    /** Grid cells per (rad/s)/(m/s). */
    final double cellsPerSpinSpeed;

    final double[] grid;

    FlightEquations(FlightSetting setting) {
        GolfBall ball = setting.ball();
        double density = setting.air().densityKgPerCubicMetre();
        breezeForward = setting.breeze().forwardMetresPerSecond();
        breezeRight = setting.breeze().rightMetresPerSecond();
        k = density * ball.areaSquareMetres() / (2 * ball.massKg());
        decay = -setting.spinDecay() * density / DECAY_DENSITY / ball.radiusMetres();
        cellsPerSpeed = ball.diameterMetres() / setting.air().kinematicViscosity() / CoefficientGrid.REYNOLDS_PER_CELL;
        cellsPerSpinSpeed = ball.radiusMetres() / CoefficientGrid.SPIN_RATIO_PER_CELL;
        grid = CoefficientGrid.of(setting.aerodynamics()).values();
    }

    /** Writes the rates of change of {@code y} to {@code out}. */
    void derive(double[] y, double[] axis, double[] out) {
        double share = WindProfile.shareAt(y[Z]);
        double ux = y[VX] - breezeForward * share;
        double uy = y[VY] - breezeRight * share;
        double uz = y[VZ];
        double speed = Math.sqrt(ux * ux + uy * uy + uz * uz + TINY_SPEED_SQUARED);
        double row = Math.min(speed * cellsPerSpeed, CoefficientGrid.LAST_REYNOLDS_CELL);
        double cell = Math.min(y[SPIN] * cellsPerSpinSpeed / speed, CoefficientGrid.LAST_SPIN_CELL);
        int i = (int) row;
        int j = (int) cell;
        int at = i * CoefficientGrid.ROW + 2 * j;
        int above = at + CoefficientGrid.ROW;
        double fx = row - i;
        double fy = cell - j;
        double lowDrag = grid[at] + fy * (grid[at + 2] - grid[at]);
        double highDrag = grid[above] + fy * (grid[above + 2] - grid[above]);
        double lowLift = grid[at + 1] + fy * (grid[at + 3] - grid[at + 1]);
        double highLift = grid[above + 1] + fy * (grid[above + 3] - grid[above + 1]);
        double drag = k * speed * (lowDrag + fx * (highDrag - lowDrag));
        double lift = k * speed * (lowLift + fx * (highLift - lowLift));
        out[0] = y[VX];
        out[1] = y[VY];
        out[Z] = y[VZ];
        out[VX] = lift * (uy * axis[2] - uz * axis[1]) - drag * ux;
        out[VY] = lift * (uz * axis[0] - ux * axis[2]) - drag * uy;
        out[VZ] = lift * (ux * axis[1] - uy * axis[0]) - drag * uz - StandardAtmosphere.GRAVITY;
        out[SPIN] = decay * speed * y[SPIN];
    }

    /** One classical Runge-Kutta step from {@code from} to {@code to}. */
    void step(double[] from, double[] axis, double h, double[] to, Scratch s) {
        derive(from, axis, s.k1);
        s.advance(from, s.k1, h / 2);
        derive(s.at, axis, s.k2);
        s.advance(from, s.k2, h / 2);
        derive(s.at, axis, s.k3);
        s.advance(from, s.k3, h);
        derive(s.at, axis, s.k4);
        double sixth = h / 6;
        for (int i = 0; i < SIZE; i++) {
            to[i] = from[i] + sixth * (s.k1[i] + 2 * (s.k2[i] + s.k3[i]) + s.k4[i]);
        }
    }

    /** The state right after the strike. */
    static void launch(double speed, double up, double start, double spin, double tilt, double[] y, double[] axis) {
        double sinUp = Math.sin(up);
        double cosUp = Math.cos(up);
        double sinStart = Math.sin(start);
        double cosStart = Math.cos(start);
        double sinTilt = Math.sin(tilt);
        double cosTilt = Math.cos(tilt);
        y[0] = 0;
        y[1] = 0;
        y[Z] = 0;
        y[VX] = speed * cosUp * cosStart;
        y[VY] = speed * cosUp * sinStart;
        y[VZ] = speed * sinUp;
        y[SPIN] = spin;
        // level and square to the start, then tilted towards the underside of the path
        axis[0] = -cosTilt * sinStart + sinTilt * sinUp * cosStart;
        axis[1] = cosTilt * cosStart + sinTilt * sinUp * sinStart;
        axis[2] = -sinTilt * cosUp;
    }

    /** Working space of one step. */
    static final class Scratch {
        private final double[] k1 = new double[SIZE];
        private final double[] k2 = new double[SIZE];
        private final double[] k3 = new double[SIZE];
        private final double[] k4 = new double[SIZE];
        private final double[] at = new double[SIZE];

        private void advance(double[] from, double[] rate, double h) {
            for (int i = 0; i < SIZE; i++) {
                at[i] = from[i] + h * rate[i];
            }
        }
    }
}
