package loopwright.strategy;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;

/**
 * Tells everything another program needs to check a solved hole: the states and their values, every cell with the nodes
 * it reads, every crossing with its drops, and the outcomes of options, the chosen one of every state and all of some
 * nodes. What is told satisfies Bellman's equation for the chosen options to the precision of the evaluation.
 */
public final class AuditTrail {
    /** Nodes of which all options are told. */
    public static final int FULL_NODES = 300;

    private static final double AIM_CELLS = 8;
    private static final int FULL_POINTS = 256;

    private final MeanSolution solution;
    private final PolicyEvaluation evaluation;
    private final HoleProblem problem;

    public AuditTrail(MeanSolution solution, PolicyEvaluation evaluation) {
        this.solution = solution;
        this.evaluation = evaluation;
        this.problem = solution.problem;
    }

    /** Receives the trail, part by part, in the order of the methods. */
    public interface Sink {
        /** A cell: its replay chance, the value of a ball found in it, and the nodes it reads with their weights. */
        void cell(int cell, Place centre, Surface surface, double replay, double value, int[] nodes, double[] weights);

        /** A crossing into a penalty area, or a ball lost or out of bounds, with drops for these penalty strokes. */
        void crossing(int crossing, Place place, Surface area, int penalty, int[] drops);

        /** A state of a node, how likely its situation is, and its value under the policy. */
        void state(int state, int node, Place place, Surface surface, Situation situation, double p, double value);

        /** An option of a state; option 0 is the chosen one; the cost is its own strokes or penalty strokes. */
        void option(int state, int option, String shot, Place target, int cost);

        /** An outcome of the option told last: a cell, or with {@code crossing} 0 or more a crossing. */
        void outcome(int state, int option, int cell, int crossing, double weight);
    }

    /** Tells the whole trail; the seed selects the nodes of which all options are told. */
    public void tell(long seed, Sink sink) {
        tellCells(sink);
        for (int r = 0; r < problem.relief.size(); r++) {
            sink.crossing(
                    r,
                    problem.raster.centre(problem.relief.cell(r)),
                    problem.relief.area(r),
                    problem.relief.penalty(r),
                    problem.relief.drops(r));
        }
        NodeSet nodes = solution.nodes;
        for (int s = 0; s < nodes.states; s++) {
            int n = nodes.nodeOfState[s];
            sink.state(
                    s,
                    n,
                    problem.raster.place(nodes.column[n], nodes.row[n]),
                    nodes.surface[n],
                    nodes.situation[s],
                    nodes.probability[s],
                    evaluation.value[s]);
        }
        for (int s = 0; s < nodes.states; s++) {
            tellChoice(s, sink);
        }
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < FULL_NODES; i++) {
            tellAll(random.nextInt(nodes.nodes), sink);
        }
    }

    private void tellCells(Sink sink) {
        NodeSet nodes = solution.nodes;
        for (int c = 0; c < problem.raster.restCells(); c++) {
            int n = 0;
            while (n < NodeMesh.CORNERS && nodes.cellNodes[NodeMesh.CORNERS * c + n] >= 0) {
                n++;
            }
            int[] read = Arrays.copyOfRange(nodes.cellNodes, NodeMesh.CORNERS * c, NodeMesh.CORNERS * c + n);
            double[] weights = Arrays.copyOfRange(nodes.cellWeights, NodeMesh.CORNERS * c, NodeMesh.CORNERS * c + n);
            sink.cell(
                    c,
                    problem.raster.centre(c),
                    problem.raster.surface(c),
                    evaluation.field.replay[c],
                    evaluation.field.replay[c] < 1 ? evaluation.field.ofCell(c) : 0,
                    read,
                    weights);
        }
    }

    private void tellChoice(int state, Sink sink) {
        OutcomeRows rows = evaluation.rows();
        Option o = solution.choices.option(state);
        tellOption(state, 0, o, rows.cost[state], sink);
        for (int i = rows.start[state]; i < rows.start[state + 1]; i++) {
            tellOutcome(state, 0, rows.code[i], rows.weight[i], sink);
        }
    }

    private void tellAll(int node, Sink sink) {
        OptionSpace space = new OptionSpace(problem);
        Evaluator evaluator = new Evaluator(problem);
        for (int s = solution.nodes.firstState[node]; s < solution.nodes.firstState[node + 1]; s++) {
            List<Option> all = space.all(solution.spots[s], AIM_CELLS);
            for (int k = 0; k < all.size(); k++) {
                Option o = all.get(k);
                if (o.isDrop()) {
                    tellOption(s, k + 1, o, o.penalty(), sink);
                    tellOutcome(s, k + 1, problem.raster.cell(o.column(), o.row()), 1, sink);
                    continue;
                }
                tellOption(s, k + 1, o, 1, sink);
                evaluator.report(solution.spots[s], o, FULL_POINTS, s);
                for (int i = 0; i < evaluator.size; i++) {
                    tellOutcome(s, k + 1, evaluator.code[i], evaluator.weight[i], sink);
                }
            }
        }
    }

    private void tellOption(int state, int option, Option o, int cost, Sink sink) {
        String shot = o.isDrop() ? "unplayable" : problem.ability.strikes().label(o.shot());
        sink.option(state, option, shot, problem.raster.place(o.column(), o.row()), cost);
    }

    private void tellOutcome(int state, int option, int code, double weight, Sink sink) {
        int cells = problem.raster.restCells();
        if (code < cells) {
            sink.outcome(state, option, code, -1, weight);
        } else {
            sink.outcome(state, option, problem.relief.cell(code - cells), code - cells, weight);
        }
    }
}
