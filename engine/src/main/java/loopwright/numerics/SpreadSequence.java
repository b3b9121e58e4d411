package loopwright.numerics;

import java.util.random.RandomGenerator;
import org.hipparchus.special.Erf;

/**
 * Evenly spread points in the unit cube: the additive recurrence with the generalised golden ratio (the positive root
 * of x^(d+1) = x + 1; M. Roberts' R-sequence, from memory), started at a random point. Errors of smooth means fall
 * nearly as 1/n instead of 1/sqrt(n).
 */
public final class SpreadSequence {
    private final double[] step;
    private final double[] at;

    /** A sequence in {@code dimensions} dimensions; its start is drawn from the generator. */
    public SpreadSequence(int dimensions, RandomGenerator random) {
        double root = 2;
        for (int i = 0; i < 60; i++) {
            root = Math.pow(1 + root, 1.0 / (dimensions + 1));
        }
        step = new double[dimensions];
        at = new double[dimensions];
        for (int i = 0; i < dimensions; i++) {
            step[i] = Math.pow(root, -(i + 1)) % 1;
            at[i] = random.nextDouble();
        }
    }

    /** Writes the next point, each coordinate in [0, 1). */
    public void next(double[] out) {
        for (int i = 0; i < at.length; i++) {
            at[i] += step[i];
            if (at[i] >= 1) {
                at[i] -= 1;
            }
            out[i] = at[i];
        }
    }

    /** The standard normal quantile of u; u is held within 1e-9 of the ends. */
    public static double normal(double u) {
        double inside = Math.min(1 - 1e-9, Math.max(1e-9, u));
        return Math.sqrt(2) * Erf.erfInv(2 * inside - 1);
    }
}
