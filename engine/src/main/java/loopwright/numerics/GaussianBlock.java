package loopwright.numerics;

import java.util.random.RandomGenerator;

/**
 * Draws from a normal distribution given by its precision: x ~ N(Q^-1 b, Q^-1), by the Cholesky factor Q = L L'. A reusable
 * workspace: fill {@link #precision} (lower triangle) and {@link #shift}, then draw.
 */
public final class GaussianBlock {
    private final int n;
    /** Q, of which the lower triangle is read and overwritten. */
    public final double[][] precision;
    /** b; overwritten. */
    public final double[] shift;

    public GaussianBlock(int n) {
        this.n = n;
        precision = new double[n][n];
        shift = new double[n];
    }

    public void clear() {
        for (int i = 0; i < n; i++) {
            java.util.Arrays.fill(precision[i], 0, i + 1, 0);
            shift[i] = 0;
        }
    }

    /** Adds weight * (sum of the named entries - y)^2 to the quadratic form; negative indices are skipped. */
    public void observe(double weight, double y, int first, int second, int third) {
        int[] entries = {first, second, third};
        for (int a : entries) {
            if (a < 0) {
                continue;
            }
            shift[a] += weight * y;
            for (int b : entries) {
                if (b >= 0 && b <= a) {
                    precision[a][b] += weight;
                }
            }
        }
    }

    /** One draw, written to {@code out}. */
    public void draw(RandomGenerator random, double[] out) {
        factor();
        for (int i = 0; i < n; i++) {
            double sum = shift[i];
            for (int k = 0; k < i; k++) {
                sum -= precision[i][k] * shift[k];
            }
            shift[i] = sum / precision[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = shift[i] + random.nextGaussian();
            for (int k = i + 1; k < n; k++) {
                sum -= precision[k][i] * out[k];
            }
            out[i] = sum / precision[i][i];
        }
    }

    private void factor() {
        for (int j = 0; j < n; j++) {
            for (int i = j; i < n; i++) {
                double sum = precision[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= precision[i][k] * precision[j][k];
                }
                precision[i][j] = i == j ? Math.sqrt(sum) : sum / precision[j][j];
            }
        }
    }
}
