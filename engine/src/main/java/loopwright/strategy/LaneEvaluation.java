package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.numerics.Watch;

/**
 * The chances of a fixed target policy on one hole, on the ordinary day and on every other day that counts, from clouds
 * that had no part in choosing. The player does not know the day: on all of them he plays, putts and drops as on the
 * ordinary one.
 */
final class LaneEvaluation implements LaneRange.Work {
    private static final int BLOCK = 512;

    private final int states;
    private final LaneChoice choice;
    private final int[][] rowOfOption;
    private final List<ChanceRows> usual = new ArrayList<>();
    private final List<ChanceRows> other = new ArrayList<>();
    final List<LaneField> fields;
    /** On the ordinary day, what the tee's mean-best option is worth before target play goes on, in the order asked. */
    final List<Double> usualOnTee = new ArrayList<>();
    /** By day: chances on the tee, in the order asked. */
    final List<List<Double>> onTee = new ArrayList<>();

    LaneEvaluation(TargetHole hole, TargetOptions options, LaneChoice choice, List<LaneField> fields) {
        states = hole.mean().nodes.states;
        this.choice = choice;
        this.fields = fields;
        rowOfOption = new int[states][];
        int next = 0;
        for (int s = 0; s < states; s++) {
            boolean[] played = choice.played(s, options.options.get(s).size());
            rowOfOption[s] = new int[played.length];
            for (int o = 1; o < played.length; o++) {
                rowOfOption[s][o] = played[o] ? next++ : -1;
            }
        }
        fields.forEach(f -> onTee.add(new ArrayList<>()));
    }

    /** Adds the outcomes of a day: of the mean-best options, and of the others that are played in some lane. */
    void add(ChanceRows usualOfDay, ChanceRows otherOfDay) {
        usual.add(usualOfDay);
        other.add(otherOfDay);
    }

    /** Outcomes on a day of the options that are played beside the mean-best ones, with a part of the points. */
    OutcomeRows others(TargetHole hole, TargetOptions options, HoleProblem day, int part, Watch watch) {
        List<Spot> spots = new ArrayList<>();
        List<Option> chosen = new ArrayList<>();
        List<Integer> points = new ArrayList<>();
        for (int s = 0; s < states; s++) {
            for (int o = 1; o < rowOfOption[s].length; o++) {
                if (rowOfOption[s][o] >= 0) {
                    spots.add(hole.mean().spots[s]);
                    chosen.add(options.options.get(s).get(o));
                    points.add(Math.max(PolicyEvaluation.LEAST_POINTS, hole.evaluation().points[s] / part));
                }
            }
        }
        NodePolicy policy = new NodePolicy(chosen.size());
        IntStream.range(0, chosen.size()).forEach(i -> policy.set(i, chosen.get(i)));
        return OutcomeRows.of(
                day,
                policy,
                spots.toArray(Spot[]::new),
                points.stream().mapToInt(Integer::intValue).toArray(),
                watch);
    }

    @Override
    public void whole(Lane lane) {
        List<double[]> chance = new ArrayList<>();
        fields.forEach(f -> chance.add(new double[states]));
        if (!lane.settled()) {
            List<LaneStakes> stakes = stakes(lane);
            int blocks = (states + BLOCK - 1) / BLOCK;
            IntStream.range(0, blocks * fields.size()).parallel().forEach(i -> {
                int day = i % fields.size();
                int from = i / fields.size() * BLOCK;
                for (int s = from; s < Math.min(states, from + BLOCK); s++) {
                    chance.get(day)[s] = chance(stakes.get(day), day, lane, s);
                }
            });
        }
        for (int day = 0; day < fields.size(); day++) {
            fields.get(day).put(lane, chance.get(day));
        }
    }

    @Override
    public double tee(Lane lane) {
        double least = 1;
        List<LaneStakes> stakes = lane.settled() ? List.of() : stakes(lane);
        usualOnTee.add(
                lane.settled() ? fields.get(0).holed(lane) : stakes.get(0).chance(usual.get(0), 0, 0));
        for (int day = 0; day < fields.size(); day++) {
            double c = lane.settled() ? fields.get(day).holed(lane) : chance(stakes.get(day), day, lane, 0);
            onTee.get(day).add(c);
            least = Math.min(least, c);
        }
        return least;
    }

    private List<LaneStakes> stakes(Lane lane) {
        List<LaneStakes> out = new ArrayList<>();
        for (LaneField field : fields) {
            out.add(out.isEmpty() ? new LaneStakes(field, lane) : new LaneStakes(field, lane, out.get(0)));
        }
        return out;
    }

    private double chance(LaneStakes stakes, int day, Lane lane, int s) {
        int option = choice.option(lane, s);
        return option == 0
                ? stakes.chance(usual.get(day), s, s)
                : stakes.chance(other.get(day), rowOfOption[s][option], s);
    }
}
