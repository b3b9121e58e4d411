package loopwright.handicap;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A handicap index from differentials (Rule 5.2): the mean of the lowest few, adjusted while there are few, to a tenth,
 * at most 54.0.
 *
 * <p>The table for fewer than 20 scores is from memory; its rows for 3 and 6 are confirmed by examples of the governing
 * bodies. The mean of the lowest 8 of 20 is Rule 5.2b.
 *
 * @param counted places in the given list of the differentials that count, lowest first
 * @param adjustment added because there are few scores: 0, -1 or -2
 * @param index rounded, not above 54.0; below zero for a plus handicap; before caps
 */
public record Averaging(List<Integer> counted, double mean, double adjustment, double index) {
    public static final int FEWEST = 3;
    public static final int MOST = 20;
    public static final double HIGHEST_INDEX = 54.0;

    public Averaging {
        counted = List.copyOf(counted);
    }

    /** Of 3 to 20 differentials; with more, give only the most recent 20. */
    public static Averaging of(List<Double> differentials) {
        int n = differentials.size();
        if (n < FEWEST || n > MOST) {
            throw new IllegalArgumentException("an index rests on 3 to 20 differentials, not " + n);
        }
        List<Integer> lowest = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparing(differentials::get))
                .limit(countedOf(n))
                .toList();
        double mean = lowest.stream().mapToDouble(differentials::get).average().orElseThrow();
        double index = Rounding.toTenth(mean + adjustmentOf(n));
        return new Averaging(lowest, mean, adjustmentOf(n), Math.min(HIGHEST_INDEX, index));
    }

    /** How many of n differentials count. */
    static int countedOf(int n) {
        if (n <= 5) {
            return 1;
        }
        if (n <= 8) {
            return 2;
        }
        if (n <= 14) {
            return n / 3;
        }
        return n <= 18 ? (n - 5) / 2 : n - 12;
    }

    static double adjustmentOf(int n) {
        return switch (n) {
            case 3 -> -2;
            case 4, 6 -> -1;
            default -> 0;
        };
    }
}
