package loopwright.numerics;

/**
 * Share of a standard normal below z: M. Abramowitz and I. A. Stegun, "Handbook of Mathematical Functions", 1964, equation
 * 26.2.17; absolute error below 7.5e-8 for every z. A few nanoseconds, against hundreds for the exact function.
 */
public final class NormalShare {
    private static final double INVERSE_ROOT_TWO_PI = 0.3989422804014327;

    private NormalShare() {}

    public static double below(double z) {
        double x = Math.abs(z);
        if (x > 9) {
            return z > 0 ? 1 : 0;
        }
        double t = 1 / (1 + 0.2316419 * x);
        double polynomial =
                t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        double above = INVERSE_ROOT_TWO_PI * Math.exp(-x * x / 2) * polynomial;
        return z > 0 ? 1 - above : above;
    }
}
