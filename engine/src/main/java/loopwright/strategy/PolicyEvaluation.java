package loopwright.strategy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import loopwright.geo.Place;
import loopwright.numerics.Watch;
import org.jspecify.annotations.Nullable;

/**
 * What any fixed policy is worth on a hole: values of every state, the exact distribution of the score, and the chance
 * of a penalty, all from clouds independent of those on which choices were made.
 */
public final class PolicyEvaluation {
    /** Scores are told apart up to this many strokes; the last holds "or more". */
    public static final int MOST_STROKES = 20;

    /** Days other than the ordinary one are looked at with this part of the points. */
    static final int DAY_PART = 4;
    /** Points that a state has at least there. */
    static final int LEAST_POINTS = 8;
    /** Up to so many visits in a playing of the hole a state gets no more than that. */
    private static final double SELDOM = 1e-5;
    /** States with fewer visits make up 2 % of play. */
    private static final double HARDLY_EVER = 1e-4;
    /** Points of a state where players are compared: a step of a skill then comes out within 0.002 strokes a hole. */
    private static final double POINTS_A_VISIT = 4_000;

    private static final double SETTLED = 1e-7;

    private final HoleProblem problem;
    private final NodeSet nodes;
    private final NodePolicy policy;
    private final Spot[] spots;
    final int[] points;
    final GreenCells green;
    private @Nullable OutcomeRows rows;
    final ValueField field;
    final double[] value;
    private final double[] visits;
    private final double[] scores;

    private double[] crossingCost = new double[64];
    private double[] crossingWeight = new double[64];

    PolicyEvaluation(
            HoleProblem problem,
            NodeSet nodes,
            NodePolicy policy,
            Spot[] spots,
            int[] points,
            double[] start,
            Watch watch) {
        this.problem = problem;
        this.nodes = nodes;
        this.policy = policy;
        this.spots = spots;
        this.points = points;
        green = new GreenCells(problem.raster, problem.hole(), problem.green);
        OutcomeRows outcomes = rows();
        field = problem.values(nodes);
        value = start.clone();
        for (int n = 0; n < nodes.nodes; n++) {
            field.nodeValue[n] = nodes.average(n, value);
        }
        field.refreshAll();
        nodes.settle(n -> update(n, outcomes), field::refreshBand, SETTLED, watch);
        ForwardPlay forward = new ForwardPlay(nodes, outcomes, this, green);
        visits = forward.visits;
        scores = forward.scores;
    }

    /** Outcomes of every state's choice on the clouds for reporting; worked out again if they were forgotten. */
    final OutcomeRows rows() {
        OutcomeRows known = rows;
        if (known == null) {
            known = OutcomeRows.of(problem, policy, spots, points, Watch.NONE);
            rows = known;
        }
        return known;
    }

    /** Lets go of the outcomes, the largest part of an evaluation, until somebody asks again. */
    public void forgetRows() {
        rows = null;
    }

    ReliefField relief() {
        return problem.relief;
    }

    /** True if values are reported for balls all round the nodes. */
    boolean isAllRound() {
        return problem.settings.allRound();
    }

    /** Expected strokes from the tee. */
    public double expected() {
        return value[0];
    }

    /** Expected strokes to hole out of a ball lying at a place, over its situations; NaN where none is played from. */
    public double expectedFrom(Place place) {
        int cell = problem.raster.cell(place);
        double strokes = problem.raster.surface(cell).isPlayable() ? field.ofCell(cell) : Double.NaN;
        return Double.isFinite(strokes) ? strokes : Double.NaN;
    }

    /** How far the value of a node moves. */
    private double update(int node, OutcomeRows rows) {
        double before = field.nodeValue[node];
        for (int s = nodes.firstState[node]; s < nodes.firstState[node + 1]; s++) {
            value[s] = valueOfRow(s, rows);
        }
        field.nodeValue[node] = nodes.average(node, value);
        return Math.abs(field.nodeValue[node] - before);
    }

    private double valueOfRow(int s, OutcomeRows rows) {
        if (rows.drop[s]) {
            return rows.cost[s] + field.ofCell(rows.code[rows.start[s]]);
        }
        double sum = rows.cost[s];
        double again = 0;
        int crossings = 0;
        int cells = problem.raster.restCells();
        for (int i = rows.start[s]; i < rows.start[s + 1]; i++) {
            int code = rows.code[i];
            if (code < cells) {
                sum += rows.weight[i] * field.found[code];
                again += rows.weight[i] * field.replay[code];
            } else {
                if (crossings == crossingCost.length) {
                    crossingCost = Arrays.copyOf(crossingCost, 2 * crossings);
                    crossingWeight = Arrays.copyOf(crossingWeight, 2 * crossings);
                }
                crossingCost[crossings] = field.reliefValue(code - cells);
                crossingWeight[crossings++] = rows.weight[i];
            }
        }
        return Evaluator.solve(sum, again, crossingCost, crossingWeight, crossings, value[s]);
    }

    /** Probability of each score from the tee: index k holds exactly k strokes, the last one that many or more. */
    public double[] scores() {
        return scores.clone();
    }

