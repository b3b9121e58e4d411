package loopwright.strategy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;

/**
 * Finds on one hole the option with the fewest expected strokes for every state:
 * V(s) = min over options of 1 + E[penalty + V(next)], solved in bands of rising distance to the hole.
 *
 * <p>First on coarse nodes, all options against small clouds; then on finer nodes in two stages, where each state
 * tries the shortlists of the coarser nodes round it, the choices of its neighbours, and steps of aim, club and length
 * beside the best, as long as they improve. States that are hardly ever met are left as the coarser nodes found them.
 * What this search loses against trying everything everywhere is estimated on every solve.
 */
public final class MeanSolver {
    private static final double COARSE_AIM_CELLS = 10;
    private static final double FULL_AIM_CELLS = 4;
    private static final int MOST_STEPS = 3;
    /** A state so much worse than its neighbourhood has not seen its option yet, strokes. */
    private static final double SUSPICIOUS = 1;

    private static final int LEAST_POINTS = 32;
    private static final int AUDIT_EVERY = 200;
    private static final int MOST_AUDIT_POINTS = 256;
    /** Options of the nearest coarser node that a state tries; of the other nodes round it only the best. */
    private static final int FROM_NEAREST = 4;
    /** Visits in a playing of the hole from which a state is searched on the largest clouds. */
    private static final double OFTEN = 3e-4;
    /** From which it is reported from all points. */
    private static final double REPORTED_FULLY = 3e-3;
    /** From which it is searched twice. */
    static final double SOMETIMES = 1e-4;
    /** Up to which it is left as the coarser nodes found it: all such states together are met once in some thirty holes. */
    private static final double SELDOM = 3e-5;
    /** The tee shot is looked for on this many times the points. */
    private static final int TEE_SEARCH = 4;
    /** And at last chosen on so many times the points, among those that near each other. */
    private static final int TEE_POINTS = 16;

    /** The tee shot is reported from this many times the points. */
    private static final int TEE_REPORT = 16;
    /** Points of the tee shot that tell where play comes by. */
    private static final int TEE_VISITS = 2048;

    private static final int FACE_PASSES = 6;

    /** How many times the points tell near options apart where it matters. */
    private static final int RUN_OFF = 8;

    private final HoleProblem problem;
    private final NodeSet nodes;
    private final int cells;
    private final OptionSpace space;
    private final ValueField field;
    private final double[] value;
    private final NodePolicy policy;
    /** What was chosen before the turn under way. */
    private NodePolicy before;
    /** Points of the clouds each state chooses on. */
    private final int[] points;

    /** Points on which the best few are told apart at last; 0: they are not. */
    private final int[] runOffPoints;

    private final Shortlist[] shortlists;
    private final Spot[] spots;
    /** About how often each state is met in a playing of the hole. */
    private final double[] importance;

    private MeanSolver(HoleProblem problem, int cells, int points) {
        this.problem = problem;
        this.cells = cells;
        nodes = new NodeSet(problem.raster, problem.line, cells);
        space = new OptionSpace(problem);
        field = problem.values(nodes);
        value = new double[nodes.states];
        policy = new NodePolicy(nodes.states);
        before = policy;
        shortlists = new Shortlist[nodes.states];
        spots = spots(problem, nodes);
        importance = new double[nodes.states];
        this.points = new int[nodes.states];
        runOffPoints = new int[nodes.states];
        Arrays.fill(this.points, points);
        Arrays.fill(importance, OFTEN);
    }

    /** Solves a hole; the work is reported to the watch in a hundred steps. */
    public static MeanSolution solve(HoleProblem problem, Watch watch) {
        SolverSettings settings = problem.settings;
        MeanSolver coarse = new MeanSolver(problem, settings.coarseCells(), settings.coarsePoints());
        coarse.start();
        coarse.searchEverything(COARSE_AIM_CELLS, s -> !coarse.isFarOff(s), watch);
        coarse.pass(watch, s -> s == 0 ? coarse.everything(0) : coarse.shortlists[s].options(), s -> false);
        watch.at(25, 100);
        MeanSolver middle = new MeanSolver(problem, settings.middleCells(), settings.coarsePoints());
        middle.startFrom(coarse, coarse.visits(watch));
        middle.pass(watch, s -> middle.fromCoarser(coarse, s), middle::matters);
        middle.pass(watch, s -> s == 0 ? middle.everything(0) : middle.shortlists[s].options(), s -> false);
        watch.at(45, 100);
        MeanSolver fine = new MeanSolver(problem, settings.fineCells(), settings.finePoints());
        fine.startFrom(middle, middle.visits(watch));
        fine.pass(watch, s -> !fine.takesOver(middle, s), s -> fine.fromCoarser(middle, s), fine::matters);
        watch.at(70, 100);
        fine.givePointsByVisits();
        fine.pass(watch, fine::matters, s -> fine.isMet(s) ? fine.fromNeighbours(s) : fine.asBefore(s), fine::isMet);
        fine.settleUnderFaces(watch);
        SearchLoss loss = fine.searchLoss(watch);
        watch.at(100, 100);
        return fine.solution(loss);
    }

