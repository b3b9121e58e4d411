package loopwright.numerics;

import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;

/**
 * One step of slice sampling on the line (R. M. Neal, "Slice sampling", Annals of Statistics 31, 2003, figures 3 and 5):
 * the new point has the density whose logarithm is given as its stationary distribution. Needs a unimodal density to step
 * out over; the width only costs time.
 */
public final class SliceDraw {
    private static final int MOST_STEPS = 50;

    private SliceDraw() {}

    public static double next(DoubleUnaryOperator logDensity, double from, double width, RandomGenerator random) {
        double level = logDensity.applyAsDouble(from) - random.nextExponential();
        double left = from - width * random.nextDouble();
        double right = left + width;
        for (int i = 0; i < MOST_STEPS && logDensity.applyAsDouble(left) > level; i++) {
            left -= width;
        }
        for (int i = 0; i < MOST_STEPS && logDensity.applyAsDouble(right) > level; i++) {
            right += width;
        }
        while (true) {
            double x = left + (right - left) * random.nextDouble();
            if (logDensity.applyAsDouble(x) >= level || right - left < 1e-12) {
                return x;
            }
            if (x < from) {
                left = x;
            } else {
                right = x;
            }
        }
    }
}
