package loopwright.player;

import java.util.random.RandomGenerator;
import loopwright.numerics.GammaDraw;
import loopwright.numerics.SliceDraw;

/** Draws the mishit rates of a fit, shared and by family, and the shares of their kinds, from the counts of components. */
final class FitMishits {
    /** Course, grass of a range, mat: how many mishits the ground hides. */
    private static final double[] SHOWN = {1, 1 - PriorTable.MAT_HIDES / 2, 1 - PriorTable.MAT_HIDES};

    private final FitSwings swings;
    private final FitBalls balls;
    private final FitComponents components;
    private final FitState state;
    private final RandomGenerator random;
    private final double[][] tried;
    private final double[][] missed;
    private final double[] total;

    FitMishits(FitSwings swings, FitBalls balls, FitComponents components, FitState state, RandomGenerator random) {
        this.swings = swings;
        this.balls = balls;
        this.components = components;
        this.state = state;
        this.random = random;
        tried = new double[swings.size()][SHOWN.length];
        missed = new double[swings.size()][SHOWN.length];
        total = new double[swings.size()];
    }

    void draw() {
        count();
        state.sharedMishits = SliceDraw.next(
                x -> {
                    double now = state.sharedMishits;
                    state.sharedMishits = x;
                    double value = logLikelihood(-1) - square(x / PriorTable.SHARED_LOG_MISHIT_SD) / 2;
                    state.sharedMishits = now;
                    return value;
                },
                state.sharedMishits,
                PriorTable.SHARED_LOG_MISHIT_SD,
                random);
        for (int f = 0; f < state.familyMishits.length; f++) {
            drawFamily(f);
        }
        drawKinds();
    }

    private void drawFamily(int f) {
        if (!hasBalls(f)) {
            state.familyMishits[f] = PriorTable.FAMILY_LOG_MISHIT_SD * random.nextGaussian();
            return;
        }
        state.familyMishits[f] = SliceDraw.next(
                x -> {
                    double now = state.familyMishits[f];
                    state.familyMishits[f] = x;
                    double value = logLikelihood(f) - square(x / PriorTable.FAMILY_LOG_MISHIT_SD) / 2;
                    state.familyMishits[f] = now;
                    return value;
                },
                state.familyMishits[f],
                PriorTable.FAMILY_LOG_MISHIT_SD,
                random);
    }

    private void count() {
        java.util.Arrays.fill(total, 0);
        for (int j = 0; j < tried.length; j++) {
            java.util.Arrays.fill(tried[j], 0);
            java.util.Arrays.fill(missed[j], 0);
        }
        for (int i = 0; i < balls.size; i++) {
            int k = components.component[i];
            if (k == FitComponents.STRAY) {
                continue;
            }
            int ground = balls.course[i] ? 0 : balls.mat[i] ? 2 : 1;
            tried[balls.swing[i]][ground] += balls.weight[i];
            total[balls.swing[i]] += balls.weight[i];
            missed[balls.swing[i]][ground] += k > 0 ? balls.weight[i] : 0;
        }
    }

    private boolean hasBalls(int family) {
        for (int j = 0; j < tried.length; j++) {
            if (swings.family(j) == family && total[j] > 0) {
                return true;
            }
        }
        return false;
    }

    /** Of one family's balls, or of all (-1). */
    private double logLikelihood(int family) {
        double sum = 0;
        for (int j = 0; j < tried.length; j++) {
            if (!(total[j] > 0) || (family >= 0 && swings.family(j) != family)) {
                continue;
            }
            double rate = state.mishitRate(swings, j);
            for (int g = 0; g < SHOWN.length; g++) {
                if (tried[j][g] > 0) {
                    sum += missed[j][g] * Math.log(rate * SHOWN[g]);
                    sum += (tried[j][g] - missed[j][g]) * Math.log(1 - rate * SHOWN[g]);
                }
            }
        }
        return sum;
    }

    private void drawKinds() {
        double[][] counts = new double[state.kindShare.length][];
        for (int j = 0; j < swings.size(); j++) {
            int f = swings.family(j);
            if (counts[f] == null) {
                ShotPattern p = swings.pattern(j);
                counts[f] = p.mishits().stream()
                        .mapToDouble(m -> PriorTable.MISHIT_KIND_BALLS * m.rate() / p.mishitRate())
                        .toArray();
            }
        }
        for (int i = 0; i < balls.size; i++) {
            if (components.component[i] > 0) {
                counts[swings.family(balls.swing[i])][components.component[i] - 1] += balls.weight[i];
            }
        }
        for (int f = 0; f < counts.length; f++) {
            if (counts[f] != null) {
                state.kindShare[f] = dirichlet(counts[f]);
            }
        }
    }

    private double[] dirichlet(double[] shapes) {
        double[] out = new double[shapes.length];
        double sum = 0;
        for (int k = 0; k < shapes.length; k++) {
            out[k] = GammaDraw.next(shapes[k], random);
            sum += out[k];
        }
        for (int k = 0; k < shapes.length; k++) {
            out[k] /= sum;
        }
        return out;
    }

    private static double square(double x) {
        return x * x;
    }
}
