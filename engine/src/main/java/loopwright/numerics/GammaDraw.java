package loopwright.numerics;

import java.util.random.RandomGenerator;

/**
 * Draws from the gamma distribution of scale 1 (G. Marsaglia and W. W. Tsang, "A simple method for generating gamma
 * variables", ACM Transactions on Mathematical Software 26, 2000). Any shape above zero.
 */
public final class GammaDraw {
    private GammaDraw() {}

    public static double next(double shape, RandomGenerator random) {
        if (!(shape > 0)) {
            throw new IllegalArgumentException("a gamma shape is above zero, not " + shape);
        }
        if (shape < 1) {
            return next(shape + 1, random) * Math.pow(random.nextDouble(), 1 / shape);
        }
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = random.nextGaussian();
            double v = 1 + c * x;
            v = v * v * v;
            if (v > 0 && Math.log(random.nextDouble()) < 0.5 * x * x + d - d * v + d * Math.log(v)) {
                return d * v;
            }
        }
    }
}
