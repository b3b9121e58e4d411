package loopwright.player;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import loopwright.ground.Situation;
import loopwright.ground.Surface;

/**
 * Chips, pitches and bunker shots fitted from records of distance, leave and holing. Of each kind two numbers are unknown:
 * a factor on the spread of the level, log normal, partly shared by the three kinds, and one on the rates of mishits. The
 * posterior is summed over a grid, no draws: exact to the grid, the same bytes every time. A ball that was not said to be
 * mishit may be any of the components ({@link TouchSpread}).
 */
public final class TouchFit {
    private static final double SHARED_SD = PriorTable.TOUCH_SHARED_LOG_SPREAD_SD;
    private static final double OWN_SD = PriorTable.TOUCH_OWN_LOG_SPREAD_SD;
    private static final double PRIOR_SD = Math.hypot(SHARED_SD, OWN_SD);
    private static final double MISHIT_SD = PriorTable.TOUCH_LOG_MISHIT_SD;
    /** The grids reach this many prior deviations to either side. */
    private static final double REACH = 4;

    private static final int SPREADS = 65;
    private static final int MISHITS = 33;

    private final TouchShot shot;
    private final int balls;
    /** Joint posterior of the kind by itself, spread by mishits, prior of the spread left out. */
    private final double[][] weight = new double[SPREADS][MISHITS];
    /** By spread: what the kind by itself says, summed over mishits. */
    private final double[] likelihood = new double[SPREADS];

    private TouchFit(TouchShot shot, List<TouchBall> log) {
        this.shot = shot;
        List<TouchBall> own = log.stream()
                .filter(b -> b.kind() == shot.kind() && b.isTelling())
                .toList();
        balls = own.size();
        double[][] logs = new double[SPREADS][MISHITS];
        own.forEach(ball -> add(ball, logs));
        double most = Double.NEGATIVE_INFINITY;
        for (double[] row : logs) {
            for (double x : row) {
                most = Math.max(most, x);
            }
        }
        for (int i = 0; i < SPREADS; i++) {
            for (int j = 0; j < MISHITS; j++) {
                weight[i][j] = Math.exp(logs[i][j] - most) * normal(mishit(j) / MISHIT_SD);
                likelihood[i] += weight[i][j];
            }
        }
    }

    /** Fits the short shots of a player's level to his record; a kind without a ball follows the others, without any all stay. */
    public static List<TouchReport> of(List<TouchShot> level, List<TouchBall> log) {
        List<TouchFit> fits =
                level.stream().map(shot -> new TouchFit(shot, log)).toList();
        boolean told = fits.stream().anyMatch(f -> f.balls > 0);
        List<TouchReport> out = new ArrayList<>();
        for (TouchFit fit : fits) {
            out.add(fit.report(fit.given(fits), told));
        }
        return out;
    }

    private void add(TouchBall ball, double[][] logs) {
        TouchSpread at = new TouchSpread(shot, ball);
        int kinds = shot.mishits().size();
        double[] seen = new double[kinds + 1];
        for (int k = 1; k <= kinds; k++) {
            Mishit.Kind kind = shot.mishits().get(k - 1).kind();
            seen[k] = ball.mishit().orElse(kind) == kind ? chance(ball, at, k, 1) : 0;
        }
        for (int i = 0; i < SPREADS; i++) {
            seen[0] = ball.mishit().isPresent() ? 0 : chance(ball, at, 0, Math.exp(spread(i)));
            for (int j = 0; j < MISHITS; j++) {
                double factor = Math.exp(mishit(j));
                double solid = 1;
                double sum = 0;
                for (int k = 1; k <= kinds; k++) {
                    double rate = at.rate(k - 1, factor);
                    solid -= rate;
                    sum += rate * seen[k];
                }
                logs[i][j] += Math.log(Math.max(1e-300, sum + solid * seen[0]));
            }
        }
    }

    private static double chance(TouchBall ball, TouchSpread at, int component, double spread) {
        if (ball.holed()) {
            return at.holed(component, spread);
        }
        return ball.leaveMetres().isPresent()
                ? at.density(component, spread, ball.leaveMetres().getAsDouble())
                : 1;
    }

    /** By spread: the prior of this kind given what the other kinds say through the shared part, normalised later. */
    private double[] given(List<TouchFit> all) {
        double[] out = new double[SPREADS];
        for (int s = 0; s < SPREADS; s++) {
            double shared = SHARED_SD * deviations(s, SPREADS);
            double others = normal(shared / SHARED_SD);
            for (TouchFit other : all) {
                if (other != this) {
                    others *= other.evidenceAt(shared);
                }
            }
            for (int i = 0; i < SPREADS; i++) {
                out[i] += others * normal((spread(i) - shared) / OWN_SD);
            }
        }
        return out;
    }

