package loopwright.strategy;

import java.util.Arrays;

/**
 * G. H. Hardy's model of a golfer (Mathematical Gazette 29, 1945; Cohen 2002; van der Ven 2012): a stroke is good and
 * moves the ball two strokes' worth, bad and moves it nothing, or ordinary and moves it one; a hole of par n is over
 * when n has been covered. Test code: its exact answers are published.
 */
public final class HardyGame {
    /** The tail is cut where less than this is left, far below every tolerance used with it. */
    private static final double TAIL = 1e-15;

    private HardyGame() {}

    /** The distribution of strokes on a hole of this par. */
    public static ScoreDistribution strokes(int par, double good, double bad) {
        double[] reached = new double[par];
        reached[0] = 1;
        double[] mass = new double[200];
        double left = 1;
        int strokes = 0;
        while (left > TAIL) {
            double[] next = new double[par];
            for (int sum = 0; sum < par; sum++) {
                next[sum] += reached[sum] * bad;
                mass[strokes] += arrive(next, sum + 1, reached[sum] * (1 - good - bad));
                mass[strokes] += arrive(next, sum + 2, reached[sum] * good);
            }
            reached = next;
            left = Arrays.stream(next).sum();
            strokes++;
        }
        return ScoreDistribution.of(1, Arrays.copyOf(mass, strokes));
    }

    private static double arrive(double[] next, int sum, double probability) {
        if (sum >= next.length) {
            return probability;
        }
        next[sum] += probability;
        return 0;
    }
}
