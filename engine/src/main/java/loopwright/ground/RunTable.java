package loopwright.ground;

/**
 * The run on level ground of one surface and day, read from a grid of landings instead of simulated bounce by bounce:
 * even nodes in speed (2 m/s), descent (3 degrees) and backspin (100 rad/s), straight between them, held at the edges
 * (60 m/s, 66 degrees, 1200 rad/s). Differs from {@link BounceAndRoll} by less than half a metre for the landings of
 * golf ({@code RunTableTest}).
 */
public final class RunTable {
    private static final double SPEED_STEP = 2;
    private static final double DESCENT_STEP = Math.toRadians(3);
    private static final double SPIN_STEP = 100;
    private static final int SPEEDS = 31;
    private static final int DESCENTS = 23;
    private static final int SPINS = 13;

    private final float[] runs = new float[SPEEDS * DESCENTS * SPINS];

    public RunTable(BounceAndRoll ground, Surface surface) {
        RunWorkspace scratch = new RunWorkspace();
        for (int i = 0; i < SPEEDS; i++) {
            for (int j = 0; j < DESCENTS; j++) {
                for (int k = 0; k < SPINS; k++) {
                    // a ball at rest or on a level path has no landing: the nearest that has
                    Touchdown touch = new Touchdown(
                            Math.max(0.1, i * SPEED_STEP), Math.max(0.01, j * DESCENT_STEP), 0, k * SPIN_STEP);
                    runs[at(i, j, k)] = (float) ground.planeRunMetres(touch, surface, 0, scratch);
                }
            }
        }
    }

    /** Signed run along the travel, metres. */
    public double runMetres(double speed, double descentRadians, double backspinRadiansPerSecond) {
        double x = held(speed / SPEED_STEP, SPEEDS);
        double y = held(descentRadians / DESCENT_STEP, DESCENTS);
        double z = held(backspinRadiansPerSecond / SPIN_STEP, SPINS);
        int i = (int) x;
        int j = (int) y;
        int k = (int) z;
        double fy = y - j;
        double fz = z - k;
        return (1 - (x - i)) * face(i, j, k, fy, fz) + (x - i) * face(i + 1, j, k, fy, fz);
    }

    private double face(int i, int j, int k, double fy, double fz) {
        double near = runs[at(i, j, k)] * (1 - fz) + runs[at(i, j, k + 1)] * fz;
        double far = runs[at(i, j + 1, k)] * (1 - fz) + runs[at(i, j + 1, k + 1)] * fz;
        return near * (1 - fy) + far * fy;
    }

    private static double held(double cell, int nodes) {
        return Math.min(Math.max(cell, 0), nodes - 1 - 1e-9);
    }

    private static int at(int i, int j, int k) {
        return (i * DESCENTS + j) * SPINS + k;
    }
}
