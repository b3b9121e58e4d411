package loopwright.flight;

/**
 * An {@link Aerodynamics} sampled on a fine grid in Reynolds number and spin ratio and read bilinearly: eight loads, no
 * branch, the same cost for every model. Cells are 0.05e5 in Re and 0.01 in S; the difference from the engine's model
 * is under 0.0005 where the regression holds and 0.004 above Re 0.7e5 ({@code AerodynamicsReferenceTest}). Arguments
 * outside are held at the edge (Re 2.8e5, S 1.6).
 */
final class CoefficientGrid {
    static final double REYNOLDS_PER_CELL = 0.05e5;
    static final double SPIN_RATIO_PER_CELL = 0.01;
    static final int REYNOLDS_CELLS = 56;
    static final int SPIN_CELLS = 160;

    /** Row after row of Reynolds number, in it drag and lift by turns. */
    static final int ROW = 2 * (SPIN_CELLS + 1);

    /** The last cell must still have a neighbour: arguments are held just inside. */
    static final double LAST_REYNOLDS_CELL = REYNOLDS_CELLS - 1e-9;

    static final double LAST_SPIN_CELL = SPIN_CELLS - 1e-9;

    private static final CoefficientGrid BLENDED = new CoefficientGrid(new BlendedAerodynamics());

    private final double[] values;

    CoefficientGrid(Aerodynamics model) {
        values = new double[(REYNOLDS_CELLS + 1) * ROW];
        for (int i = 0; i <= REYNOLDS_CELLS; i++) {
            for (int j = 0; j <= SPIN_CELLS; j++) {
                // Re = 0 is no flow at all; a model may divide by it
                double reynolds = Math.max(i, 0.1) * REYNOLDS_PER_CELL;
                values[i * ROW + 2 * j] = model.drag(reynolds, j * SPIN_RATIO_PER_CELL);
                values[i * ROW + 2 * j + 1] = model.lift(reynolds, j * SPIN_RATIO_PER_CELL);
            }
        }
    }

    /** The grid of a model; the engine's own model, which is flown most, is sampled once. */
    static CoefficientGrid of(Aerodynamics model) {
        return model instanceof BlendedAerodynamics ? BLENDED : new CoefficientGrid(model);
    }

    /** Shared, never written after construction. */
    double[] values() {
        return values;
    }

    double drag(double reynolds, double spinRatio) {
        return read(reynolds, spinRatio, 0);
    }

    double lift(double reynolds, double spinRatio) {
        return read(reynolds, spinRatio, 1);
    }

    private double read(double reynolds, double spinRatio, int which) {
        double x = Math.min(reynolds / REYNOLDS_PER_CELL, LAST_REYNOLDS_CELL);
        double y = Math.min(spinRatio / SPIN_RATIO_PER_CELL, LAST_SPIN_CELL);
        int i = (int) x;
        int j = (int) y;
        int at = i * ROW + 2 * j + which;
        double fx = x - i;
        double fy = y - j;
        double low = values[at] + fy * (values[at + 2] - values[at]);
        double high = values[at + ROW] + fy * (values[at + ROW + 2] - values[at + ROW]);
        return low + fx * (high - low);
    }
}
