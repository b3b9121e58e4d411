package loopwright.putting;

/**
 * The standard normal distribution function from a table: cubic between steps of 1/32 with the exact density as slope;
 * within 1e-8 of the true value (NormalTableTest). The library's own is some fifty times slower, and the odds ask for it
 * thousands of times a putt.
 */
final class NormalTable {
    private static final double LAST = 8;
    private static final int PER_UNIT = 32;
    private static final double[] BELOW = new double[(int) (2 * LAST * PER_UNIT) + 1];
    private static final double[] SLOPE = new double[BELOW.length];

    static {
        for (int i = 0; i < BELOW.length; i++) {
            double z = (double) i / PER_UNIT - LAST;
            BELOW[i] = NormalLaw.below(z);
            SLOPE[i] = NormalLaw.density(z) / PER_UNIT;
        }
    }

    private NormalTable() {}

    static double below(double z) {
        double at = (z + LAST) * PER_UNIT;
        if (!(at > 0)) {
            return 0;
        }
        int cell = (int) at;
        if (cell >= BELOW.length - 1) {
            return 1;
        }
        double t = at - cell;
        double t2 = t * t;
        double t3 = t2 * t;
        return (2 * t3 - 3 * t2 + 1) * BELOW[cell]
                + (t3 - 2 * t2 + t) * SLOPE[cell]
                + (3 * t2 - 2 * t3) * BELOW[cell + 1]
                + (t3 - t2) * SLOPE[cell + 1];
    }
}
