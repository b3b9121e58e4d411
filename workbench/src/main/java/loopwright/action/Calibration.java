package loopwright.action;

import java.util.List;
import java.util.Locale;
import loopwright.strategy.ScoreDistribution;

/**
 * Whether a modelled player scores as the real one does: the gap between the mean of real scores and the modelled mean of
 * the player played by his habits, with a 90 % interval. Everything that prints a chance of beating a target can say by
 * it how far that chance was held against real scores.
 *
 * <p>The standard error is that of a mean of so many scores; their spread is the sample's, pooled with the modelled one as
 * if that were {@value #MODEL_ROUNDS} more rounds (assumed), so that three lucky rounds do not seem certain.
 *
 * @param rounds real scores compared
 * @param realMean of the real scores, where the course differed as they would be on the modelled tees
 * @param realSd sample standard deviation of the real scores; 0 with fewer than two
 * @param gap real less modelled mean, strokes: above 0 the real player needs more than the model says
 * @param gapLow end of the 90 % interval of the gap
 * @param gapHigh its other end
 */
public record Calibration(
        int rounds,
        double realMean,
        double realSd,
        double modelledMean,
        double modelledSd,
        double gap,
        double gapLow,
        double gapHigh,
        Verdict verdict) {
    /** Nobody has compared this player with real scores. */
    public static final Calibration NONE = new Calibration(0, 0, 0, 0, 0, 0, 0, 0, Verdict.NO_SCORES);

    private static final int MODEL_ROUNDS = 5;
    private static final double NINETY = 1.6449;
    /** Near a target a stroke is some ten in a hundred: half a one is no gap to speak of (assumed). */
    private static final double NO_GAP = 0.5;
    /** An interval wider than this to either side neither confirms nor refutes (assumed). */
    private static final double TELLING = 2;

    /** What the comparison says. */
    public enum Verdict {
        NO_SCORES,
        TOO_FEW,
        AGREES,
        GAP
    }

    /**
     * Compares.
     *
     * @param scores real scores on the modelled tees
     * @param modelled a round played by habit, good and bad days included
     */
    public static Calibration of(List<Double> scores, ScoreDistribution modelled) {
        int n = scores.size();
        if (n == 0) {
            return new Calibration(0, 0, 0, modelled.mean(), modelled.standardDeviation(), 0, 0, 0, Verdict.NO_SCORES);
        }
        double mean = scores.stream().mapToDouble(Double::doubleValue).sum() / n;
        double squares =
                scores.stream().mapToDouble(s -> (s - mean) * (s - mean)).sum();
        double pooled = (squares + MODEL_ROUNDS * modelled.variance()) / (n - 1 + MODEL_ROUNDS);
        double half = NINETY * Math.sqrt(pooled / n);
        double gap = mean - modelled.mean();
        return new Calibration(
                n,
                mean,
                n > 1 ? Math.sqrt(squares / (n - 1)) : 0,
                modelled.mean(),
                modelled.standardDeviation(),
                gap,
                gap - half,
                gap + half,
                verdict(gap, half));
    }

    private static Verdict verdict(double gap, double half) {
        if (Math.abs(gap) > Math.max(half, NO_GAP)) {
            return Verdict.GAP;
        }
        return half <= TELLING ? Verdict.AGREES : Verdict.TOO_FEW;
    }

    public boolean isCalibrated() {
        return verdict == Verdict.AGREES;
    }

    /** What to print beside a chance of beating a target. */
    public String mark() {
        return switch (verdict) {
            case NO_SCORES -> "not yet calibrated: no real scores were compared (player check)";
            case TOO_FEW ->
                said(
                        "not yet calibrated: %d real scores say too little (gap %+.1f, %+.1f to %+.1f strokes)",
                        rounds, gap, gapLow, gapHigh);
            case AGREES ->
                said("calibrated on %d real scores (gap %+.1f, %+.1f to %+.1f strokes)", rounds, gap, gapLow, gapHigh);
            case GAP ->
                said(
                        "not yet calibrated: %d real scores run %.1f strokes %s than modelled (%.1f to %.1f)",
                        rounds,
                        Math.abs(gap),
                        gap > 0 ? "higher" : "lower",
                        Math.min(Math.abs(gapLow), Math.abs(gapHigh)),
                        Math.max(Math.abs(gapLow), Math.abs(gapHigh)));
        };
    }

    private static String said(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
