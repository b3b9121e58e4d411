package loopwright.flight;

/**
 * Wind at a height as a share of the wind at 10 m: ln((z + d) / z0) / ln((10 + d) / z0), z0 = 0.03 m, d = 1 m.
 *
 * <p>Source: the logarithmic law of the boundary layer over open flat grass; roughness length 0.03 m is the class
 * "open" of Davenport's list as the WMO guide prints it (from memory). The lift d is ours: it keeps the law's
 * infinitely steep foot, which a ball rises through in a tenth of a second, from costing the integrator its step, and
 * changes the share by less than 0.02 above 5 m. The height counts from where the ball was struck; above {@value
 * #TOP_METRES} m the share is held. Kept as a table of straight pieces, which every Runge-Kutta stage can read without
 * a logarithm; the pieces differ from the formula by less than 0.002.
 */
final class WindProfile {
    static final double CELLS_PER_METRE = 4;
    static final double TOP_METRES = 128;

    private static final double ROUGHNESS_METRES = 0.03;
    private static final double LIFT_METRES = 1;
    private static final double[] SHARES = table();

    private WindProfile() {}

    private static double[] table() {
        double[] shares = new double[(int) (TOP_METRES * CELLS_PER_METRE) + 2];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = law(i / CELLS_PER_METRE);
        }
        return shares;
    }

    static double law(double heightMetres) {
        return Math.log((heightMetres + LIFT_METRES) / ROUGHNESS_METRES)
                / Math.log((10 + LIFT_METRES) / ROUGHNESS_METRES);
    }

    static double shareAt(double heightMetres) {
        double cell = Math.min(Math.max(heightMetres, 0), TOP_METRES) * CELLS_PER_METRE;
        int i = (int) cell;
        return SHARES[i] + (cell - i) * (SHARES[i + 1] - SHARES[i]);
    }
}
