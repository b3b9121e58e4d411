package loopwright.flight;

/**
 * Flies many balls at once: {@value #LANES} lanes, each with a ball in the air, stepped together stage by stage; a lane
 * whose ball has landed takes the next launch, so that all stay busy to the end.
 *
 * <p>The arithmetic is that of {@link FlightEquations}, term by term in the same order, so that both give the same
 * bits. Loops over lanes without branches become vector instructions; table look-ups have loops of their own.
 */
final class FlightBlock {
    static final int LANES = 64;

    private static final int SIZE = FlightEquations.SIZE;
    private static final int Z = FlightEquations.Z;
    private static final int VX = FlightEquations.VX;
    private static final int VY = FlightEquations.VY;
    private static final int VZ = FlightEquations.VZ;
    private static final int SPIN = FlightEquations.SPIN;

    private final double[][] now = new double[SIZE][LANES];
    private final double[][] next = new double[SIZE][LANES];
    private final double[][] mid = new double[SIZE][LANES];
    private final double[][] sum = new double[SIZE][LANES];
    private final double[][] rate = new double[SIZE][LANES];
    private final double[][] axis = new double[3][LANES];
    private final double[] apex = new double[LANES];
    private final int[] steps = new int[LANES];
    private final int[] ball = new int[LANES];

    private final double[] ux = new double[LANES];
    private final double[] uy = new double[LANES];
    private final double[] speed = new double[LANES];
    private final double[] row = new double[LANES];
    private final double[] cell = new double[LANES];
    private final double[] drag = new double[LANES];
    private final double[] lift = new double[LANES];

    private final double[] from = new double[SIZE];
    private final double[] to = new double[SIZE];
    private final double[] tilt = new double[3];

    /** Flies the first {@code count} launches of the workspace. */
    void fly(FlightEquations equations, FlightWorkspace w, int count, double h, double landing) {
        int active = 0;
        int waiting = 0;
        while (active < LANES && waiting < count) {
            load(w, waiting++, active++);
        }
        while (active > 0) {
            step(equations, active, h);
            for (int lane = active - 1; lane >= 0; lane--) {
                if (next[VZ][lane] < 0 && landed(w, lane, h, landing)) {
                    if (waiting < count) {
                        load(w, waiting++, lane);
                        copy(now, lane, next, lane);
                    } else {
                        active--;
                        move(active, lane);
                    }
                } else {
                    steps[lane]++;
                    if (steps[lane] * h > BallFlight.LONGEST_SECONDS) {
                        throw new IllegalStateException("a ball did not come down: number " + ball[lane]);
                    }
                }
            }
            for (int i = 0; i < SIZE; i++) {
                System.arraycopy(next[i], 0, now[i], 0, active);
            }
        }
    }

    private void load(FlightWorkspace w, int i, int lane) {
        FlightEquations.launch(w.speed[i], w.launch[i], w.start[i], w.spin[i], w.axis[i], from, tilt);
        for (int k = 0; k < SIZE; k++) {
            now[k][lane] = from[k];
        }
        for (int k = 0; k < 3; k++) {
            axis[k][lane] = tilt[k];
        }
        apex[lane] = 0;
        steps[lane] = 0;
        ball[lane] = i;
    }

    private boolean landed(FlightWorkspace w, int lane, double h, double landing) {
        boolean top = now[VZ][lane] > 0;
        boolean down = next[Z][lane] <= landing;
        if (!top && !down) {
            return false;
        }
        for (int k = 0; k < SIZE; k++) {
            from[k] = now[k][lane];
            to[k] = next[k][lane];
        }
        if (top) {
            apex[lane] = LastStep.apexMetres(from, to, h);
        }
        if (down) {
            w.keep(ball[lane], LastStep.land(from, to, steps[lane] * h, h, landing, apex[lane]));
        }
        return down;
    }

    /** Puts the ball of one lane into another. */
    private void move(int source, int target) {
        copy(next, source, next, target);
        copy(now, source, now, target);
        copy(axis, source, axis, target);
        apex[target] = apex[source];
        steps[target] = steps[source];
        ball[target] = ball[source];
    }

    private static void copy(double[][] source, int fromLane, double[][] target, int toLane) {
        for (int i = 0; i < source.length; i++) {
            target[i][toLane] = source[i][fromLane];
        }
    }

    private void step(FlightEquations equations, int n, double h) {
        derive(equations, now, n);
        for (int i = 0; i < SIZE; i++) {
            first(now[i], rate[i], sum[i], mid[i], n, h / 2);
        }
        derive(equations, mid, n);
        for (int i = 0; i < SIZE; i++) {
            first(now[i], rate[i], next[i], mid[i], n, h / 2);
        }
        derive(equations, mid, n);
        for (int i = 0; i < SIZE; i++) {
            third(now[i], rate[i], next[i], mid[i], n, h);
        }
        derive(equations, mid, n);
        for (int i = 0; i < SIZE; i++) {
            last(now[i], sum[i], rate[i], next[i], n, h / 6);
        }
    }

