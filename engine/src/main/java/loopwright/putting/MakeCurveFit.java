package loopwright.putting;

import java.util.List;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Fits a {@link MakeCurve} to putts counted by distance, by greatest likelihood.
 *
 * <p>Two likelihoods. Binomial: made ~ Binomial(tries, P). With excess: rate ~ N(P, sqrt(P (1 - P) / tries + e^2)),
 * where e is one more free parameter for what the form misses; with over a million putts the binomial is so sharp that a
 * slightly wrong form has several optima (the Stan case study's own finding), so large data need the second.
 */
public final class MakeCurveFit {
    private static final double EDGE = 1e-12;

    private final MakeCurve curve;
    private final double[] values;
    private final double excess;
    private final double negativeLogLikelihood;

    private MakeCurveFit(MakeCurve curve, double[] values, double excess, double negativeLogLikelihood) {
        this.curve = curve;
        this.values = values;
        this.excess = excess;
        this.negativeLogLikelihood = negativeLogLikelihood;
    }

    public static MakeCurveFit binomial(MakeCurve curve, List<MadePutts> putts, double... start) {
        double[] best = minimise(p -> binomialLoss(curve, putts, p), start);
        return new MakeCurveFit(curve, best, 0, binomialLoss(curve, putts, best));
    }

    /** As {@link #binomial}, with the excess estimated too. */
    public static MakeCurveFit withExcess(MakeCurve curve, List<MadePutts> putts, double... start) {
        double[] extended = java.util.Arrays.copyOf(start, start.length + 1);
        extended[start.length] = 0.01;
        double[] best = minimise(p -> excessLoss(curve, putts, p), extended);
        double[] values = java.util.Arrays.copyOf(best, start.length);
        return new MakeCurveFit(curve, values, Math.abs(best[start.length]), excessLoss(curve, putts, best));
    }

    private static double binomialLoss(MakeCurve curve, List<MadePutts> putts, double[] p) {
        double loss = 0;
        for (MadePutts putt : putts) {
            double chance = within(curve.at(putt.metres(), p));
            loss -= putt.made() * Math.log(chance) + (putt.tries() - putt.made()) * Math.log1p(-chance);
        }
        return loss;
    }

    private static double excessLoss(MakeCurve curve, List<MadePutts> putts, double[] p) {
        double excess = p[p.length - 1];
        double loss = 0;
        for (MadePutts putt : putts) {
            double chance = within(curve.at(putt.metres(), p));
            double variance = chance * (1 - chance) / putt.tries() + excess * excess;
            double miss = putt.rate() - chance;
            loss += 0.5 * (Math.log(2 * Math.PI * variance) + miss * miss / variance);
        }
        return loss;
    }

    private static double within(double chance) {
        return Math.max(EDGE, Math.min(1 - EDGE, chance));
    }

    /** Nelder and Mead's simplex, started again from its answer until that no longer helps. */
    static double[] minimise(MultivariateFunction loss, double[] start) {
        double[] best = start.clone();
        double value = Double.POSITIVE_INFINITY;
        for (int round = 0; round < 20; round++) {
            PointValuePair found = simplex(loss, best);
            best = found.getPoint();
            if (value - found.getValue() < 1e-9) {
                break;
            }
            value = found.getValue();
        }
        return best;
    }

    private static PointValuePair simplex(MultivariateFunction loss, double[] start) {
        double[] steps = new double[start.length];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = start[i] == 0 ? 0.1 : 0.1 * start[i];
        }
        return new SimplexOptimizer(new SimpleValueChecker(1e-12, 1e-12))
                .optimize(
                        new MaxEval(20_000),
                        new ObjectiveFunction(loss),
                        GoalType.MINIMIZE,
                        new InitialGuess(start),
                        new NelderMeadSimplex(steps));
    }

    public MakeCurve curve() {
        return curve;
    }

    public double value(int parameter) {
        return values[parameter];
    }

    /** What the form misses, as a standard deviation of the rate; 0 for a binomial fit. */
    public double excess() {
        return excess;
    }

    public double negativeLogLikelihood() {
        return negativeLogLikelihood;
    }

    public double at(double metres) {
        return curve.at(metres, values);
    }
}
