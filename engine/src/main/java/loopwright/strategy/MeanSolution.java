package loopwright.strategy;

import java.util.Arrays;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;

/** The solved hole: a policy, the values it was chosen with, and its honest evaluation. */
public final class MeanSolution {
    private static final int ROUGH_PART = 4;
    private static final int LEAST_POINTS = 8;

    final HoleProblem problem;
    final NodeSet nodes;
    final NodePolicy choices;
    final Spot[] spots;
    private final int[] reportPoints;
    private final SearchLoss searchLoss;
    private final double[] chosenValue;

    MeanSolution(
            HoleProblem problem,
            NodeSet nodes,
            NodePolicy choices,
            double[] value,
            Spot[] spots,
            int[] reportPoints,
            SearchLoss searchLoss) {
        this.problem = problem;
        this.nodes = nodes;
        this.choices = choices;
        this.reportPoints = reportPoints;
        this.searchLoss = searchLoss;
        this.chosenValue = value;
        this.spots = spots;
    }

    /** Expected strokes from the tee as seen by the clouds on which the choices were made: a little too good. */
    public double expectedWhenChosen() {
        return chosenValue[0];
    }

    /** What the search lost against trying every option everywhere. */
    public SearchLoss searchLoss() {
        return searchLoss;
    }

    /** The policy's worth on independent clouds. */
    public PolicyEvaluation evaluate(Watch watch) {
        return new PolicyEvaluation(problem, nodes, choices, spots, reportPoints, chosenValue, watch);
    }

    /** The same on a quarter of the points, where no more than the mean to a few hundredths is wanted. */
    public PolicyEvaluation evaluateRoughly(Watch watch) {
        int[] fewer = Arrays.stream(reportPoints)
                .map(n -> Math.max(LEAST_POINTS, n / ROUGH_PART))
                .toArray();
        return new PolicyEvaluation(problem, nodes, choices, spots, fewer, chosenValue, watch);
    }

    /** The same hole played by other choices. */
    MeanSolution withChoices(NodePolicy policy) {
        return new MeanSolution(problem, nodes, policy, chosenValue, spots, reportPoints, searchLoss);
    }

    /** Lets go of the views of the trees, much of a solution, until they are asked for again. */
    public void forgetTrees() {
        for (Spot spot : spots) {
            spot.trees().forget();
        }
    }

    public HoleProblem problem() {
        return problem;
    }

    /** The policy for any place, its reliefs decided by the values of an evaluation. */
    public Policy policy(PolicyEvaluation evaluation) {
        return new SolvedPolicy(this, evaluation);
    }

    /** The state whose choice stands for a place: of the node of its surface that counts most there. */
    int state(Place ball, Surface surface, Situation situation) {
        if (surface == Surface.TEE && ball.distanceTo(problem.tee()) < 1) {
            return 0;
        }
        return nodes.stateOf(nodes.nodeFor(problem.raster.column(ball), problem.raster.row(ball), surface), situation);
    }
}
