package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loopwright.numerics.Watch;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.ScoreDistribution;

/**
 * Foretells a player's next round: the player as he plays now, by his habits, on good and bad days. The forecast is kept, and
 * scored once the round has been played.
 */
public final class ForecastRound {
    private static final long SEED = 1;
    private static final int ROUND_HOLES = 18;

    private final Workroom room;
    private final KeepRounds rounds;
    private final CourseFiles courses;
    private final PlayerFiles players;
    private final String engine;

    /** {@code engine} is the version of the program. */
    public ForecastRound(Workroom room, KeepRounds rounds, CourseFiles courses, PlayerFiles players, String engine) {
        this.room = room;
        this.rounds = rounds;
        this.courses = courses;
        this.players = players;
        this.engine = engine;
    }

    /** What is foretold: holes as "1-18", empty for all; the target is of those holes. */
    public record Request(String player, Shelf.Entry course, String tees, String holes, int target, LocalDate day) {}

    /** A forecast, kept, with the whole distribution and whether the model knows the player. */
    public record Foretold(KeptForecast kept, ScoreDistribution scores, Standing standing) {}

    public Foretold foretell(Request request, Watch watch) {
        RoundSetup setup = setup(request);
        Counting.STROKES.checkTarget(request.target(), setup.holes().size());
        ScoreDistribution scores = scores(setup, watch);
        KeptForecast kept = keep(
                request.player(), request, setup.tees().name(), setup.holes().size(), request.target(), scores);
        return new Foretold(kept, scores, Standing.of(room.store().records(), request.player()));
    }

    private RoundSetup setup(Request request) {
        Shelf.Document player = room.store().players().get(request.player());
        PlanRequest plan = PlanRequest.usual(
                room.courseFile(request.course().id(), request.course().version()),
                room.playerFile(player.id(), player.version()),
                request.tees(),
                request.target(),
                request.holes(),
                locations(request),
                List.of(),
                List.of(),
                SEED);
        return RoundSetup.read(plan, PlanDay.USUAL, courses, players);
    }

    private KeptForecast keep(
            String player, Request request, String tees, int holes, int target, ScoreDistribution scores) {
        return room.store()
                .records()
                .addForecast(
                        player,
                        new KeptForecast(
                                "",
                                request.day(),
                                request.course().name(),
                                tees,
                                holes,
                                target,
                                scores.mean(),
                                scores.standardDeviation(),
                                scores.probabilityAtMost(target),
                                engine,
                                Instant.EPOCH));
    }

    /**
     * Models the last kept rounds of a player after the fact, as he plays now, where that was not done before and the course
     * is in the store: does the model know him? Forecasts made so are never scored as forecasts.
     *
     * @return how many were modelled
     */
    public int modelPlayed(String player, int last, Watch watch) {
        List<KeptForecast> known = room.store().records().listForecasts(player);
        Map<String, ScoreDistribution> solved = new HashMap<>();
        int done = 0;
        List<KeepRounds.Kept> played = rounds.rounds(player).stream()
                .filter(k -> !k.entry().lesson()
                        && !k.record().team()
                        && k.entry().score().isPresent())
                .toList();
        for (KeepRounds.Kept round : played.subList(Math.max(0, played.size() - last), played.size())) {
            Optional<Shelf.Entry> course = room.store().courses().list().stream()
                    .filter(c -> c.name().equalsIgnoreCase(round.entry().course()))
                    .findFirst();
            boolean modelled = known.stream()
                    .anyMatch(f -> f.day().equals(round.entry().day())
                            && f.holes() == round.entry().holes());
            if (course.isPresent() && !modelled) {
                model(player, round, course.get(), solved, watch);
                done++;
            }
        }
        return done;
    }

    private void model(
            String player,
            KeepRounds.Kept round,
            Shelf.Entry course,
            Map<String, ScoreDistribution> solved,
            Watch watch) {
        String tees = round.entry().tees().isEmpty() ? "middle" : round.entry().tees();
        String holes = round.record().holes().stream()
                .map(h -> String.valueOf(h.number()))
                .collect(Collectors.joining(","));
        Request request =
                new Request(player, course, tees, holes, 0, round.entry().day());
        String key = course.id() + tees + holes + locations(request);
        ScoreDistribution scores = solved.computeIfAbsent(key, k -> scores(setup(request), watch));
        Intake intake = new Intake(room.store().records().listIntake(player));
        double goal = intake.goalScore().isPresent()
                ? (double) intake.goalScore().getAsInt() * round.entry().holes() / ROUND_HOLES
                : scores.mean();
        keep(player, request, tees, round.entry().holes(), (int) Math.floor(goal), scores);
    }

    private List<String> locations(Request request) {
        return room
                .store()
                .listHoleLocations(request.course().id(), request.day().toString())
                .entrySet()
                .stream()
                .map(e -> e.getKey() + ":" + e.getValue())
                .toList();
    }

    private static ScoreDistribution scores(RoundSetup setup, Watch watch) {
        List<RoundGreens.Green> greens = setup.everyGreen();
        List<List<ScoreDistribution>> byHole = Cores.all(
                IntStream.range(0, greens.size()).boxed().toList(),
                i -> hole(setup, i, greens.get(i), watch.withoutProgress()),
                watch);
        return setup.round().total(byHole);
    }

    /** The hole's score by habit on each of the days. */
    private static List<ScoreDistribution> hole(RoundSetup setup, int i, RoundGreens.Green green, Watch watch) {
        MeanSolution solution = MeanSolver.solve(setup.problem(i, green), watch);
        return new HabitPlay(solution, setup.profile().habit())
                .evaluate(watch)
                .scoresOn(setup.round().days(), watch);
    }
}
