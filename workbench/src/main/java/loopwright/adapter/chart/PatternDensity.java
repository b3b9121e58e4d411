package loopwright.adapter.chart;

import java.util.Arrays;
import loopwright.player.Mishit;
import loopwright.player.ShotPattern;

/**
 * The density of a shot pattern over the ground, per square metre, forward and right of the player along his aim.
 *
 * <p>A ball of carry C and direction D lands at (C cos D, C sin D), so the density there is f(C, D) / C. Solid: C and D
 * jointly normal. Mishit: C normal about its factor times the solid mean, D normal, independent.
 */
final class PatternDensity {
    private final ShotPattern pattern;

    PatternDensity(ShotPattern pattern) {
        this.pattern = pattern;
    }

    double solid(double forwardMetres, double rightMetres) {
        double carry = Math.hypot(forwardMetres, rightMetres);
        double direction = Math.atan2(rightMetres, forwardMetres);
        double u = (carry - pattern.carryMetres()) / pattern.carrySdMetres();
        double v = (direction - pattern.directionRadians()) / pattern.directionSdRadians();
        double rest = 1 - pattern.correlation() * pattern.correlation();
        double power = (u * u - 2 * pattern.correlation() * u * v + v * v) / (2 * rest);
        double peak = 2 * Math.PI * pattern.carrySdMetres() * pattern.directionSdRadians() * Math.sqrt(rest);
        return (1 - pattern.mishitRate()) * Math.exp(-power) / peak / Math.max(1, carry);
    }

    double mishit(double forwardMetres, double rightMetres) {
        double carry = Math.hypot(forwardMetres, rightMetres);
        double direction = Math.atan2(rightMetres, forwardMetres);
        double sum = 0;
        for (Mishit m : pattern.mishits()) {
            // A mode without spread of its own is drawn with 2 m and 1 degree, the width of a pencil line on the chart.
            double carrySd = Math.max(2, m.carryFactorSd() * pattern.carryMetres());
            double directionSd = Math.max(Math.toRadians(1), m.directionSdRadians());
            double u = (carry - m.carryFactor() * pattern.carryMetres()) / carrySd;
            double v = (direction - pattern.directionRadians() - m.directionRadians()) / directionSd;
            sum += m.rate() * Math.exp(-(u * u + v * v) / 2) / (2 * Math.PI * carrySd * directionSd);
        }
        return sum / Math.max(1, carry);
    }

    double whole(double forwardMetres, double rightMetres) {
        return solid(forwardMetres, rightMetres) + mishit(forwardMetres, rightMetres);
    }

    /** True if a ball that landed here more likely came from a mishit than from a solid strike. */
    boolean likelyMishit(double forwardMetres, double rightMetres) {
        return mishit(forwardMetres, rightMetres) > solid(forwardMetres, rightMetres);
    }

    /**
     * The density level whose outline is the smallest that holds a share of all balls.
     *
     * @param values density on a grid that covers all but a negligible part of the pattern
     * @param cellSquareMetres ground of one grid point
     */
    static double levelHolding(double share, double[][] values, double cellSquareMetres) {
        double[] sorted =
                Arrays.stream(values).flatMapToDouble(Arrays::stream).sorted().toArray();
        double held = 0;
        for (int i = sorted.length - 1; i >= 0; i--) {
            held += sorted[i] * cellSquareMetres;
            if (held >= share) {
                return sorted[i];
            }
        }
        return sorted[0];
    }
}
