package loopwright.flight;

/**
 * The table of Bearman and Harvey (1976) as functions of Reynolds number and spin ratio, bilinear in speed and spin.
 *
 * <p>Reynolds numbers become the table's speeds with D = 42.67 mm and nu = 1.5e-5 m2/s (the tunnel's air was not
 * published: assumed). Valid for 13.7 to 88.1 m/s and 2000 to 6000 rpm. Outside: speed is held at the nearest column;
 * below 2000 rpm drag is held and lift falls in proportion to spin; above 6000 rpm the value follows the increments of
 * the table's own 6000 rpm edge, read as a function of S (wedges spin at S 0.3 to 0.8), and is held beyond its end, S =
 * 0.98.
 */
public final class BearmanHarvey implements Aerodynamics {
    private static final double TUNNEL_VISCOSITY = 1.5e-5;
    private static final double RADIANS_PER_SECOND_PER_RPM = Math.PI / 30;
    private static final double[] SPEEDS = BearmanHarveyTable.SPEEDS_METRES_PER_SECOND;
    private static final int LAST_COLUMN = SPEEDS.length - 1;
    private static final int LAST_ROW = BearmanHarveyTable.DRAG.length - 1;
    private static final double HIGHEST_RPM = BearmanHarveyTable.LOWEST_RPM + LAST_ROW * BearmanHarveyTable.RPM_STEP;

    @Override
    public double drag(double reynolds, double spinRatio) {
        return read(BearmanHarveyTable.DRAG, speed(reynolds), spinRatio, false);
    }

    @Override
    public double lift(double reynolds, double spinRatio) {
        return read(BearmanHarveyTable.LIFT, speed(reynolds), spinRatio, true);
    }

    private static double speed(double reynolds) {
        double v = reynolds * TUNNEL_VISCOSITY / GolfBall.STANDARD.diameterMetres();
        return Math.min(Math.max(v, SPEEDS[0]), SPEEDS[LAST_COLUMN]);
    }

    private static double read(double[][] table, double speed, double spinRatio, boolean proportionalBelow) {
        double rpm = spinRatio * speed / (GolfBall.STANDARD.radiusMetres() * RADIANS_PER_SECOND_PER_RPM);
        if (rpm < BearmanHarveyTable.LOWEST_RPM) {
            double edge = inside(table, speed, BearmanHarveyTable.LOWEST_RPM);
            return proportionalBelow ? edge * rpm / BearmanHarveyTable.LOWEST_RPM : edge;
        }
        if (rpm > HIGHEST_RPM) {
            double edgeRatio = spinRatio * HIGHEST_RPM / rpm;
            return inside(table, speed, HIGHEST_RPM) + topEdge(table, spinRatio) - topEdge(table, edgeRatio);
        }
        return inside(table, speed, rpm);
    }

    /** Bilinear in speed and spin; the caller keeps both inside the table. */
    static double inside(double[][] table, double speed, double rpm) {
        double row = (rpm - BearmanHarveyTable.LOWEST_RPM) / BearmanHarveyTable.RPM_STEP;
        int i = Math.min((int) row, LAST_ROW - 1);
        return alongSpeed(table[i], speed) * (1 - (row - i)) + alongSpeed(table[i + 1], speed) * (row - i);
    }

    private static double alongSpeed(double[] row, double speed) {
        int j = 0;
        while (j < LAST_COLUMN - 1 && speed > SPEEDS[j + 1]) {
            j++;
        }
        double t = (speed - SPEEDS[j]) / (SPEEDS[j + 1] - SPEEDS[j]);
        return row[j] + t * (row[j + 1] - row[j]);
    }

    /** The 6000 rpm row as a function of spin ratio: slower air, larger ratio. */
    private static double topEdge(double[][] table, double spinRatio) {
        double edgeSpeed = HIGHEST_RPM * RADIANS_PER_SECOND_PER_RPM * GolfBall.STANDARD.radiusMetres() / spinRatio;
        double held = Math.min(Math.max(edgeSpeed, SPEEDS[0]), SPEEDS[LAST_COLUMN]);
        return alongSpeed(table[LAST_ROW], held);
    }
}
