package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import loopwright.course.Hole;
import loopwright.numerics.Watch;
import loopwright.strategy.Ability;
import loopwright.strategy.ScoreDistribution;
import loopwright.strategy.ScoreTable;
import loopwright.strategy.ShotRules;
import loopwright.strategy.TargetHole;
import loopwright.strategy.TargetSolver;

/** Makes the game plan of a round: every hole solved for the fewest expected strokes, and the round's odds. */
public final class PlanRound {
    private static final int MOST_DECISIONS = 5;
    /** A habit that costs less is not worth a decision. */
    private static final double LEAST_DECISION = 0.1;

    private final CourseFiles courses;
    private final PlayerFiles players;
    private final HolePictures pictures;
    private final Function<Path, AuditFiles> audits;
    private final Flights flights = new Flights();
    /** A bag flown for every draw takes some MB: those of the player asked about last. */
    private final Remembered<DrawnPlayers.Key, List<Ability>> drawnLast = new Remembered<>(1);

    /** {@code audits} opens the audit files of a folder. */
    public PlanRound(
            CourseFiles courses, PlayerFiles players, HolePictures pictures, Function<Path, AuditFiles> audits) {
        this.courses = courses;
        this.players = players;
        this.pictures = pictures;
        this.audits = audits;
    }

    /** What was planned of holes before. */
    interface HoleMemory {
        HoleMemory NONE = (number, plan) -> plan.get();

        /** The plan of a hole, made if it is not known. */
        HolePlanner.Planned hole(int number, Supplier<HolePlanner.Planned> plan);
    }

    public RoundPlan plan(PlanRequest request, Watch watch) {
        return plan(request, HoleMemory.NONE, PlanWitness.NONE, watch);
    }

    /** The plan; the witness looks on while its first day is solved. */
    RoundPlan plan(PlanRequest request, PlanWitness witness, Watch watch) {
        return plan(request, HoleMemory.NONE, witness, watch);
    }

    /** {@code memory} knows holes of exactly this request, targets and other holes apart. */
    RoundPlan plan(PlanRequest request, HoleMemory memory, Watch watch) {
        return plan(request, memory, PlanWitness.NONE, watch);
    }

    private RoundPlan plan(PlanRequest request, HoleMemory memory, PlanWitness witness, Watch watch) {
        List<RoundPlan> plans = new ArrayList<>();
        for (PlanDay day : request.days()) {
            boolean first = plans.isEmpty();
            plans.add(onDay(
                    day,
                    request,
                    first ? request.audit() : Optional.empty(),
                    memory,
                    first ? witness : PlanWitness.NONE,
                    watch));
        }
        RoundPlan plan = plans.get(0).withOtherDays(plans.subList(1, plans.size()));
        request.pictures().ifPresent(folder -> new PlanPictures(pictures).draw(plan, folder));
        return plan;
    }

    private RoundPlan onDay(
            PlanDay day,
            PlanRequest request,
            Optional<Path> auditFolder,
            HoleMemory memory,
            PlanWitness witness,
            Watch watch) {
        RoundSetup setup = setup(request, day);
        request.counting().checkTarget(request.target(), setup.holes().size());
        Optional<AuditFiles> audit = auditFolder.map(audits);
        witness.round(setup);
        List<HolePlanner> planners = planners(request, setup);
        // what target play and doubt need of a solved hole is too large to remember
        HoleMemory known = setup.round().keepsSolutions() ? HoleMemory.NONE : memory;
        List<HolePlanner.Planned> planned = Cores.all(
                planners,
                p -> known.hole(p.number(), () -> p.plan(setup.round(), audit, witness, watch.withoutProgress())),
                watch);
        Optional<StateOfPlay> state = request.forTarget()
                ? Optional.of(forTarget(request, setup.round(), planners, planned, watch))
                : Optional.empty();
        RoundPlan plan = plan(setup, request, planned, state);
        return request.howSure() ? plan.with(howSure(setup, planned, plan, watch)) : plan;
    }

    /** The first of the holes asked for, solved on the first day and ready to answer; the referee does not play it. */
    public SolvedHole solveHole(PlanRequest request, Watch watch) {
        RoundSetup setup = setup(request, request.days().get(0));
        return planners(request, setup).get(0).solved(setup.tees().name(), setup.round(), drawn(setup), watch);
    }

    /** The same at once and coarser; see {@link SolvedHole#isFirst}. */
    public SolvedHole firstAnswer(PlanRequest request, Watch watch) {
        RoundSetup setup = setup(request, request.days().get(0));
        return planners(request, setup).get(0).first(setup.tees().name(), setup.round(), drawn(setup), watch);
    }

    /** The players that one of a round may be as well, worked out when somebody asks. */
    private Supplier<List<Ability>> drawn(RoundSetup setup) {
        DrawnPlayers players = new DrawnPlayers(setup);
        return () -> drawnLast.get(players.key(), players::abilities);
    }

