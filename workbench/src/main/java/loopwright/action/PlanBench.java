package loopwright.action;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import loopwright.action.Jobs.Job;
import loopwright.numerics.Watch;

/** Plans rounds and solves holes for the bench, in the background, and keeps what a plan was made from. */
public final class PlanBench {
    private static final int HOLES_AT_ONCE = 2;
    /** A solved hole takes some 20 MB, and the whole program is to stay under 1 GB. */
    private static final int KEPT_HOLES = 8;
    /** A planned hole takes some 100 kB. */
    private static final int KEPT_PLANNED = 200;
    /** Each is a number. */
    private static final int KEPT_CHANCES = 200;

    private final Workroom room;
    private final PlanRound planning;
    private final Clock clock;
    private final String engine;
    private final Remembered<String, HolePlanner.Planned> planned = new Remembered<>(KEPT_PLANNED);
    private final Jobs rounds;
    private final Jobs holes;
    private final Jobs chances;

    /** {@code engine} is the version of the program, which is kept with every plan. */
    public PlanBench(Workroom room, PlanRound planning, JobBoard board, Clock clock, String engine) {
        this.room = room;
        this.planning = planning;
        this.clock = clock;
        this.engine = engine;
        rounds = board.rounds();
        holes = board.open(HOLES_AT_ONCE, KEPT_HOLES);
        chances = board.open(1, KEPT_CHANCES);
    }

    /** The plan of a round; {@code page} is who asks. */
    public Job<RoundPlan> round(PlanChoice choice, String page) {
        return rounds.submit("round " + choice.key(), page, watch -> {
            RoundPlan plan = planning.plan(request(choice), reusing(choice), watch);
            keep(choice, plan);
            return plan;
        });
    }

    /** Keeps what a finished plan foretells of a round on a day; only scores in strokes are compared with scores. */
    public KeptForecast foretell(PlanChoice choice, LocalDate day) {
        RoundPlan plan = round(choice, choice.key())
                .findResult()
                .orElseThrow(() -> new UserFault("The plan is not made yet; wait for it, then keep it as a forecast."));
        if (plan.counting().form() != Counting.Form.STROKES) {
            throw new UserFault(
                    "A forecast is compared with scores in strokes; make the plan counted in strokes first.");
        }
        return room.store()
                .records()
                .addForecast(
                        choice.player().id(),
                        new KeptForecast(
                                "",
                                day,
                                plan.course().name(),
                                plan.tees().name(),
                                plan.holes().size(),
                                plan.target(),
                                plan.total().mean(),
                                plan.total().standardDeviation(),
                                plan.targetProbability(),
                                engine,
                                clock.instant()));
    }

    /** Holes of a round that were planned before, for another target or beside other holes, are not solved again. */
    private PlanRound.HoleMemory reusing(PlanChoice choice) {
        return (number, plan) -> planned.get(choice.onlyHole(number).key(), plan);
    }

    /** One hole, solved and ready to answer. */
    public Job<SolvedHole> hole(PlanChoice choice, int number, String page) {
        PlanChoice only = choice.onlyHole(number);
        Function<Watch, SolvedHole> work = watch -> planning.solveHole(request(only), watch);
        return holes.submit("hole " + only.key(), page, work);
    }

    private Job<SolvedHole> coarse(PlanChoice choice, int number, String page) {
        PlanChoice only = choice.onlyHole(number);
        Function<Watch, SolvedHole> work = watch -> planning.firstAnswer(request(only), watch);
        return holes.submit("first " + only.key(), page + " first", work);
    }

    /** A first answer for one hole at once: the solved hole if it is there, else a coarser one. */
    public Job<SolvedHole> first(PlanChoice choice, int number, String page) {
        boolean solved = holes.find("hole " + choice.onlyHole(number).key())
                .filter(j -> j.state() == Jobs.State.DONE)
                .isPresent();
        return solved ? hole(choice, number, page) : coarse(choice, number, page);
    }

    /** A page that goes to another hole, or to other inputs, waits for no full answer of before any longer. */
    public void leaveOthers(PlanChoice choice, int number, String page) {
        holes.leaveOthers(page, "hole " + choice.onlyHole(number).key());
    }

    /** How likely the first of two choices is the better one for this player; {@code solving} made the hole. */
    public Job<Double> chance(Job<SolvedHole> solving, SolvedHole hole, SolvedHole.Pair pair, String page) {
        String of = solving.key().substring(solving.key().indexOf(' ') + 1);
        String kind = hole.isFirst() ? "firstchance " : "chance ";
        return chances.submit(kind + of + " " + pair, page + " chance", w -> hole.chanceFirstIsBetter(pair, w));
    }

    private PlanRequest request(PlanChoice choice) {
        return choice.request(
                room.courseFile(choice.course().id(), choice.course().version()),
                room.playerFile(choice.player().id(), choice.player().version()));
    }

    private void keep(PlanChoice choice, RoundPlan plan) {
        room.store()
                .keepPlan(new KeptPlan(
                        choice.player().id(),
                        choice.player().version(),
                        choice.course().id(),
                        choice.course().version(),
                        choice.inputs(),
                        choice.seed(),
                        engine,
                        plan.total().mean(),
                        plan.total().standardDeviation(),
                        plan.targetProbability(),
                        plan.habitExpected(),
                        clock.instant()));
    }

    /** Plans that were made, newest first. */
    public List<KeptPlan> listPlans() {
        return room.store().listPlans();
    }
}
