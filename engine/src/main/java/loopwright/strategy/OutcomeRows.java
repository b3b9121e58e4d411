package loopwright.strategy;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import loopwright.numerics.Watch;

/**
 * A fixed policy as a sparse table: for every state the outcome codes of its choice with their probabilities, from
 * clouds that had no part in choosing.
 */
final class OutcomeRows {
    /** A state with fewer points is looked at from one place only. */
    private static final int LEAST_TO_SPLIT = 64;

    final int[] start;
    int[] code = new int[1 << 16];
    double[] weight = new double[1 << 16];
    /** Strokes that the choice itself costs: 1, or the penalty strokes of a drop. */
    final byte[] cost;

    /** True where the choice is an unplayable ball and its drop. */
    final boolean[] drop;

    private OutcomeRows(int states) {
        start = new int[states + 1];
        cost = new byte[states];
        drop = new boolean[states];
    }

    /** The points that each state gets are given by {@code points}. */
    static OutcomeRows of(HoleProblem problem, NodePolicy policy, Spot[] spots, int[] points, Watch watch) {
        return of(problem, policy, spots, points, true, new OutcomeRows(0), state -> true, watch);
    }

    /**
     * The same where only some states' outcomes have changed: those of the others are taken over; {@code before} itself
     * where no state changes.
     */
    static OutcomeRows changed(
            HoleProblem problem,
            NodePolicy policy,
            Spot[] spots,
            int[] points,
            OutcomeRows before,
            IntPredicate changed,
            Watch watch) {
        boolean any =
                IntStream.range(0, spots.length).anyMatch(s -> !policy.option(s).isDrop() && changed.test(s));
        return any ? of(problem, policy, spots, points, true, before, changed, watch) : before;
    }

    /** The same from the clouds for choosing. */
    static OutcomeRows toChooseFrom(HoleProblem problem, NodePolicy policy, Spot[] spots, int[] points, Watch watch) {
        return of(problem, policy, spots, points, false, new OutcomeRows(0), state -> true, watch);
    }

    private static OutcomeRows of(
            HoleProblem problem,
            NodePolicy policy,
            Spot[] spots,
            int[] points,
            boolean report,
            OutcomeRows before,
            IntPredicate changed,
            Watch watch) {
        OutcomeRows rows = new OutcomeRows(spots.length);
        Evaluator evaluator = new Evaluator(problem);
        OptionSpace space = new OptionSpace(problem);
        Merger merger = new Merger(problem);
        for (int s = 0; s < spots.length; s++) {
            if (s % 256 == 0) {
                watch.check();
            }
            Option o = policy.option(s);
            rows.start[s + 1] = rows.start[s];
            if (o.isDrop()) {
                rows.cost[s] = (byte) o.penalty();
                rows.drop[s] = true;
                rows.append(s, problem.raster.cell(o.column(), o.row()), 1);
            } else if (!changed.test(s)) {
                rows.copy(before, s);
            } else {
                rows.cost[s] = 1;
                if (report) {
                    report(spots[s], o, points[s], s, evaluator, space, merger);
                } else {
                    evaluator.play(spots[s], o, points[s]);
                    merger.add(evaluator, 1);
                }
                merger.append(rows, s);
            }
        }
        rows.trim();
        return rows;
    }

    /** Many tables are held at once: none keeps room that it does not need. */
    private void trim() {
        int size = start[start.length - 1];
        code = Arrays.copyOf(code, size);
        weight = Arrays.copyOf(weight, size);
    }

    /**
     * The policy plays from a whole square of places what is best from its middle: each is asked, or of a state with few
     * points one, in turn.
     */
    private static void report(
            Spot spot, Option o, int points, int s, Evaluator evaluator, OptionSpace space, Merger merger) {
        if (spot.sideCells() == 0) {
            evaluator.report(spot, o, points, s);
            merger.add(evaluator, 1);
            return;
        }
        int parts = points < LEAST_TO_SPLIT ? 1 : Spot.PARTS;
        for (int i = 0; i < parts; i++) {
            Spot part = spot.part(s + i);
            evaluator.report(part, space.from(o, part).orElse(o), points / parts, parts * s + i);
            merger.add(evaluator, 1.0 / parts);
        }
    }

    private void copy(OutcomeRows before, int s) {
        cost[s] = before.cost[s];
        for (int i = before.start[s]; i < before.start[s + 1]; i++) {
            append(s, before.code[i], before.weight[i]);
        }
    }

    private void append(int state, int outcome, double share) {
        int at = start[state + 1]++;
        if (at == code.length) {
            code = Arrays.copyOf(code, at + at / 2);
            weight = Arrays.copyOf(weight, at + at / 2);
        }
        code[at] = outcome;
        weight[at] = share;
    }

    /** Adds up the weights of points with the same outcome. */
    private static final class Merger {
        private final HoleProblem problem;
        private double[] sum;
        private int[] seen = new int[64];
        private int size;

        Merger(HoleProblem problem) {
            this.problem = problem;
            sum = new double[problem.raster.restCells() + 1024];
        }

        /** Adds outcomes with a share of their weights. */
        void add(Evaluator e, double share) {
            int most = problem.raster.restCells() + problem.relief.size();
            if (sum.length < most) {
                sum = Arrays.copyOf(sum, most + 1024);
            }
            if (seen.length < size + e.size) {
                seen = Arrays.copyOf(seen, 2 * (size + e.size));
            }
            for (int i = 0; i < e.size; i++) {
                if (sum[e.code[i]] == 0) {
                    seen[size++] = e.code[i];
                }
                sum[e.code[i]] += share * e.weight[i];
            }
        }

        /** Hands the sums to a state, and begins anew. */
        void append(OutcomeRows rows, int state) {
            for (int i = 0; i < size; i++) {
                rows.append(state, seen[i], sum[seen[i]]);
                sum[seen[i]] = 0;
            }
            size = 0;
        }
    }
}
