package loopwright.scoring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * What stands between a player and his target, from his rounds: for each {@link Obstacle} the strokes a round costs against
 * the benchmark, shrunk, with an interval; and whether the largest can be told from the rest yet.
 *
 * <p>A round's cost x_i is normal about the player's own mean m with a spread s between rounds; m ~ N(0, {@value #PRIOR_SD} strokes)
 * and s^2 is the sample's, drawn to {@value #SPREAD} strokes by {@value #SPREAD_ROUNDS} rounds' worth (both assumed). The
 * posterior mean is x n/s^2 / (n/s^2 + 1/{@value #PRIOR_SD}^2). Two obstacles are compared within the same rounds, so that a
 * bad day does not count as doubt.
 *
 * @param rows largest cost first
 * @param tied the rows that cannot be told from the first, the first among them
 * @param rounds used
 * @param roundsNeeded until the first two would be told apart if they go on as they are and are written down as finely; {@link #NEVER} if that is out of reach
 */
public record ScoreGap(List<Row> rows, List<Obstacle> tied, int rounds, int roundsNeeded) {
    /** With fewer rounds nothing is called separated. */
    public static final int FEWEST_ROUNDS = 10;
    /** More rounds than anybody waits for. */
    public static final int NEVER = 200;

    private static final double PRIOR_SD = 2;
    private static final double SPREAD = 1.5;
    private static final double SPREAD_ROUNDS = 4;
    /** 90 % of a normal law. */
    private static final double REACH = 1.645;

    /** Strokes a round (18 holes) an obstacle costs against the benchmark, from so many rounds that tell it. */
    public record Row(Obstacle obstacle, double cost, double low, double high, int rounds) {}

    public ScoreGap {
        rows = List.copyOf(rows);
        tied = List.copyOf(tied);
    }

    /** True if there are enough rounds and one obstacle stands out. */
    public boolean separated() {
        return rounds >= FEWEST_ROUNDS && tied.size() == 1;
    }

    /** From the rounds that count: no lessons, no team scores. */
    public static ScoreGap of(List<RoundRecord> all, BenchmarkTable benchmark) {
        List<Map<Obstacle, Double>> costs = all.stream()
                .filter(r -> !r.team() && !r.lesson())
                .map(r -> ObstacleCount.of(r, benchmark))
                .filter(c -> !c.isEmpty())
                .toList();
        return ofCosts(costs);
    }

    /** From the costs of each round. */
    static ScoreGap ofCosts(List<Map<Obstacle, Double>> costs) {
        List<Row> rows = new ArrayList<>();
        for (Obstacle o : Obstacle.values()) {
            List<Double> values = costs.stream()
                    .filter(c -> c.containsKey(o))
                    .map(c -> c.get(o))
                    .toList();
            if (!values.isEmpty()) {

                rows.add(Sample.of(values).row(o));
            }
        }
        rows.sort(Comparator.comparingDouble(Row::cost).reversed());
        return ranked(rows, costs);
    }

    private static ScoreGap ranked(List<Row> rows, List<Map<Obstacle, Double>> costs) {
        List<Obstacle> tied = new ArrayList<>();
        int needed = FEWEST_ROUNDS;
        for (int i = 0; i < rows.size(); i++) {
            if (i == 0) {
                tied.add(rows.get(0).obstacle());
                continue;
            }
            Sample apart = differences(rows.get(0).obstacle(), rows.get(i).obstacle(), costs);
            if (apart.n() == 0 || apart.mean() <= REACH * apart.error()) {
                tied.add(rows.get(i).obstacle());
                needed = Math.max(needed, costs.size() + apart.roundsUntil(REACH) - apart.n());
            }
        }
        return new ScoreGap(rows, tied, costs.size(), Math.min(NEVER, needed));
    }

    /** What the first cost more than another in each round that tells both. */
    private static Sample differences(Obstacle first, Obstacle other, List<Map<Obstacle, Double>> costs) {
        return Sample.of(costs.stream()
                .filter(c -> c.containsKey(first) && c.containsKey(other))
                .map(c -> value(c, first) - value(c, other))
                .toList());
    }

    private static double value(Map<Obstacle, Double> costs, Obstacle obstacle) {
        return costs.getOrDefault(obstacle, 0.0);
    }

    /** Values of some rounds: how many, their mean, and their variance as it is believed. */
    private record Sample(int n, double mean, double variance) {
        static Sample of(List<Double> values) {
            int n = values.size();
            double mean = values.stream().mapToDouble(v -> v).average().orElse(0);
            double squares =
                    values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
            double variance = (squares + SPREAD_ROUNDS * SPREAD * SPREAD) / (Math.max(0, n - 1) + SPREAD_ROUNDS);
            return new Sample(n, mean, variance);
        }

        double error() {
            return Math.sqrt(variance / Math.max(1, n));
        }

        Row row(Obstacle obstacle) {
            double information = n / variance + 1 / (PRIOR_SD * PRIOR_SD);
            double cost = mean * n / variance / information;
            double reach = REACH / Math.sqrt(information);
            return new Row(obstacle, cost, cost - reach, cost + reach, n);
        }

        /** Rounds until the mean, if it stays, is so many standard errors from zero. */
        int roundsUntil(double errors) {
            if (n == 0 || mean <= 0) {
                return NEVER;
            }
            return (int) Math.min(NEVER, Math.ceil(errors * errors * variance / (mean * mean)));
        }
    }
}