    /** The slow, obvious way: all options at every node of the answer, until nothing changes. For checks. */
    static MeanSolution solveExhaustively(HoleProblem problem, Watch watch) {
        MeanSolver all = new MeanSolver(problem, problem.settings.fineCells(), problem.settings.finePoints());
        all.start();
        for (int pass = 0; pass < 3; pass++) {
            all.searchEverything(FULL_AIM_CELLS, s -> true, watch);
        }
        all.pass(watch, s -> all.shortlists[s].options(), s -> true);
        return all.solution(SearchLoss.NONE);
    }

    /**
     * A ball that falls back from a bunker's face lies where it lay: what that costs is known only once the way out is
     * chosen, so these few states are gone through until they agree with themselves.
     */
    private void settleUnderFaces(Watch watch) {
        if (Arrays.stream(spots).noneMatch(s -> s.trees().hasFace())) {
            return;
        }
        for (int i = 0; i < FACE_PASSES; i++) {
            inBands(watch, (s, evaluator) -> {
                if (spots[s].trees().hasFace()) {
                    CheapestOption best = cheapest(s, points[s], evaluator);
                    best.tryAll(everything(s));
                    take(s, best);
                }
            });
        }
    }

    private MeanSolution solution(SearchLoss searchLoss) {
        int[] report = new int[nodes.states];
        for (int s = 0; s < report.length; s++) {
            report[s] = s == 0 ? TEE_REPORT * problem.settings.reportPoints() : reportPoints(importance[s]);
        }
        return new MeanSolution(problem, nodes, policy, value, spots, report, searchLoss);
    }

    /**
     * What the search lost against trying every option everywhere: on every two-hundredth state that matters all options
     * are tried on the same clouds, and what that finds is compared with what was chosen on the independent clouds, weighed
     * with the visits.
     */
    private SearchLoss searchLoss(Watch watch) {
        int[] sample = IntStream.range(1, nodes.states)
                .filter(s -> s % AUDIT_EVERY == AUDIT_EVERY / 2 && matters(s))
                .toArray();
        double[] regrets = Arrays.stream(sample)
                .parallel()
                .mapToDouble(s -> {
                    watch.check();
                    return regret(s);
                })
                .toArray();
        double loss = regret(0);
        double squares = 0;
        for (int i = 0; i < sample.length; i++) {
            double share = AUDIT_EVERY * importance[sample[i]] * regrets[i];
            loss += share;
            squares += share * share;
        }
        return new SearchLoss(loss, Math.sqrt(squares));
    }

    private double regret(int state) {
        Evaluator evaluator = new Evaluator(problem);
        CheapestOption best = cheapest(state, Math.min(points[state], MOST_AUDIT_POINTS), evaluator);
        best.tryAll(everything(state));
        return reported(state, policy.option(state), evaluator) - reported(state, best.option(), evaluator);
    }

    private double reported(int state, Option o, Evaluator evaluator) {
        if (o.isDrop()) {
            return valueOf(state, o, points[state], evaluator);
        }
        evaluator.report(spots[state], o, problem.settings.reportPoints(), state);
        return evaluator.value(field, value[state]);
    }

    /** A state's share of the error of the whole grows with its visits, so its points do, up to the full number. */
    private int reportPoints(double visits) {
        return (int) Math.max(LEAST_POINTS, Math.min(1, visits / REPORTED_FULLY) * problem.settings.reportPoints());
    }

    /** States that are met choose on the full clouds, those met often at last on larger ones, the tee on the largest. */
    private void givePointsByVisits() {
        int base = problem.settings.finePoints();
        for (int s = 0; s < points.length; s++) {
            if (s == 0) {
                points[s] = TEE_SEARCH * base;
                runOffPoints[s] = TEE_POINTS * base;
            } else if (isMet(s)) {
                points[s] = base;
                runOffPoints[s] = importance[s] > OFTEN ? RUN_OFF * base : 0;
            }
        }
    }

    /** Takes over the coarser nodes' choice, and their value, where play hardly ever comes by and there is one. */
    private boolean takesOver(MeanSolver coarse, int state) {
        int from = matters(state) ? -1 : coarseState(coarse, state);
        Optional<Option> same = from < 0 ? Optional.empty() : space.from(coarse.policy.option(from), spots[state]);
        same.ifPresent(o -> policy.set(state, o));
        return same.isPresent();
    }

    private boolean isMet(int state) {
        return importance[state] > SOMETIMES;
    }