    /** The same on each of the days that stand for all, the ordinary one first. */
    public List<ScoreDistribution> scoresOn(List<DayAbility> days, Watch watch) {
        List<ScoreDistribution> out = new ArrayList<>(List.of(ScoreDistribution.of(0, scores)));
        for (DayAbility day : days.subList(1, days.size())) {
            out.add(ScoreDistribution.of(0, scoresWith(day.ability(), watch)));
        }
        return out;
    }

    /**
     * The same if the round is played with another ability, on a good or bad day: the policy does not know, so its shots
     * and its reliefs stay.
     */
    public double[] scoresWith(Ability day, Watch watch) {
        return new ForwardPlay(nodes, rowsOn(day, rows(), watch), this, greenWith(day)).scores;
    }

    /** Outcomes on another day, on a part of the points; where play seldom comes by, those of the ordinary day. */
    OutcomeRows rowsOn(Ability day, OutcomeRows ordinary, Watch watch) {
        return OutcomeRows.changed(
                problem.with(day), policy, spots, fewerPoints(DAY_PART), ordinary, this::isSometimesMet, watch);
    }

    private boolean isSometimesMet(int state) {
        return Math.abs(visits[state]) > SELDOM;
    }

    /** The policy ready to be played by many players who differ from one of this ability in some shots only. */
    public PolicyVariations variations(Ability ability, Watch watch) {
        return new PolicyVariations(this, ability, watch);
    }

    /** How the green is reached with outcomes that are known, to be compared with others of their kind. */
    double[][] arrivalsToCompare(OutcomeRows outcomes, GreenCount count, boolean rough) {
        return ForwardPlay.arrivals(nodes, outcomes, this, count, rough);
    }

    /**
     * Outcomes with an ability to be compared with others. A state's share of the error grows with its visits, so its points
     * do as well, from {@link #LEAST_POINTS} up to a quarter of all.
     */
    OutcomeRows rowsToCompare(Ability ability, Watch watch) {
        return OutcomeRows.of(problem.with(ability), policy, spots, pointsToCompare(), watch);
    }

    /**
     * The same, where only some shots lead elsewhere than in {@code before}.
     *
     * @param everywhere false: only where play comes by; elsewhere everything leads where {@code before} does
     */
    OutcomeRows rowsToCompare(
            Ability ability, OutcomeRows before, IntPredicate changed, boolean everywhere, Watch watch) {
        return OutcomeRows.changed(
                problem.with(ability),
                policy,
                spots,
                pointsToCompare(),
                before,
                s -> (everywhere || visits[s] >= HARDLY_EVER)
                        && changed.test(policy.option(s).shot()),
                watch);
    }

    private int[] pointsToCompare() {
        int[] fewer = new int[points.length];
        for (int s = 0; s < fewer.length; s++) {
            int most = Math.max(LEAST_POINTS, points[s] / DAY_PART);
            fewer[s] = Math.max(LEAST_POINTS, (int) Math.min(most, POINTS_A_VISIT * visits[s]));
        }
        return fewer;
    }

    /** The green as a player of this ability putts it. */
    GreenCells greenWith(Ability ability) {
        HoleProblem other = problem.with(ability);
        return other.green.equals(problem.green) ? green : new GreenCells(problem.raster, problem.hole(), other.green);
    }

    /** The same to compare players, whose arrivals are then at the same places. */
    GreenCount greenToCompare(Ability ability) {
        return green.isByDistance() ? new GreenNodes(green, ability.putting()) : greenWith(ability);
    }

    double[] scoresOf(OutcomeRows outcomes) {
        return outcomes == rows ? scores() : new ForwardPlay(nodes, outcomes, this, green).scores.clone();
    }

    /** Outcomes of the policy's choices with an ability, on a part of the points, and on few where play seldom comes by. */
    OutcomeRows rowsWith(Ability ability, int part, Watch watch) {
        return OutcomeRows.of(problem.with(ability), policy, spots, fewerPoints(part), watch);
    }

    private int[] fewerPoints(int part) {
        int[] fewer = new int[points.length];
        for (int s = 0; s < fewer.length; s++) {
            fewer[s] = isSometimesMet(s) ? Math.max(LEAST_POINTS, points[s] / part) : LEAST_POINTS;
        }
        return fewer;
    }

    /** Expected visits of a state in one playing of the hole. */
    double visits(int state) {
        return visits[state];
    }

    /** Balls out of bounds, not found or in a penalty area, expected in one playing of the hole. */
    public double expectedLost() {
        OutcomeRows outcomes = rows();
        int cells = problem.raster.restCells();
        double lost = 0;
        for (int s = 0; s < visits.length; s++) {
            for (int i = outcomes.start[s]; !outcomes.drop[s] && i < outcomes.start[s + 1]; i++) {
                int code = outcomes.code[i];
                lost += visits[s] * outcomes.weight[i] * (code < cells ? field.replay[code] : 1);
            }
        }
        return lost;
    }

    /** Probability that the hole is played without a penalty stroke, from the tee. */
    public double withoutPenalty() {
        return new CleanPlay(problem, nodes, this).fromTee();
    }
}
