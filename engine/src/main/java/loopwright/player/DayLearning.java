package loopwright.player;

import java.util.List;

/**
 * Learns from swings on the course how wide the patterns are there and how rounds differ.
 *
 * <p>A solid swing i of round r finishes off its aim by b_r + w s_r sd_i e, with the day's bias b_r ~ N(0, B), the day's scale
 * ln s_r ~ N(0, T), the widening w and e standard normal; a mishit, at its club's rates, by b_r and its own direction and
 * spread. Priors: ln w ~ N(0, 0.10) about what is planned with ({@link PriorTable}), ln B and ln T normal about {@link
 * DayEffect#ASSUMED} with standard deviation 0.4 (assumed; {@link PriorTable#SESSION_SD_LOG_SD}). The posterior is summed over a
 * grid; bias and scale of each round are integrated out on grids of their own, so the answer is the same every time.
 */
public final class DayLearning {
    /** A mishit of no stated spread has at least this one. */
    private static final double LEAST_SPREAD = Math.toRadians(0.5);

    private static final double REACH = 3;

    private static final double BIAS_STEP = Math.toRadians(0.5);
    private static final int BIAS_HALF = 28;
    private static final double SCALE_STEP = 0.05;
    private static final int SCALE_HALF = 18;
    private static final int WIDENINGS = 13;
    private static final int SPREADS = 9;

    private final double[] biases = new double[2 * BIAS_HALF + 1];
    private final double[] logScales = new double[2 * SCALE_HALF + 1];
    private final double[] logWidenings = around(0, PriorTable.RANGE_WIDENING_LOG_SD, WIDENINGS);
    private final double[] logBiasSds =
            around(Math.log(DayEffect.ASSUMED.directionSdRadians()), PriorTable.SESSION_SD_LOG_SD, SPREADS);
    private final double[] logSpreadSds =
            around(Math.log(DayEffect.ASSUMED.logSpreadSd()), PriorTable.SESSION_SD_LOG_SD, SPREADS);
    /** Log posterior by widening, bias sd, spread sd. */
    private final double[][][] posterior = new double[WIDENINGS][SPREADS][SPREADS];

    private DayLearning() {
        for (int i = 0; i < biases.length; i++) {
            biases[i] = (i - BIAS_HALF) * BIAS_STEP;
        }
        for (int i = 0; i < logScales.length; i++) {
            logScales[i] = (i - SCALE_HALF) * SCALE_STEP;
        }
    }

    /** Learns from rounds; those without swings say nothing. */
    public static LearnedDay learn(List<List<CourseSwing>> rounds) {
        DayLearning learning = new DayLearning();
        learning.prior();
        int told = 0;
        int swings = 0;
        for (List<CourseSwing> round : rounds) {
            if (!round.isEmpty()) {
                learning.add(round);
                told++;
                swings += round.size();
            }
        }
        return learning.answer(told, swings);
    }

    private static double[] around(double middle, double sd, int points) {
        double[] out = new double[points];
        for (int i = 0; i < points; i++) {
            out[i] = middle + sd * REACH * (2.0 * i / (points - 1) - 1);
        }
        return out;
    }

    private void prior() {
        for (int w = 0; w < WIDENINGS; w++) {
            for (int b = 0; b < SPREADS; b++) {
                for (int t = 0; t < SPREADS; t++) {
                    posterior[w][b][t] = -(square(w, WIDENINGS) + square(b, SPREADS) + square(t, SPREADS)) / 2;
                }
            }
        }
    }

    private static double square(int i, int points) {
        double z = REACH * (2.0 * i / (points - 1) - 1);
        return z * z;
    }

    private void add(List<CourseSwing> round) {
        double[][] likelihood = likelihood(round);
        for (int b = 0; b < SPREADS; b++) {
            double[] byScale = overBias(likelihood, Math.exp(logBiasSds[b]));
            for (int w = 0; w < WIDENINGS; w++) {
                for (int t = 0; t < SPREADS; t++) {
                    posterior[w][b][t] += Math.log(overScale(byScale, logWidenings[w], Math.exp(logSpreadSds[t])));
                }
            }
        }
    }

