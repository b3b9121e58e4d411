package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.course.Hole;
import loopwright.handicap.TeeRating;
import loopwright.numerics.Watch;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ScoreDistribution;

/** Plays a player by his habits on a course and sets what comes out beside his real scores. */
public final class CheckPlayer {
    private final CourseFiles courses;
    private final PlayerFiles players;
    private final ScoreFile scoreFile;

    public CheckPlayer(CourseFiles courses, PlayerFiles players, ScoreFile scoreFile) {
        this.courses = courses;
        this.players = players;
        this.scoreFile = scoreFile;
    }

    /**
     * What is asked.
     *
     * @param holes "1-18" and the like; empty: all
     * @param rating of the tees that are modelled; scores from other tees are converted by it
     */
    public record Question(
            Path course, Path player, Path scores, String tees, String holes, Optional<TeeRating> rating, long seed) {}

    /** One hole: the policy by habit, its scores by day, and the expected strokes of the best play for the average. */
    private record Played(List<ScoreDistribution> byDay, double habit, double best) {}

    public PlayerCheck check(Question q, Watch watch) {
        ScoreFile.Totals totals = scoreFile.read(q.scores());
        PlanRequest request = PlanRequest.usual(
                q.course(), q.player(), q.tees(), 0, q.holes(), List.of(), List.of(), List.of(), q.seed());
        RoundSetup setup = RoundSetup.read(request, PlanDay.USUAL, courses, players);
        RealScores real = RealScores.of(
                totals,
                new RealScores.Here(
                        setup.course().name(),
                        setup.tees().name(),
                        setup.holes().size(),
                        q.rating()));
        List<Played> played = Cores.all(
                IntStream.range(0, setup.holes().size()).boxed().toList(),
                i -> play(setup, i, watch.withoutProgress()),
                watch);
        ScoreDistribution modelled =
                setup.round().total(played.stream().map(Played::byDay).toList());
        List<String> setAside = new ArrayList<>();
        totals.problems().forEach(p -> setAside.add(q.scores() + ", " + p.sentence()));
        real.setAside().forEach(s -> setAside.add(q.scores() + ", " + s));
        return new PlayerCheck(
                setup.profile().player().name(),
                setup.course().name(),
                setup.tees().name(),
                setup.holes().size(),
                setup.holes().stream().mapToInt(Hole::par).sum(),
                modelled,
                real.scores(),
                real.converted(),
                Calibration.of(real.scores(), modelled),
                played.stream().mapToDouble(p -> p.habit() - p.best()).sum(),
                setAside);
    }

    private static Played play(RoundSetup setup, int i, Watch watch) {
        MeanSolution solution = MeanSolver.solve(
                setup.problem(i, setup.greens().of(setup.holes().get(i))), watch);
        PolicyEvaluation habit = new HabitPlay(solution, setup.profile().habit()).evaluate(watch);
        return new Played(
                habit.scoresOn(setup.round().days(), watch),
                habit.expected(),
                solution.evaluate(watch).expected());
    }
}
