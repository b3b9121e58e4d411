package loopwright.player;

import java.util.List;

/** One draw from the posterior: the course patterns of all swings, in their order. */
final class FitDraw {
    final double[] carry;
    final double[] direction;
    final double[] logDirectionSd;
    final double[] logCarrySd;
    final double[] mishitRate;
    final double[][] kindShare;

    FitDraw(FitState s) {
        carry = s.carry.clone();
        direction = s.direction.clone();
        logDirectionSd = s.logDirectionSd.clone();
        logCarrySd = s.logCarrySd.clone();
        mishitRate = s.mishitRate.clone();
        kindShare = s.kindShare.clone();
    }

    private FitDraw(FitDraw like) {
        int n = like.carry.length;
        carry = new double[n];
        direction = new double[n];
        logDirectionSd = new double[n];
        logCarrySd = new double[n];
        mishitRate = new double[n];
        kindShare = new double[like.kindShare.length][];
        for (int f = 0; f < kindShare.length; f++) {
            kindShare[f] = new double[like.kindShare[f].length];
        }
    }

    static FitDraw mean(List<FitDraw> draws) {
        FitDraw sum = new FitDraw(draws.get(0));
        double share = 1.0 / draws.size();
        for (FitDraw d : draws) {
            add(sum.carry, d.carry, share);
            add(sum.direction, d.direction, share);
            add(sum.logDirectionSd, d.logDirectionSd, share);
            add(sum.logCarrySd, d.logCarrySd, share);
            add(sum.mishitRate, d.mishitRate, share);
            for (int f = 0; f < d.kindShare.length; f++) {
                add(sum.kindShare[f], d.kindShare[f], share);
            }
        }
        return sum;
    }

    private static void add(double[] sum, double[] values, double share) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += values[i] * share;
        }
    }
}
