package loopwright.player;

import java.util.Arrays;

/** A value with the range that holds it with 90 % probability, given what is known. */
public record Interval(double middle, double low, double high) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval needs low <= high, not " + low + " to " + high);
        }
    }

    /** Median and the 5 and 95 % quantiles of draws. */
    static Interval of(double[] draws) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        return new Interval(quantile(sorted, 0.5), quantile(sorted, 0.05), quantile(sorted, 0.95));
    }

    /** The same range about another middle, held inside it. */
    Interval about(double newMiddle) {
        return new Interval(Math.max(low, Math.min(high, newMiddle)), low, high);
    }

    private static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
