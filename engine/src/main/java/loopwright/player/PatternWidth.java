package loopwright.player;

import loopwright.numerics.NormalShare;

/**
 * How wide a pattern is where it lands: the distance between the two lateral quantiles that hold the middle share of all its
 * balls, mishits included.
 *
 * <p>P(side &lt; x) = sum over components of rate * E over carry of Phi((asin(x / carry) - mean direction) / SD), the expectation by
 * 5-point Gauss-Hermite quadrature; against 10^6 draws the width is right to 0.3 % (PatternWidthTest). Correlation of carry and
 * direction is left out: it moves the width by its square times the relative carry spread's.
 */
public final class PatternWidth {
    /** Gauss-Hermite for the standard normal, 5 points: roots of x^4 - 10 x^2 + 15, and the weights that go with them. */
    private static final double NEAR = Math.sqrt(5 - Math.sqrt(10));

    private static final double FAR = Math.sqrt(5 + Math.sqrt(10));
    private static final double NEAR_WEIGHT = (7 + 2 * Math.sqrt(10)) / 60;
    private static final double FAR_WEIGHT = (7 - 2 * Math.sqrt(10)) / 60;
    private static final double MIDDLE_WEIGHT = 8.0 / 15;
    private static final double TOLERANCE_METRES = 0.02;

    private static final double TOLERANCE_SHARE = 1e-4;

    private PatternWidth() {}

    /** Width in metres of the middle {@code share} (0 to 1) of the balls. */
    public static double metres(ShotPattern pattern, double share) {
        return sideMetres(pattern, (1 + share) / 2) - sideMetres(pattern, (1 - share) / 2);
    }

    /** The side, + right, that this share of the balls lands left of. */
    public static double sideMetres(ShotPattern pattern, double share) {
        double reach = pattern.carryMetres() * Math.sin(Math.min(1.5, 6 * pattern.directionSdRadians() + 0.5));
        return root(pattern, share, -reach, reach);
    }

    /** Regula falsi, Illinois variant: the share rises with the side. */
    private static double root(ShotPattern pattern, double share, double from, double to) {
        double low = from;
        double high = to;
        double atLow = shareLeftOf(pattern, low) - share;
        double atHigh = shareLeftOf(pattern, high) - share;
        int kept = 0;
        while (high - low > TOLERANCE_METRES) {
            double x = atLow < 0 && atHigh > 0 ? (low * atHigh - high * atLow) / (atHigh - atLow) : (low + high) / 2;
            double at = shareLeftOf(pattern, x) - share;
            if (Math.abs(at) < TOLERANCE_SHARE) {
                return x;
            }
            if (at < 0) {
                low = x;
                atLow = at;
                atHigh = kept < 0 ? atHigh / 2 : atHigh;
                kept = -1;
            } else {
                high = x;
                atHigh = at;
                atLow = kept > 0 ? atLow / 2 : atLow;
                kept = 1;
            }
        }
        return (low + high) / 2;
    }

    /** Share of the balls that land left of this side. */
    public static double shareLeftOf(ShotPattern p, double sideMetres) {
        double sum = (1 - p.mishitRate())
                * component(
                        sideMetres, p.carryMetres(), p.carrySdMetres(), p.directionRadians(), p.directionSdRadians());
        for (Mishit m : p.mishits()) {
            sum += m.rate()
                    * component(
                            sideMetres,
                            m.carryFactor() * p.carryMetres(),
                            m.carryFactorSd() * p.carryMetres(),
                            p.directionRadians() + m.directionRadians(),
                            m.directionSdRadians());
        }
        return sum;
    }

    private static double component(double side, double carry, double carrySd, double direction, double directionSd) {
        return MIDDLE_WEIGHT * left(side, carry, direction, directionSd)
                + NEAR_WEIGHT * left(side, carry + NEAR * carrySd, direction, directionSd)
                + NEAR_WEIGHT * left(side, carry - NEAR * carrySd, direction, directionSd)
                + FAR_WEIGHT * left(side, carry + FAR * carrySd, direction, directionSd)
                + FAR_WEIGHT * left(side, carry - FAR * carrySd, direction, directionSd);
    }

    private static double left(double side, double carry, double direction, double directionSd) {
        if (carry <= Math.abs(side)) {
            return side >= 0 ? 1 : 0;
        }
        double z = (arcSine(side / carry) - direction) / directionSd;
        return NormalShare.below(z);
    }

    /** Series to the ninth power below a half (error under 4e-6), the library beyond. */
    private static double arcSine(double x) {
        if (Math.abs(x) > 0.4) {
            return Math.asin(x);
        }
        double y = x * x;
        return x * (1 + y * (1.0 / 6 + y * (3.0 / 40 + y * (15.0 / 336 + y * 105.0 / 3456))));
    }
}