    private boolean matters(int state) {
        return importance[state] > SELDOM;
    }

    /** A lie in the rough other than the ordinary one: what is best there lies close to what is best from that one. */
    private boolean isVariant(int state) {
        return spots[state].surface() == Surface.ROUGH && state > nodes.firstState[nodes.nodeOfState[state]];
    }

    private List<Option> everything(int state) {
        return space.all(spots[state], FULL_AIM_CELLS);
    }

    private List<Option> asBefore(int state) {
        return List.of(policy.option(state));
    }

    /** From the tee all comes on one cloud, which must reach wherever a ball may lie. */
    private double[] visits(Watch watch) {
        int[] spread = points.clone();
        spread[0] = TEE_VISITS;
        OutcomeRows rows = OutcomeRows.of(problem, policy, spots, spread, watch);
        return Occupancy.of(nodes, rows, field, value);
    }

    private static Spot[] spots(HoleProblem problem, NodeSet nodes) {
        Spot[] out = new Spot[nodes.states];
        for (int n = 0; n < nodes.nodes; n++) {
            for (int s = nodes.firstState[n]; s < nodes.firstState[n + 1]; s++) {
                TreeFan trees = s > nodes.firstState[n] && nodes.surface[n] != Surface.WOODS
                        ? out[nodes.firstState[n]].trees()
                        : problem.treesFrom(nodes.column[n], nodes.row[n], nodes.surface[n], nodes.situation[s]);
                double side = problem.settings.allRound() ? nodes.spacing[n] : 0;
                out[s] = new Spot(
                        nodes.column[n], nodes.row[n], nodes.surface[n], nodes.situation[s], n == 0, trees, side);
            }
        }
        return out;
    }

    /** A rough first value everywhere: it only matters to shots that go away from the hole. */
    private void start() {
        for (int n = 0; n < nodes.nodes; n++) {
            double metres = problem.raster.place(nodes.column[n], nodes.row[n]).distanceTo(problem.hole());
            field.nodeValue[n] = 2.4 + 0.009 * metres;
            Arrays.fill(value, nodes.firstState[n], nodes.firstState[n + 1], field.nodeValue[n]);
        }
        field.refreshAll();
    }

    private void startFrom(MeanSolver coarse, double[] visits) {
        double finer = (double) cells / coarse.cells;
        for (int s = 0; s < nodes.states; s++) {
            int from = coarseState(coarse, s);
            value[s] = from < 0 ? 2.4 : from == 0 ? coarse.value[0] : coarseValue(coarse, s);
            importance[s] = from < 0 ? OFTEN : Math.max(0, visits[from]) * finer * finer;
            points[s] = Math.max(LEAST_POINTS, points[s] / 2);
        }
        for (int n = 0; n < nodes.nodes; n++) {
            field.nodeValue[n] = nodes.average(n, value);
        }
        field.refreshAll();
    }

    /** The coarse state that stands for a state here: same surface, same situation; -1 if there is none. */
    private int coarseState(MeanSolver coarse, int state) {
        int node = nodes.nodeOfState[state];
        if (node == 0) {
            return 0;
        }
        int main = coarse.nodes.mainNode(problem.raster.cell(nodes.column[node], nodes.row[node]));
        return main < 0 ? -1 : coarse.nodes.stateOf(main, nodes.situation[state]);
    }

    /** The value of the coarser states round a state, between them on a straight line. */
    private double coarseValue(MeanSolver coarse, int state) {
        int node = nodes.nodeOfState[state];
        int cell = problem.raster.cell(nodes.column[node], nodes.row[node]);
        return coarse.nodes.atCell(cell, nodes.situation[state], coarse.value);
    }

    /** @param fans where the better swings are aimed all over the fan, not ahead only */
    private void searchEverything(double aimCells, IntPredicate fans, Watch watch) {
        inBands(watch, (s, evaluator) -> {
            CheapestOption best = cheapest(s, points[s], evaluator);
            if (isVariant(s)) {
                best.tryAll(likeTheOrdinaryLie(s));
            } else {
                best.tryOthers(space.all(spots[s], OptionSpace.AHEAD_ONLY));
                for (int shot : fans.test(s) ? swingsOf(best.shortlist()) : List.<Integer>of()) {
                    best.tryOthers(space.fan(shot, spots[s], aimCells));
                }
            }
            take(s, best);
        });
    }

    /** Far off the line of play, where nodes are wider apart: what is best there is found on the finer nodes. */
    private boolean isFarOff(int state) {
        return nodes.spacing[nodes.nodeOfState[state]] > cells;
    }

    private List<Integer> swingsOf(Shortlist shortlist) {
        return shortlist.options().stream()
                .filter(o -> !o.isDrop() && !problem.ability.strikes().isTouch(o.shot()))
                .map(Option::shot)
                .distinct()
                .toList();
    }

