package loopwright.strategy;

import java.util.Arrays;
import java.util.List;

/**
 * The exact distribution of a whole-number score: of a hole, of several holes, or of what they count in a score table.
 * Sums of independent scores are convolved, never approximated: on 18 holes of Hardy's game the normal curve with
 * continuity correction is off by more than 0.01 in the probability of a total (docs/validation.md#scoring).
 */
public final class ScoreDistribution {
    /** Probabilities that were themselves computed may miss 1 by rounding; more than this is a mistake of the caller. */
    private static final double SUM_SLACK = 1e-9;

    private final int lowest;
    private final double[] mass;

    private ScoreDistribution(int lowest, double[] mass) {
        this.lowest = lowest;
        this.mass = mass;
    }

    /** The distribution with these probabilities for {@code lowest}, {@code lowest + 1} and so on; they sum to 1. */
    public static ScoreDistribution of(int lowest, double... probability) {
        double sum = 0;
        for (double p : probability) {
            if (!(p >= 0)) {
                throw new IllegalArgumentException("a probability is zero or more, not " + p);
            }
            sum += p;
        }
        if (!(Math.abs(sum - 1) <= SUM_SLACK)) {
            throw new IllegalArgumentException("the probabilities of a score sum to 1, not " + sum);
        }
        return trimmed(lowest, probability.clone());
    }

    /** A score that is always the same. */
    public static ScoreDistribution certain(int score) {
        return new ScoreDistribution(score, new double[] {1});
    }

    /** The sum of independent scores; of none, a certain zero. */
    public static ScoreDistribution sumOf(List<ScoreDistribution> independent) {
        ScoreDistribution sum = certain(0);
        for (ScoreDistribution each : independent) {
            sum = sum.plus(each);
        }
        return sum;
    }

    /** One of several distributions, drawn with the given weights (which sum to 1): good days and bad days, say. */
    public static ScoreDistribution mixtureOf(List<ScoreDistribution> parts, double... weights) {
        if (parts.isEmpty() || parts.size() != weights.length) {
            throw new IllegalArgumentException(parts.size() + " parts need as many weights, not " + weights.length);
        }
        int low = parts.stream().mapToInt(ScoreDistribution::lowest).min().getAsInt();
        int high = parts.stream().mapToInt(ScoreDistribution::highest).max().getAsInt();
        double[] out = new double[high - low + 1];
        for (int i = 0; i < weights.length; i++) {
            ScoreDistribution part = parts.get(i);
            for (int j = 0; j < part.mass.length; j++) {
                out[part.lowest - low + j] += weights[i] * part.mass[j];
            }
        }
        return of(low, out);
    }

    /** The lowest score with a probability above zero. */
    public int lowest() {
        return lowest;
    }

    /** The highest score with a probability above zero. */
    public int highest() {
        return lowest + mass.length - 1;
    }

    public double probability(int score) {
        return score < lowest || score > highest() ? 0 : mass[score - lowest];
    }

    /** P(score <= total): exactly 0 below the lowest score and exactly 1 from the highest on. */
    public double probabilityAtMost(int total) {
        if (total >= highest()) {
            return 1;
        }
        double sum = 0;
        for (int score = lowest; score <= total; score++) {
            sum += mass[score - lowest];
        }
        return Math.min(1, sum);
    }

    public double mean() {
        double sum = 0;
        for (int i = 0; i < mass.length; i++) {
            sum += mass[i] * i;
        }
        return lowest + sum;
    }

    public double variance() {
        double mean = mean();
        double sum = 0;
        for (int i = 0; i < mass.length; i++) {
            double d = lowest + i - mean;
            sum += mass[i] * d * d;
        }
        return sum;
    }

    public double standardDeviation() {
        return Math.sqrt(variance());
    }

    /** The distribution of the sum of this score and an independent other one. */
    public ScoreDistribution plus(ScoreDistribution other) {
        double[] out = new double[mass.length + other.mass.length - 1];
        for (int i = 0; i < mass.length; i++) {
            for (int j = 0; j < other.mass.length; j++) {
                out[i + j] += mass[i] * other.mass[j];
            }
        }
        return trimmed(lowest + other.lowest, out);
    }

    /** The distribution of the sum of {@code times} independent scores like this one. */
    public ScoreDistribution repeated(int times) {
        ScoreDistribution sum = certain(0);
        for (int i = 0; i < times; i++) {
            sum = sum.plus(this);
        }
        return sum;
    }

    /** The distribution of what these strokes count in a score table. */
    public ScoreDistribution countedBy(ScoreTable table) {
        int low = table.counts(lowest);
        double[] out = new double[table.counts(highest()) - low + 1];
        for (int i = 0; i < mass.length; i++) {
            out[table.counts(lowest + i) - low] += mass[i];
        }
        return trimmed(low, out);
    }

    private static ScoreDistribution trimmed(int lowest, double[] mass) {
        int first = 0;
        while (mass[first] == 0) {
            first++;
        }
        int end = mass.length;
        while (mass[end - 1] == 0) {
            end--;
        }
        return new ScoreDistribution(lowest + first, Arrays.copyOfRange(mass, first, end));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ScoreDistribution that && lowest == that.lowest && Arrays.equals(mass, that.mass);
    }

    @Override
    public int hashCode() {
        return 31 * lowest + Arrays.hashCode(mass);
    }

    @Override
    public String toString() {
        return "scores " + lowest + " to " + highest() + " " + Arrays.toString(mass);
    }
}