    private RoundSetup setup(PlanRequest request, PlanDay day) {
        return RoundSetup.read(request, day, courses, players, flights);
    }

    private static List<HolePlanner> planners(PlanRequest request, RoundSetup setup) {
        Map<Integer, ShotRules> locks = ShotLocks.read(
                request.forbid(),
                request.require(),
                setup.course(),
                setup.round().ordinary().strikes());
        return IntStream.range(0, setup.holes().size())
                .mapToObj(i -> planner(setup, i, locks))
                .toList();
    }

    private static HolePlanner planner(RoundSetup setup, int i, Map<Integer, ShotRules> locks) {
        Hole hole = setup.holes().get(i);
        return new HolePlanner(
                setup.course(),
                hole,
                setup.tees().getPlace(hole.number()),
                setup.round().ordinary(),
                locks.getOrDefault(hole.number(), ShotRules.FREE),
                setup.greens(),
                setup.profile().habit(),
                setup.tables().get(i),
                setup.today().biasRadians());
    }

    private static HowSure howSure(RoundSetup setup, List<HolePlanner.Planned> planned, RoundPlan plan, Watch watch) {
        List<TargetHole> holes =
                planned.stream().map(p -> p.solved().orElseThrow()).toList();
        setup.round().days().forEach(d -> d.ability().forgetClouds()); // the drawn players have their own
        return new SkillDoubts(setup, holes, watch).of(plan, onOrdinaryDay(setup.tables(), planned));
    }

    private static StateOfPlay forTarget(
            PlanRequest request,
            PlannedRound round,
            List<HolePlanner> planners,
            List<HolePlanner.Planned> planned,
            Watch watch) {
        List<TargetHole> holes =
                planned.stream().map(p -> p.solved().orElseThrow()).toList();
        return StateOfPlay.of(
                TargetSolver.chances(holes, round.days(), watch),
                request.counting(),
                request.target(),
                planned.stream().map(p -> p.plan().number()).toList(),
                planners.stream().<StateOfPlay.Wording>map(p -> p.shots()::word).toList());
    }

    private static RoundPlan plan(
            RoundSetup setup, PlanRequest request, List<HolePlanner.Planned> planned, Optional<StateOfPlay> state) {
        List<RoundPlan.HolePlan> holes =
                planned.stream().map(HolePlanner.Planned::plan).toList();
        double habit =
                holes.stream().mapToDouble(RoundPlan.HolePlan::habitExpected).sum();
        return new RoundPlan(
                setup.course(),
                setup.tees(),
                setup.day(),
                request.target(),
                request.counting(),
                holes,
                decisions(holes),
                total(setup.tables(), planned, setup.round()),
                habit,
                simulated(planned),
                setup.profile().day(),
                setup.today(),
                List.of(),
                state,
                Optional.empty());
    }

    /** What the round counts over good and bad days. */
    private static ScoreDistribution total(
            List<ScoreTable> tables, List<HolePlanner.Planned> planned, PlannedRound round) {
        return round.total(IntStream.range(0, planned.size())
                .mapToObj(i -> planned.get(i).scores().stream()
                        .map(s -> s.countedBy(tables.get(i)))
                        .toList())
                .toList());
    }

    private static ScoreDistribution onOrdinaryDay(List<ScoreTable> tables, List<HolePlanner.Planned> planned) {
        return ScoreDistribution.sumOf(IntStream.range(0, planned.size())
                .mapToObj(i -> planned.get(i).scores().get(0).countedBy(tables.get(i)))
                .toList());
    }

    /** The first two shots of each hole where the habit costs most, beyond doubt. */
    private static List<RoundPlan.Decision> decisions(List<RoundPlan.HolePlan> holes) {
        List<RoundPlan.Decision> all = new ArrayList<>();
        for (RoundPlan.HolePlan hole : holes) {
            for (int i = 0; i < Math.min(2, hole.shots().size()); i++) {
                RoundPlan.ShotPlan shot = hole.shots().get(i);
                if (!shot.habit().same() && shot.habit().cost() > LEAST_DECISION) {
                    all.add(new RoundPlan.Decision(
                            hole.number(), i + 1, shot, shot.habit().cost()));
                }
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(RoundPlan.Decision::cost).reversed())
                .limit(MOST_DECISIONS)
                .toList();
    }

    private static RoundPlan.Simulated simulated(List<HolePlanner.Planned> planned) {
        int rounds = planned.get(0).simulated().size();
        double sum = 0;
        double squares = 0;
        for (int round = 0; round < rounds; round++) {
            int total = 0;
            for (HolePlanner.Planned hole : planned) {
                total += hole.simulated().get(round);
            }
            sum += total;
            squares += (double) total * total;
        }
        double mean = sum / rounds;
        double variance = Math.max(0, squares / rounds - mean * mean);
        return new RoundPlan.Simulated(mean, Math.sqrt(variance / rounds), rounds);
    }
}
