package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.numerics.Watch;
import loopwright.strategy.DayAbility;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ScoreDistribution;

/**
 * Foretells a player's next round: the player as he plays now, by his habits, on good and bad days. The forecast is kept, and
 * scored once the round has been played.
 */
public final class ForecastRound {
    private static final long SEED = 1;

    private final Workroom room;
    private final CourseFiles courses;
    private final PlayerFiles players;
    private final String engine;

    /** {@code engine} is the version of the program. */
    public ForecastRound(Workroom room, CourseFiles courses, PlayerFiles players, String engine) {
        this.room = room;
        this.courses = courses;
        this.players = players;
        this.engine = engine;
    }

    /** What is foretold: holes as "1-18", empty for all; the target is of those holes. */
    public record Request(String player, Shelf.Entry course, String tees, String holes, int target, LocalDate day) {}

    /** A forecast, kept, with the whole distribution and whether the model knows the player. */
    public record Foretold(KeptForecast kept, ScoreDistribution scores, Standing standing) {}

    public Foretold foretell(Request request, Watch watch) {
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
        RoundSetup setup = RoundSetup.read(plan, PlanDay.USUAL, courses, players);
        plan.counting().checkTarget(request.target(), setup.holes().size());
        ScoreDistribution scores = scores(setup, watch);
        KeptForecast kept = room.store()
                .records()
                .addForecast(
                        player.id(),
                        new KeptForecast(
                                "",
                                request.day(),
                                request.course().name(),
                                setup.tees().name(),
                                setup.holes().size(),
                                request.target(),
                                scores.mean(),
                                scores.standardDeviation(),
                                scores.probabilityAtMost(request.target()),
                                engine,
                                Instant.EPOCH));
        return new Foretold(kept, scores, Standing.of(room.store().records(), player.id()));
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
        List<ScoreDistribution> byDay = IntStream.range(0, setup.round().days().size())
                .mapToObj(day -> ScoreDistribution.sumOf(
                        byHole.stream().map(hole -> hole.get(day)).toList()))
                .toList();
        return ScoreDistribution.mixtureOf(byDay, setup.round().weights());
    }

    /** The hole's score by habit on each of the days; holes are independent within a day. */
    private static List<ScoreDistribution> hole(RoundSetup setup, int i, RoundGreens.Green green, Watch watch) {
        MeanSolution solution = MeanSolver.solve(setup.problem(i, green), watch);
        PolicyEvaluation habit = new HabitPlay(solution, setup.profile().habit()).evaluate(watch);
        List<ScoreDistribution> out = new ArrayList<>(List.of(ScoreDistribution.of(0, habit.scores())));
        for (DayAbility day :
                setup.round().days().subList(1, setup.round().days().size())) {
            out.add(ScoreDistribution.of(0, habit.scoresWith(day.ability(), watch)));
        }
        return out;
    }
}