    /** Likelihood of a round by its bias and whole scale, its largest value 1. */
    private double[][] likelihood(List<CourseSwing> round) {
        double[][] log = new double[biases.length][logScales.length];
        double most = Double.NEGATIVE_INFINITY;
        double[] scales = new double[logScales.length];
        for (int j = 0; j < scales.length; j++) {
            scales[j] = Math.exp(logScales[j]);
        }
        for (int i = 0; i < biases.length; i++) {
            for (CourseSwing s : round) {
                double off = s.offAimRadians() - biases[i];
                double sd = s.pattern().directionSdRadians();
                double solid = 1 - s.pattern().mishitRate();
                double gone = mishit(s.pattern(), off, sd);
                for (int j = 0; j < scales.length; j++) {
                    double z = off / (scales[j] * sd);
                    log[i][j] += Math.log(solid * Math.exp(-z * z / 2) / scales[j] + gone);
                }
            }
            for (double value : log[i]) {
                most = Math.max(most, value);
            }
        }
        for (double[] row : log) {
            for (int j = 0; j < row.length; j++) {
                row[j] = Math.exp(row[j] - most);
            }
        }
        return log;
    }

    /** Density of a mishit that far off, in units of one over the solid spread; never quite zero. */
    private static double mishit(ShotPattern pattern, double off, double sd) {
        double sum = Double.MIN_NORMAL;
        for (Mishit m : pattern.mishits()) {
            double spread = Math.max(LEAST_SPREAD, m.directionSdRadians());
            double z = (off - m.directionRadians()) / spread;
            sum += m.rate() * sd / spread * Math.exp(-z * z / 2);
        }
        return sum;
    }

    private double[] overBias(double[][] likelihood, double sd) {
        double[] out = new double[logScales.length];
        double all = 0;
        for (int i = 0; i < biases.length; i++) {
            double z = biases[i] / sd;
            double weight = Math.exp(-z * z / 2);
            all += weight;
            for (int j = 0; j < out.length; j++) {
                out[j] += weight * likelihood[i][j];
            }
        }
        for (int j = 0; j < out.length; j++) {
            out[j] /= all;
        }
        return out;
    }

    private double overScale(double[] byScale, double middle, double sd) {
        double sum = 0;
        double all = 0;
        for (int j = 0; j < byScale.length; j++) {
            double z = (logScales[j] - middle) / sd;
            double weight = Math.exp(-z * z / 2);
            sum += weight * byScale[j];
            all += weight;
        }
        return Math.max(Double.MIN_NORMAL, sum / all);
    }

    private LearnedDay answer(int rounds, int swings) {
        double most = Double.NEGATIVE_INFINITY;
        for (double[][] plane : posterior) {
            for (double[] row : plane) {
                for (double p : row) {
                    most = Math.max(most, p);
                }
            }
        }
        double[] byWidening = new double[WIDENINGS];
        double[] byBias = new double[SPREADS];
        double[] bySpread = new double[SPREADS];
        for (int w = 0; w < WIDENINGS; w++) {
            for (int b = 0; b < SPREADS; b++) {
                for (int t = 0; t < SPREADS; t++) {
                    double p = Math.exp(posterior[w][b][t] - most);
                    byWidening[w] += p;
                    byBias[b] += p;
                    bySpread[t] += p;
                }
            }
        }
        return new LearnedDay(
                interval(logWidenings, byWidening),
                interval(logBiasSds, byBias),
                interval(logSpreadSds, bySpread),
                rounds,
                swings);
    }

    /** Median and the 5 and 95 % points of a posterior on a grid of logarithms, each point filling its cell evenly. */
    private static Interval interval(double[] logs, double[] weight) {
        return new Interval(
                Math.exp(quantile(logs, weight, 0.5)),
                Math.exp(quantile(logs, weight, 0.05)),
                Math.exp(quantile(logs, weight, 0.95)));
    }

    private static double quantile(double[] logs, double[] weight, double share) {
        double all = 0;
        for (double w : weight) {
            all += w;
        }
        double step = logs[1] - logs[0];
        double left = share * all;
        for (int i = 0; i < logs.length; i++) {
            if (left <= weight[i]) {
                return logs[i] - step / 2 + step * left / weight[i];
            }
            left -= weight[i];
        }
        return logs[logs.length - 1] + step / 2;
    }
}
