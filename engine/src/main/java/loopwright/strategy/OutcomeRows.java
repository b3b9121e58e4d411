package loopwright.strategy;

import java.util.Arrays;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
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

    /** States that one thread works out at a stretch. */
    private static final int STRETCH = 128;

    final int[] start;
    int[] code = {};
    double[] weight = {};
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
        Queue<Maker> idle = new ConcurrentLinkedQueue<>();
        Outcomes[] stretches = IntStream.range(0, (spots.length + STRETCH - 1) / STRETCH)
                .parallel()
                .mapToObj(b -> {
                    watch.check();
                    Maker known = idle.poll();
                    Maker maker = known == null ? new Maker(problem) : known;
                    Outcomes out = new Outcomes();
                    for (int s = b * STRETCH; s < Math.min(spots.length, (b + 1) * STRETCH); s++) {
                        int from = out.size;
                        Option o = policy.option(s);
                        rows.drop[s] = o.isDrop();
                        rows.cost[s] = (byte) (o.isDrop() ? o.penalty() : 1);
                        if (o.isDrop()) {
                            out.add(problem.raster.cell(o.column(), o.row()), 1);
                        } else if (!changed.test(s)) {
                            out.addAll(before, s);
                        } else {
                            maker.play(spots[s], o, points[s], s, report, out);
                        }
                        rows.start[s + 1] = out.size - from;
                    }
                    idle.add(maker);
                    return out;
                })
                .toArray(Outcomes[]::new);
        rows.join(stretches);
        return rows;
    }

    /** Puts stretches one after the other; {@link #start} holds how many outcomes each state has. */
    private void join(Outcomes[] stretches) {
        for (int s = 1; s < start.length; s++) {
            start[s] += start[s - 1];
        }
        code = new int[start[start.length - 1]];
        weight = new double[code.length];
        int at = 0;
        for (Outcomes o : stretches) {
            System.arraycopy(o.code, 0, code, at, o.size);
            System.arraycopy(o.weight, 0, weight, at, o.size);
            at += o.size;
        }
    }

    /** A list of outcome codes with their weights. */
    private static final class Outcomes {
        int[] code = new int[1 << 12];
        double[] weight = new double[1 << 12];
        int size;

        void add(int outcome, double share) {
            makeRoom(1);
            code[size] = outcome;
            weight[size++] = share;
        }

        void addAll(OutcomeRows from, int s) {
            int n = from.start[s + 1] - from.start[s];
            makeRoom(n);
            System.arraycopy(from.code, from.start[s], code, size, n);
            System.arraycopy(from.weight, from.start[s], weight, size, n);
            size += n;
        }

        private void makeRoom(int more) {
            if (size + more > code.length) {
                code = Arrays.copyOf(code, 2 * (size + more));
                weight = Arrays.copyOf(weight, code.length);
            }
        }
    }

    /** Plays strokes and adds up the weights of points with the same outcome. A workspace: one per thread. */
    private static final class Maker {
        private final HoleProblem problem;
        private final Evaluator evaluator;
        private final OptionSpace space;
        private double[] sum;
        private int[] seen = new int[64];
        private int size;

        Maker(HoleProblem problem) {
            this.problem = problem;
            evaluator = new Evaluator(problem);
            space = new OptionSpace(problem);
            sum = new double[problem.raster.restCells() + 1024];
        }

        void play(Spot spot, Option o, int points, int s, boolean report, Outcomes out) {
            if (report) {
                report(spot, o, points, s);
            } else {
                evaluator.play(spot, o, points);
                add(1);
            }
            for (int i = 0; i < size; i++) {
                out.add(seen[i], sum[seen[i]]);
                sum[seen[i]] = 0;
            }
            size = 0;
        }

        /**
         * The policy plays from a whole square of places what is best from its middle: each is asked, or of a state with
         * few points one, in turn.
         */
        private void report(Spot spot, Option o, int points, int s) {
            if (spot.sideCells() == 0) {
                evaluator.report(spot, o, points, s);
                add(1);
                return;
            }
            int parts = points < LEAST_TO_SPLIT ? 1 : Spot.PARTS;
            for (int i = 0; i < parts; i++) {
                Spot part = partOnItsSurface(spot, s + i);
                evaluator.report(part, space.from(o, part).orElse(o), points / parts, parts * s + i);
                add(1.0 / parts);
            }
        }

        /** The part, or the spot itself where the part lies beyond an edge: a ball there is another node's. */
        private Spot partOnItsSurface(Spot spot, int i) {
            Spot part = spot.part(i);
            int cell = problem.raster.cell(part.column(), part.row());
            return problem.raster.surface(cell) == spot.surface() ? part : spot;
        }

        /** Adds the outcomes of the stroke last played with a share of their weights. */
        private void add(double share) {
            int most = problem.raster.restCells() + problem.relief.size();
            if (sum.length < most) {
                sum = Arrays.copyOf(sum, most + 1024);
            }
            if (seen.length < size + evaluator.size) {
                seen = Arrays.copyOf(seen, 2 * (size + evaluator.size));
            }
            for (int i = 0; i < evaluator.size; i++) {
                int code = evaluator.code[i];
                if (sum[code] == 0) {
                    seen[size++] = code;
                }
                sum[code] += share * evaluator.weight[i];
            }
        }
    }
}
