package loopwright.strategy;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.numerics.Watch;

/**
 * Chooses for the target on one hole: U(s, k) = max over the options of s of the expected chance one stroke on, lane by
 * lane in rising order, on the clouds for choosing and the ordinary day. A choice leaves the mean-best option only where
 * it gains more than the clouds can mislead.
 */
final class LaneChooser implements LaneRange.Work {
    private static final int BLOCK = 256;

    private final ChanceRows rows;
    private final int[] first;
    private final LaneField field;
    final LaneChoice choice = new LaneChoice();
    private final double margin;

    LaneChooser(TargetOptions options, ChanceRows rows, LaneField field, double margin) {
        first = options.first;
        this.rows = rows;
        this.field = field;
        this.margin = margin;
    }

    @Override
    public void whole(Lane lane) {
        int states = first.length - 1;
        double[] chance = new double[states];
        byte[] chosen = new byte[states];
        if (!lane.settled()) {
            LaneStakes stakes = new LaneStakes(field, lane);
            IntStream.range(0, (states + BLOCK - 1) / BLOCK).parallel().forEach(b -> {
                for (int s = b * BLOCK; s < Math.min(states, (b + 1) * BLOCK); s++) {
                    chosen[s] = best(stakes, s, chance);
                }
            });
        }
        choice.set(lane, chosen);
        field.put(lane, chance);
    }

    @Override
    public double tee(Lane lane) {
        if (lane.settled()) {
            return field.holed(lane);
        }
        double[] chance = new double[1];
        choice.set(lane, new byte[] {best(new LaneStakes(field, lane), 0, chance)});
        return chance[0];
    }

    private byte best(LaneStakes stakes, int s, double[] chance) {
        double usual = stakes.chance(rows, first[s], s);
        double most = usual;
        int best = 0;
        for (int r = first[s] + 1; r < first[s + 1]; r++) {
            double c = stakes.chance(rows, r, s);
            if (c > most) {
                most = c;
                best = r - first[s];
            }
        }
        boolean leaves = most > usual + margin;
        chance[s] = leaves ? most : usual;
        return (byte) (leaves ? best : 0);
    }

    /** Outcomes of all options of all states on the clouds for choosing. */
    static OutcomeRows rows(MeanSolution mean, TargetOptions options, Watch watch) {
        int[] first = options.first;
        int rows = first[first.length - 1];
        NodePolicy policy = new NodePolicy(rows);
        Spot[] spots = new Spot[rows];
        int[] points = new int[rows];
        for (int s = 0; s + 1 < first.length; s++) {
            List<Option> own = options.options.get(s);
            Arrays.fill(spots, first[s], first[s + 1], mean.spots[s]);
            Arrays.fill(points, first[s], first[s + 1], options.points[s]);
            for (int i = 0; i < own.size(); i++) {
                policy.set(first[s] + i, own.get(i));
            }
        }
        return OutcomeRows.toChooseFrom(mean.problem, policy, spots, points, watch);
    }
}
