package loopwright.putting;

import java.util.Arrays;
import java.util.List;

/** The best pace of every node and what follows from it, by Gauss-Seidel sweeps until no value moves by 1e-12. */
final class LevelSolution {
    private static final double SETTLED = 1e-12;
    private static final int MOST_SWEEPS = 10_000;

    private final double[] expected;
    private final LevelPace[] best;
    private final double[][] probability;

    private LevelSolution(double[] expected, LevelPace[] best, double[][] probability) {
        this.expected = expected;
        this.best = best;
        this.probability = probability;
    }

    static LevelSolution of(double[] nodes, List<List<LevelPace>> paces) {
        double[] expected = new double[nodes.length];
        Arrays.fill(expected, 2);
        LevelPace[] best = new LevelPace[nodes.length];
        double moved = Double.POSITIVE_INFINITY;
        for (int sweep = 0; moved > SETTLED; sweep++) {
            if (sweep == MOST_SWEEPS) {
                throw new IllegalStateException("the odds of a level green did not settle: " + moved);
            }
            moved = sweep(expected, best, paces);
        }
        return new LevelSolution(expected, best, probabilities(best));
    }

    private static double sweep(double[] expected, LevelPace[] best, List<List<LevelPace>> paces) {
        double moved = 0;
        for (int i = 0; i < expected.length; i++) {
            double least = Double.POSITIVE_INFINITY;
            for (LevelPace pace : paces.get(i)) {
                double value = 1 + pace.expectedOverLeaves(expected);
                if (value < least) {
                    least = value;
                    best[i] = pace;
                }
            }
            moved = Math.max(moved, Math.abs(least - expected[i]));
            expected[i] = least;
        }
        return moved;
    }

    /** P(k putts) = sum over leaves of P(k - 1); what is left after the last but one is folded into the last. */
    private static double[][] probabilities(LevelPace[] best) {
        int most = LevelGreenOdds.MOST_PUTTS;
        double[][] p = new double[most][best.length];
        for (int i = 0; i < best.length; i++) {
            p[0][i] = best[i].holed();
        }
        double[] sum = p[0].clone();
        for (int k = 1; k < most; k++) {
            for (int i = 0; i < best.length; i++) {
                p[k][i] = k == most - 1 ? 1 - sum[i] : best[i].expectedOverLeaves(p[k - 1]);
                sum[i] += p[k][i];
            }
        }
        return p;
    }

    double[] expected() {
        return expected;
    }

    double[] overshoot() {
        double[] out = new double[best.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = best[i].overshootMetres();
        }
        return out;
    }

    double[] probability(int putts) {
        return probability[putts - 1];
    }
}
