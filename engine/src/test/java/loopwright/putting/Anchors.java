package loopwright.putting;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/** The distances by which published putting is described, in feet. */
final class Anchors {
    static final double FOOT = 0.3048;
    static final GreenSpeed TEN_FEET = GreenSpeed.ofRollMetres(10 * FOOT);

    private Anchors() {}

    static double halfHoledFeet(PuttingOdds odds) {
        return solve(feet -> odds.probability(feet * FOOT, 1) - 0.5);
    }

    static double twoPuttFeet(PuttingOdds odds) {
        return solve(feet -> odds.expectedPutts(feet * FOOT) - 2);
    }

    static double threePuttFeet(PuttingOdds odds, double chance) {
        return solve(feet -> odds.probability(feet * FOOT, 3) - chance);
    }

    private static double solve(UnivariateFunction f) {
        return new BrentSolver(1e-6).solve(200, f, 1, 90);
    }
}
