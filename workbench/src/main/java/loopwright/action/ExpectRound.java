package loopwright.action;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.geo.Place;
import loopwright.numerics.Watch;
import loopwright.player.StrikeModel;
import loopwright.putting.LevelGreenOdds;
import loopwright.scoring.GreenPlay;
import loopwright.scoring.HoleWitness;
import loopwright.scoring.PlayOut;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.Policy;
import loopwright.strategy.PolicyEvaluation;
import loopwright.units.Distance;

/** Says what to expect of a round, and of the rounds that beat the target, from rounds played out by the plan. */
public final class ExpectRound {
    static final int ROUNDS = 4000;
    /** With fewer rounds than this nothing is said of them. */
    private static final int ENOUGH = 30;

    private static final double FOOT = Distance.METRES_PER_FOOT;
    private static final int[] PUTT_FEET = {2, 3, 4, 5, 6, 8, 10, 15, 20, 30, 40};

    private final CourseFiles courses;
    private final PlayerFiles players;

    public ExpectRound(CourseFiles courses, PlayerFiles players) {
        this.courses = courses;
        this.players = players;
    }

    public Expectation expect(PlanRequest request, Watch watch) {
        RoundSetup setup = RoundSetup.read(request, request.days().get(0), courses, players);
        request.counting().checkTarget(request.target(), setup.holes().size());
        List<RoundGreens.Green> greens = setup.everyGreen();
        List<HoleProblem> problems = IntStream.range(0, greens.size())
                .mapToObj(i -> setup.problem(i, greens.get(i)))
                .toList();
        List<Policy> policies = Cores.all(problems, p -> policy(p, watch.withoutProgress()), watch);
        List<StrikeModel> days = setup.round().moreDays(setup.profile().day(), ROUNDS);
        List<List<Played>> byHole = Cores.all(
                IntStream.range(0, problems.size()).boxed().toList(),
                i -> play(
                        problems.get(i).map(),
                        problems.get(i).tee(),
                        policies.get(i),
                        greens.get(i).play(),
                        days,
                        request.seed()),
                watch.withoutProgress());
        return expectation(setup, request.target(), count(setup.holes(), byHole));
    }

    private static Policy policy(HoleProblem problem, Watch watch) {
        MeanSolution solution = MeanSolver.solve(problem, watch);
        PolicyEvaluation evaluation = solution.evaluate(watch);
        evaluation.forgetRows();
        solution.forgetTrees();
        return solution.policy(evaluation);
    }

    /** One hole of one round. */
    record Played(PlayOut.HoleScore score, HoleWitness witness) {}

    /** A hole played once on every day. */
    static List<Played> play(
            CourseMap map, Place tee, Policy policy, GreenPlay green, List<StrikeModel> days, long seed) {
        Hole hole = map.hole();
        SplittableRandom random = new SplittableRandom(seed * 1_000_003 + hole.number());
        List<Played> out = new ArrayList<>();
        for (StrikeModel day : days) {
            HoleWitness witness = new HoleWitness(policy, hole.holeLocation());
            out.add(new Played(new PlayOut(map, tee, day, green, witness).play(random), witness));
        }
        return out;
    }

    static List<RoundCount> count(List<Hole> holes, List<List<Played>> byHole) {
        List<RoundCount> out = new ArrayList<>();
        for (int round = 0; round < byHole.get(0).size(); round++) {
            RoundCount count = new RoundCount();
            for (int i = 0; i < holes.size(); i++) {
                Played played = byHole.get(i).get(round);
                count.add(holes.get(i).par(), played.score, played.witness);
            }
            out.add(count);
        }
        return out;
    }

    static Expectation expectation(RoundSetup setup, int target, List<RoundCount> rounds) {
        List<RoundCount> beaten =
                rounds.stream().filter(r -> r.strokes <= target).toList();
        return new Expectation(
                setup.course().name(),
                setup.tees().name(),
                setup.holes().size(),
                (int) setup.holes().stream().filter(h -> h.par() > 3).count(),
                setup.holes().stream().mapToInt(Hole::par).sum(),
                target,
                rounds.size(),
                beaten.size(),
                average(rounds),
                beaten.size() >= ENOUGH ? Optional.of(average(beaten)) : Optional.empty(),
                typical(rounds, target),
                putts(setup.greens().level()),
                setup.today());
    }

    private static Expectation.Counts average(List<RoundCount> rounds) {
        double n = rounds.size();
        double tries = rounds.stream().mapToInt(r -> r.upAndDownTries).sum();
        return new Expectation.Counts(
                rounds.stream().mapToInt(r -> r.strokes).sum() / n,
                rounds.stream().mapToInt(r -> r.toPar[0]).sum() / n,
                rounds.stream().mapToInt(r -> r.toPar[1]).sum() / n,
                rounds.stream().mapToInt(r -> r.toPar[2]).sum() / n,
                rounds.stream().mapToInt(r -> r.toPar[3]).sum() / n,
                rounds.stream().mapToInt(r -> r.toPar[4]).sum() / n,
                rounds.stream().mapToInt(r -> r.fairways).sum() / n,
                rounds.stream().mapToInt(r -> r.greens).sum() / n,
                tries / n,
                rounds.stream().mapToInt(r -> r.upAndDowns).sum() / Math.max(1, tries),
                rounds.stream().mapToInt(r -> r.putts).sum() / n,
                rounds.stream().mapToInt(r -> r.threePutts).sum() / n,
                rounds.stream().mapToInt(r -> r.penalties).sum() / n);
    }

    /** The make-up that most rounds of exactly the target have; the first met of equals. */
    private static Optional<Expectation.MakeUp> typical(List<RoundCount> rounds, int target) {
        Map<List<Integer>, Integer> seen = new HashMap<>();
        Optional<List<Integer>> best = Optional.empty();
        for (RoundCount r : rounds) {
            if (r.strokes == target) {
                List<Integer> kind = IntStream.of(r.toPar).boxed().collect(Collectors.toList());
                int times = seen.merge(kind, 1, Integer::sum);
                if (best.isEmpty() || times > seen.getOrDefault(best.get(), 0)) {
                    best = Optional.of(kind);
                }
            }
        }
        return best.map(
                k -> new Expectation.MakeUp(k.get(0), k.get(1), k.get(2), k.get(3), k.get(4), seen.getOrDefault(k, 0)));
    }

    private static List<Expectation.Putt> putts(LevelGreenOdds odds) {
        List<Expectation.Putt> out = new ArrayList<>();
        for (int feet : PUTT_FEET) {
            double metres = feet * FOOT;
            double one = odds.probability(metres, 1);
            out.add(new Expectation.Putt(metres, one, Math.max(0, 1 - one - odds.probability(metres, 2))));
        }
        return out;
    }
}
