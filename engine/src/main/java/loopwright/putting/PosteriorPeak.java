package loopwright.putting;

import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/** The least of a loss (minus a log posterior) and the normal approximation there, by central differences. */
final class PosteriorPeak {
    private static final double STEP = 0.01;

    private final double[] peak;
    private final RealMatrix covariance;

    private PosteriorPeak(double[] peak, RealMatrix covariance) {
        this.peak = peak;
        this.covariance = covariance;
    }

    static PosteriorPeak of(MultivariateFunction loss, double[] start) {
        double[] peak = MakeCurveFit.minimise(loss, start);
        RealMatrix hessian = new Array2DRowRealMatrix(peak.length, peak.length);
        for (int i = 0; i < peak.length; i++) {
            for (int j = 0; j <= i; j++) {
                double h = second(loss, peak, i, j);
                hessian.setEntry(i, j, h);
                hessian.setEntry(j, i, h);
            }
        }
        return new PosteriorPeak(peak, new LUDecomposition(hessian).getSolver().getInverse());
    }

    /** d2f/dxi dxj = [f(+,+) - f(+,-) - f(-,+) + f(-,-)] / (4 h^2); for i = j the steps add up to 2 h. */
    private static double second(MultivariateFunction loss, double[] at, int i, int j) {
        return (moved(loss, at, i, j, 1, 1)
                        - moved(loss, at, i, j, 1, -1)
                        - moved(loss, at, i, j, -1, 1)
                        + moved(loss, at, i, j, -1, -1))
                / (4 * STEP * STEP);
    }

    private static double moved(MultivariateFunction loss, double[] at, int i, int j, int signI, int signJ) {
        double[] there = at.clone();
        there[i] += signI * STEP;
        there[j] += signJ * STEP;
        return loss.value(there);
    }

    double at(int i) {
        return peak[i];
    }

    double sd(int i) {
        return Math.sqrt(Math.max(0, covariance.getEntry(i, i)));
    }
}
