package loopwright.putting;

import java.util.Arrays;
import java.util.List;

/**
 * Putting out, solved: the best pace of every node and what follows from it, by Gauss-Seidel sweeps until no value moves
 * by 1e-12.
 */
final class PuttingOut {
    private static final double SETTLED = 1e-12;
    private static final int MOST_SWEEPS = 10_000;

    private final double[] expected;
    private final CandidatePace[] best;
    private final double[][] probability;

    private PuttingOut(double[] expected, CandidatePace[] best, double[][] probability) {
        this.expected = expected;
        this.best = best;
        this.probability = probability;
    }

    static PuttingOut of(List<? extends List<? extends CandidatePace>> paces) {
        double[] expected = new double[paces.size()];
        Arrays.fill(expected, 2);
        CandidatePace[] best = new CandidatePace[paces.size()];
        double moved = Double.POSITIVE_INFINITY;
        for (int sweep = 0; moved > SETTLED; sweep++) {
            if (sweep == MOST_SWEEPS) {
                throw new IllegalStateException("the odds of a green did not settle: " + moved);
            }
            moved = sweep(expected, best, paces);
        }
        return new PuttingOut(expected, best, probabilities(best));
    }

    private static double sweep(
            double[] expected, CandidatePace[] best, List<? extends List<? extends CandidatePace>> paces) {
        double moved = 0;
        for (int i = 0; i < expected.length; i++) {
            double least = Double.POSITIVE_INFINITY;
            for (CandidatePace pace : paces.get(i)) {
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
    private static double[][] probabilities(CandidatePace[] best) {
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
