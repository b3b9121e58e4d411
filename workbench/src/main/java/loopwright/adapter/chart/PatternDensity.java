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
    /** Steps in which an outline's reach is looked for; the label at its edge needs as much room. */
    private static final double REACH_STEP_METRES = 3;

    /** Nearer to the player the ground of a degree shrinks to nothing: the density is held, or a few topped balls would be a peak. */
    private static final double NEAREST_METRES = 10;

    private final ShotPattern pattern;

    /** How far an outline reaches: greatest distance from the line, and greatest and least length. */
    record Reach(double sideMetres, double farMetres, double nearMetres) {}

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
        return (1 - pattern.mishitRate()) * Math.exp(-power) / peak / Math.max(NEAREST_METRES, carry);
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
        return sum / Math.max(NEAREST_METRES, carry);
    }

    double whole(double forwardMetres, double rightMetres) {
        return solid(forwardMetres, rightMetres) + mishit(forwardMetres, rightMetres);
    }

    /** True if a ball that landed here more likely came from a mishit than from a solid strike. */
    boolean likelyMishit(double forwardMetres, double rightMetres) {
        return mishit(forwardMetres, rightMetres) > solid(forwardMetres, rightMetres);
    }

    /** The reach of the smallest outline that holds a share of all balls, to {@value #REACH_STEP_METRES} m and not under. */
    Reach reachOf(double share) {
        double step = REACH_STEP_METRES;
        double wide =
                pattern.carryMetres() * (Math.abs(pattern.directionRadians()) + 4 * pattern.wholeDirectionSdRadians());
        int columns = 2 * (int) Math.ceil(wide / step) + 1;
        int rows = (int) Math.ceil((pattern.carryMetres() + 4 * pattern.carrySdMetres()) / step) + 1;
        double[][] values = new double[rows][columns];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                values[r][c] = whole(r * step, (c - columns / 2) * step);
            }
        }
        double level = levelHolding(share, values, step * step);
        double side = 0;
        double far = 0;
        double near = Double.POSITIVE_INFINITY;
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                if (values[r][c] >= level) {
                    side = Math.max(side, Math.abs(c - columns / 2) * step);
                    far = Math.max(far, r * step);
                    near = Math.min(near, r * step);
                }
            }
        }
        // the tail of topped balls is narrow, and its end hangs on the level most
        return new Reach(side + step, far + step, near - 2 * step);
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