    /** What the ordinary lie found best, and one step beside. */
    private List<Option> likeTheOrdinaryLie(int state) {
        List<Option> ordinary = shortlists[nodes.firstState[nodes.nodeOfState[state]]].options();
        List<Option> out = new ArrayList<>(ordinary);
        for (Option o : ordinary) {
            out.addAll(space.beside(o, spots[state], false));
        }
        return out;
    }

    private void pass(Watch watch, IntFunction<List<Option>> candidates, IntPredicate climb) {
        pass(watch, s -> true, candidates, climb);
    }

    private void pass(Watch watch, IntPredicate chooses, IntFunction<List<Option>> candidates, IntPredicate climb) {
        inBands(watch, (s, evaluator) -> {
            if (!chooses.test(s)) {
                return;
            }
            CheapestOption best = cheapest(s, points[s], evaluator);
            best.tryOthers(candidates.apply(s));
            if (!(best.value() < value[s] + SUSPICIOUS)) {
                best.tryAll(space.all(spots[s], COARSE_AIM_CELLS));
            }
            boolean climbs = climb.test(s);
            for (int step = 0; climbs && step < MOST_STEPS; step++) {
                if (!best.tryOthers(space.beside(best.option(), spots[s], step == 0 || isVariant(s)))) {
                    break;
                }
            }
            if (runOffPoints[s] > 0) {
                best.runOff(runOffPoints[s]);
            }
            take(s, best);
        });
    }

    /** What is done with a state, by an evaluator of the thread's own. */
    private interface Search {
        void of(int state, Evaluator evaluator);
    }

    private void inBands(Watch watch, Search search) {
        before = policy.copy();
        nodes.inBandsAtOnce(
                () -> {
                    Evaluator evaluator = new Evaluator(problem);
                    return n -> {
                        for (int s = nodes.firstState[n]; s < nodes.firstState[n + 1]; s++) {
                            search.of(s, evaluator);
                        }
                        field.nodeValue[n] = nodes.average(n, value);
                    };
                },
                () -> before = policy.copy(),
                band -> {
                    watch.check();
                    field.refreshBand(band);
                });
    }

    private CheapestOption cheapest(int state, int onPoints, Evaluator evaluator) {
        return new CheapestOption(
                problem.ability.strikes(), state == 0, onPoints, (o, n) -> valueOf(state, o, n, evaluator));
    }

    private void take(int state, CheapestOption best) {
        shortlists[state] = best.shortlist();
        policy.set(state, best.option());
        value[state] = best.value();
    }

    private double valueOf(int state, Option o, int onPoints, Evaluator evaluator) {
        if (o.isDrop()) {
            return o.penalty() + field.ofCell(problem.raster.cell(o.column(), o.row()));
        }
        evaluator.play(spots[state], o, onPoints);
        return evaluator.value(field, value[state]);
    }

    private List<Option> fromCoarser(MeanSolver coarse, int state) {
        List<Option> out = new ArrayList<>();
        int node = nodes.nodeOfState[state];
        if (isVariant(state)) {
            space.from(policy.option(nodes.firstState[node]), spots[state]).ifPresent(out::add);
            return out;
        }
        if (node == 0) {
            return everything(0);
        }
        int cell = problem.raster.cell(nodes.column[node], nodes.row[node]);
        int main = coarse.nodes.mainNode(cell);
        for (int i = 0; i < NodeMesh.CORNERS; i++) {
            int near = coarse.nodes.cellNodes[NodeMesh.CORNERS * cell + i];
            if (near == main || (near >= 0 && matters(state))) {
                List<Option> all = coarse.shortlists[coarse.nodes.stateOf(near, nodes.situation[state])].options();
                int most = near != main ? 1 : matters(state) ? FROM_NEAREST : 2;
                for (Option o : all.subList(0, Math.min(most, all.size()))) {
                    space.from(o, spots[state]).ifPresent(out::add);
                }
            }
        }
        return out;
    }

    private List<Option> fromNeighbours(int state) {
        int node = nodes.nodeOfState[state];
        if (node == 0) {
            return everything(0);
        }
        List<Option> out = new ArrayList<>();
        out.add(policy.option(state));
        for (int side = -cells; side <= cells; side += 2 * cells) {
            addNeighbour(out, state, nodes.column[node] + side, nodes.row[node]);
            addNeighbour(out, state, nodes.column[node], nodes.row[node] + side);
        }
        return out;
    }

    private void addNeighbour(List<Option> out, int state, double column, double row) {
        int near = nodes.mainNode(problem.raster.cell(column, row));
        if (near >= 0 && nodes.surface[near] == spots[state].surface()) {
            Option o = before.option(nodes.stateOf(near, nodes.situation[state]));
            space.from(o, spots[state]).ifPresent(out::add);
        }
    }
}
