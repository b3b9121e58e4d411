package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.Collectors;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.course.TemporaryGreen;
import loopwright.numerics.Watch;
import loopwright.player.DayFlight;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.player.StrikeModel;
import loopwright.strategy.Ability;
import loopwright.strategy.ScoreDistribution;
import loopwright.strategy.ShotRules;

/** Makes the game plan of a round: every hole solved for the fewest expected strokes, and the round's odds. */
public final class PlanRound {
    private static final int REFEREE_ROUNDS = 2000;
    private static final int MOST_DECISIONS = 5;
    private static final double LEAST_DECISION = 0.02;

    private final CourseFiles courses;
    private final PlayerFiles players;
    private final HolePictures pictures;
    private final Function<Path, AuditFiles> audits;

    /** {@code audits} opens the audit files of a folder. */
    public PlanRound(
            CourseFiles courses, PlayerFiles players, HolePictures pictures, Function<Path, AuditFiles> audits) {
        this.courses = courses;
        this.players = players;
        this.pictures = pictures;
        this.audits = audits;
    }

    public RoundPlan plan(PlanRequest request, Watch watch) {
        List<RoundPlan> plans = new ArrayList<>();
        for (PlanDay day : request.days()) {
            plans.add(onDay(day, request, plans.isEmpty() ? request.audit() : Optional.empty(), watch));
        }
        RoundPlan plan = plans.get(0).withOtherDays(plans.subList(1, plans.size()));
        request.pictures().ifPresent(folder -> new PlanPictures(pictures).draw(plan, folder));
        return plan;
    }

    private RoundPlan onDay(PlanDay day, PlanRequest request, Optional<Path> auditFolder, Watch watch) {
        Prepared all = prepare(request, day);
        checkTarget(request.target(), all.planners().size());
        Optional<AuditFiles> audit = auditFolder.map(audits);
        List<HolePlanner.Planned> planned = inParallel(
                all.planners(), p -> p.plan(REFEREE_ROUNDS, request.seed(), audit, watch.withoutProgress()), watch);
        return round(all.course(), all.tees(), day, request.target(), planned);
    }

    /** The first of the holes asked for, solved on the first day and ready to answer; the referee does not play it. */
    public SolvedHole solveHole(PlanRequest request, Watch watch) {
        Prepared all = prepare(request, request.days().get(0));
        return all.planners().get(0).solved(all.tees().name(), watch);
    }

    /** Everything read and checked, nothing solved. */
    private record Prepared(Course course, TeeSet tees, List<HolePlanner> planners) {}

    private Prepared prepare(PlanRequest request, PlanDay day) {
        Course course = TemporaryGreen.inPlay(courses.read(request.course()).course());
        for (String location : request.holeLocations()) {
            course = HoleLocations.apply(course, location);
        }
        TeeSet tees = tees(course, request.tees());
        List<Hole> holes = HoleNumberList.read(request.holes(), course);
        PlayerProfile profile = players.read(request.player());
        Player player = profile.player();
        RoundGreens greens = new RoundGreens(course, player.putting(), day.greens());
        Ability ability = new Ability(strikes(player, day, course), greens.level(), request.seed());
        Map<Integer, ShotRules> locks = ShotLocks.read(request.forbid(), request.require(), course, ability.strikes());
        Course cut = course;
        List<HolePlanner> planners = holes.stream()
                .map(h -> new HolePlanner(
                        cut,
                        h,
                        tees.getPlace(h.number()),
                        ability,
                        locks.getOrDefault(h.number(), ShotRules.FREE),
                        greens,
                        profile.habit()))
                .toList();
        return new Prepared(cut, tees, planners);
    }

    /** On the usual day and level ground a pattern is what it is; anything else is flown. */
    private static StrikeModel strikes(Player player, PlanDay day, Course course) {
        return day.isUsual() && course.heights().isEmpty()
                ? new StrikeModel(player)
                : new StrikeModel(player, new DayFlight(player.swings(), day.conditions(), Watch.NONE));
    }

    private static TeeSet tees(Course course, String wanted) {
        return course.findTeeSet(wanted)
                .orElseThrow(() -> new UserFault("There are no " + wanted + " tees on " + course.name() + "; it has "
                        + course.teeSets().stream().map(TeeSet::name).collect(Collectors.joining(", "))
                        + " (back, middle and forward always work)."));
    }

    private static void checkTarget(int target, int holes) {
        int least = 2 * holes;
        int most = 150 * holes / 18 + 5;
        if (target < least || target > most) {
            throw new UserFault("--target " + target + " is no score for " + holes + " holes; give a total from "
                    + least + " to " + most + ", for example 79 to break 80.");
        }
    }

    /** Works on all cores, answers in order; the first failure ends the rest. */
    private static List<HolePlanner.Planned> inParallel(
            List<HolePlanner> planners, Function<HolePlanner, HolePlanner.Planned> work, Watch watch) {
        ExecutorService pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            AtomicInteger done = new AtomicInteger();
            List<Future<HolePlanner.Planned>> tasks = new ArrayList<>();
            for (HolePlanner p : planners) {
                tasks.add(pool.submit(() -> {
                    HolePlanner.Planned result = work.apply(p);
                    watch.at(done.incrementAndGet(), planners.size());
                    return result;
                }));
            }
            List<HolePlanner.Planned> out = new ArrayList<>();
            for (Future<HolePlanner.Planned> task : tasks) {
                out.add(task.get());
            }
            return out;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Watch.Cancelled();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    private static RoundPlan round(
            Course course, TeeSet tees, PlanDay day, int target, List<HolePlanner.Planned> planned) {
        List<RoundPlan.HolePlan> holes =
                planned.stream().map(HolePlanner.Planned::plan).toList();
        ScoreDistribution total = ScoreDistribution.sumOf(holes.stream()
                .map(h -> ScoreDistribution.of(
                        0, h.scores().stream().mapToDouble(Double::doubleValue).toArray()))
                .toList());
        double habit =
                holes.stream().mapToDouble(RoundPlan.HolePlan::habitExpected).sum();
        return new RoundPlan(
                course, tees, day, target, holes, decisions(holes), total, habit, simulated(planned), List.of());
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
        double sum = 0;
        double squares = 0;
        for (int round = 0; round < REFEREE_ROUNDS; round++) {
            int total = 0;
            for (HolePlanner.Planned hole : planned) {
                total += hole.simulated().get(round);
            }
            sum += total;
            squares += (double) total * total;
        }
        double mean = sum / REFEREE_ROUNDS;
        double variance = Math.max(0, squares / REFEREE_ROUNDS - mean * mean);
        return new RoundPlan.Simulated(mean, Math.sqrt(variance / REFEREE_ROUNDS), REFEREE_ROUNDS);
    }
}