    /** Keeps the rate and steps along it. */
    private static void first(double[] y, double[] rate, double[] kept, double[] at, int n, double h) {
        for (int k = 0; k < n; k++) {
            double r = rate[k];
            kept[k] = r;
            at[k] = y[k] + h * r;
        }
    }

    /** Adds the third rate to the second and steps along it. */
    private static void third(double[] y, double[] rate, double[] kept, double[] at, int n, double h) {
        for (int k = 0; k < n; k++) {
            double r = rate[k];
            kept[k] = kept[k] + r;
            at[k] = y[k] + h * r;
        }
    }

    /** The weighted sum of all four; {@code next} brings the second and third. */
    private static void last(double[] y, double[] firstRate, double[] rate, double[] next, int n, double sixth) {
        for (int k = 0; k < n; k++) {
            next[k] = y[k] + sixth * (firstRate[k] + 2 * next[k] + rate[k]);
        }
    }

    private void derive(FlightEquations q, double[][] y, int n) {
        relativeWind(q, y, n);
        cells(q, y[VZ], y[SPIN], n);
        coefficients(q.grid, q.k, n);
        System.arraycopy(y[VX], 0, rate[0], 0, n);
        System.arraycopy(y[VY], 0, rate[1], 0, n);
        System.arraycopy(y[VZ], 0, rate[Z], 0, n);
        accelerations(y[VZ], n);
        decay(q.decay, y[SPIN], n);
    }

    private void relativeWind(FlightEquations q, double[][] y, int n) {
        double[] z = y[Z];
        double[] vx = y[VX];
        double[] vy = y[VY];
        if (q.breezeForward == 0 && q.breezeRight == 0) {
            System.arraycopy(vx, 0, ux, 0, n);
            System.arraycopy(vy, 0, uy, 0, n);
            return;
        }
        for (int k = 0; k < n; k++) {
            double share = WindProfile.shareAt(z[k]);
            ux[k] = vx[k] - q.breezeForward * share;
            uy[k] = vy[k] - q.breezeRight * share;
        }
    }

    private void cells(FlightEquations q, double[] uz, double[] spin, int n) {
        double perSpeed = q.cellsPerSpeed;
        double perSpin = q.cellsPerSpinSpeed;
        double[] ax = ux;
        double[] ay = uy;
        double[] v = speed;
        double[] r = row;
        double[] c = cell;
        for (int k = 0; k < n; k++) {
            double s = Math.sqrt(ax[k] * ax[k] + ay[k] * ay[k] + uz[k] * uz[k] + FlightEquations.TINY_SPEED_SQUARED);
            v[k] = s;
            r[k] = Math.min(s * perSpeed, CoefficientGrid.LAST_REYNOLDS_CELL);
            c[k] = Math.min(spin[k] * perSpin / s, CoefficientGrid.LAST_SPIN_CELL);
        }
    }

    private void coefficients(double[] grid, double density, int n) {
        for (int k = 0; k < n; k++) {
            int i = (int) row[k];
            int j = (int) cell[k];
            int at = i * CoefficientGrid.ROW + 2 * j;
            int above = at + CoefficientGrid.ROW;
            double fx = row[k] - i;
            double fy = cell[k] - j;
            double lowDrag = grid[at] + fy * (grid[at + 2] - grid[at]);
            double highDrag = grid[above] + fy * (grid[above + 2] - grid[above]);
            double lowLift = grid[at + 1] + fy * (grid[at + 3] - grid[at + 1]);
            double highLift = grid[above + 1] + fy * (grid[above + 3] - grid[above + 1]);
            drag[k] = density * speed[k] * (lowDrag + fx * (highDrag - lowDrag));
            lift[k] = density * speed[k] * (lowLift + fx * (highLift - lowLift));
        }
    }

    private void accelerations(double[] uz, int n) {
        across(lift, drag, ux, uy, axis[2], uz, axis[1], rate[VX], n);
        across(lift, drag, uy, uz, axis[0], ux, axis[2], rate[VY], n);
        across(lift, drag, uz, ux, axis[1], uy, axis[0], rate[VZ], n);
        double[] up = rate[VZ];
        for (int k = 0; k < n; k++) {
            up[k] -= StandardAtmosphere.GRAVITY;
        }
    }

    /** out = lift (a b - c d) - drag u. */
    private static void across(
            double[] lift,
            double[] drag,
            double[] u,
            double[] a,
            double[] b,
            double[] c,
            double[] d,
            double[] out,
            int n) {
        for (int k = 0; k < n; k++) {
            out[k] = lift[k] * (a[k] * b[k] - c[k] * d[k]) - drag[k] * u[k];
        }
    }

    private void decay(double decay, double[] spin, int n) {
        double[] v = speed;
        double[] out = rate[SPIN];
        for (int k = 0; k < n; k++) {
            out[k] = decay * v[k] * spin[k];
        }
    }
}
