package loopwright.practice;

import java.util.function.DoubleUnaryOperator;

/**
 * Averages over a standard normal on even points with its density as weights, scaled to sum to 1: exact to rounding for smooth
 * functions (trapezium rule), and kind to the edges of zones.
 */
final class NormalGrid {
    private final double[] z;
    private final double[] weight;

    /** {@code points} is 2 or more; {@code reach} how many standard deviations either way. */
    NormalGrid(int points, double reach) {
        z = new double[points];
        weight = new double[points];
        double sum = 0;
        for (int i = 0; i < points; i++) {
            z[i] = reach * (2.0 * i / (points - 1) - 1);
            weight[i] = Math.exp(-z[i] * z[i] / 2);
            sum += weight[i];
        }
        for (int i = 0; i < points; i++) {
            weight[i] /= sum;
        }
    }

    double mean(DoubleUnaryOperator f) {
        double sum = 0;
        for (int i = 0; i < z.length; i++) {
            sum += weight[i] * f.applyAsDouble(z[i]);
        }
        return sum;
    }
}
