package loopwright.putting;

import org.hipparchus.special.Erf;

/** The normal distribution in the forms the odds need. */
final class NormalLaw {
    private NormalLaw() {}

    /** Standard density. */
    static double density(double z) {
        return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
    }

    /** Standard distribution function, without loss in the lower tail. */
    static double below(double z) {
        return 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }

    /** Probability between two values of a normal with a mean and a standard deviation. */
    static double between(double from, double to, double mean, double sd) {
        double root = Math.sqrt(2) * sd;
        return 0.5 * Erf.erf((from - mean) / root, (to - mean) / root);
    }
}