    /** Mean likelihood of the kind if the shared part is this. */
    private double evidenceAt(double shared) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < SPREADS; i++) {
            double w = normal((spread(i) - shared) / OWN_SD);
            sum += w * likelihood[i];
            weights += w;
        }
        return sum / weights;
    }

    private TouchReport report(double[] prior, boolean told) {
        double[] spreads = new double[SPREADS];
        double[] mishits = new double[MISHITS];
        for (int i = 0; i < SPREADS; i++) {
            for (int j = 0; j < MISHITS; j++) {
                double w = prior[i] * weight[i][j];
                spreads[i] += w;
                mishits[j] += w;
            }
        }
        Interval spread = interval(
                spreads,
                IntStream.range(0, SPREADS).mapToDouble(TouchFit::spread).toArray());
        Interval mishit = interval(
                mishits,
                IntStream.range(0, MISHITS).mapToDouble(TouchFit::mishit).toArray());
        double rate = shot.mishits().stream().mapToDouble(Mishit::rate).sum();
        double most = StrikeModel.MOST_MISHITS / rate;
        double variance = variance(spreads);
        double mishitFactor = Math.min(most, Math.exp(mean(mishits, TouchFit::mishit)));
        Evidence evidence = new Evidence(balls, Math.min(1, variance / (PRIOR_SD * PRIOR_SD)));
        TouchShot fitted = told
                ? shot.withSpread(Math.exp(mean(spreads, TouchFit::spread)))
                        .withMishitsTimes(mishitFactor)
                        .resting(evidence)
                : shot;
        double at = usualMetres();
        TouchSpread usual = new TouchSpread(
                shot,
                at,
                LieTable.onTouchShot(
                        shot.kind() == TouchShot.Kind.BUNKER_SHOT ? Surface.BUNKER : Surface.FAIRWAY,
                        Situation.ORDINARY));
        return new TouchReport(
                fitted,
                map(spread, Math::exp),
                map(mishit, m -> Math.min(StrikeModel.MOST_MISHITS, rate * Math.exp(m))),
                at,
                map(spread, s -> halfWithin(usual, Math.exp(s), mishitFactor)),
                map(turned(spread), s -> share(usual, Math.exp(-s), mishitFactor, -1)));
    }

    /** Where such a shot is usually played from: common practice, no source. */
    private double usualMetres() {
        return shot.possibleMetres(
                switch (shot.kind()) {
                    case CHIP, BUNKER_SHOT, LOB, FRINGE_PUTT -> 12;
                    case PITCH -> 25;
                    case PUNCH -> shot.maxMetres();
                });
    }

    private double halfWithin(TouchSpread at, double spread, double mishits) {
        double low = 0;
        double high = 60;
        for (int i = 0; i < 16; i++) {
            double middle = (low + high) / 2;
            if (share(at, spread, mishits, middle) < 0.5) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Share of all balls within a distance of the hole; below 0: of those holed. */
    private double share(TouchSpread at, double spread, double mishits, double metres) {
        double solid = 1;
        double sum = 0;
        for (int k = 1; k <= shot.mishits().size(); k++) {
            double rate = at.rate(k - 1, mishits);
            solid -= rate;
            sum += rate * (metres < 0 ? at.holed(k, 1) : at.within(k, 1, metres));
        }
        return sum + solid * (metres < 0 ? at.holed(0, spread) : at.within(0, spread, metres));
    }

    /** The chance of holing falls as the spread grows. */
    private static Interval turned(Interval i) {
        return new Interval(-i.middle(), -i.high(), -i.low());
    }

    private static Interval map(Interval i, DoubleUnaryOperator f) {
        return new Interval(f.applyAsDouble(i.middle()), f.applyAsDouble(i.low()), f.applyAsDouble(i.high()));
    }

    private static double spread(int i) {
        return PRIOR_SD * deviations(i, SPREADS);
    }

    private static double mishit(int j) {
        return MISHIT_SD * deviations(j, MISHITS);
    }

    private static double deviations(int i, int nodes) {
        return REACH * (2.0 * i / (nodes - 1) - 1);
    }

    private static double normal(double z) {
        return Math.exp(-z * z / 2);
    }

    /** Posterior mean of a logarithm: what is planned with, as of the swings. */
    private static double mean(double[] weights, IntToDoubleFunction value) {
        double sum = 0;
        double all = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * value.applyAsDouble(i);
            all += weights[i];
        }
        return sum / all;
    }

    private static double variance(double[] weights) {
        double sum = 0;
        double squares = 0;
        double all = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * spread(i);
            squares += weights[i] * spread(i) * spread(i);
            all += weights[i];
        }
        return squares / all - sum / all * (sum / all);
    }

    /** Median and the 5 and 95 % points of a law on a grid, straight between the nodes. */
    private static Interval interval(double[] weights, double[] at) {
        return new Interval(quantile(weights, at, 0.5), quantile(weights, at, 0.05), quantile(weights, at, 0.95));
    }

    private static double quantile(double[] weights, double[] at, double share) {
        double all = 0;
        for (double w : weights) {
            all += w;
        }
        double step = at[1] - at[0];
        double below = 0;
        for (int i = 0; i < weights.length; i++) {
            double next = below + weights[i] / all;
            if (next >= share) {
                return at[i] - step / 2 + step * (share - below) / (next - below);
            }
            below = next;
        }
        return at[at.length - 1];
    }
}
