package loopwright.action;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.course.Course;
import loopwright.course.TeeSet;
import loopwright.scoring.ClubMiss;
import loopwright.scoring.Gain;
import loopwright.scoring.OrdinaryMiss;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.RoundReview;
import loopwright.scoring.ScoreGap;
import loopwright.scoring.ShotAttribution;

/**
 * What a player's kept rounds say. Whatever the records do not tell is empty.
 *
 * @param target score to beat over 18 holes
 * @param latest the round that is reviewed
 * @param record the same as it was written down
 * @param tour it against tour professionals
 * @param benchmark it against a player of the target score with this player's length, on its course
 * @param past it against the player's own rounds before it
 * @param causes its strokes split into decision, execution and luck; empty if that was not asked for or cannot be told
 * @param ordinary how ordinary its shots at the hole were, where club, distance and lie were written down
 * @param gap what stands between the player and the target, over all rounds on that course and tees
 * @param misses misses by club against what the plan assumes, over all rounds
 * @param standing whether the model knows the player
 * @param ground the course and tees of the round, where the store has them
 * @param homework what the player still owes from his lessons
 * @param next the first kept forecast of a day after the round
 */
public record PlayerReport(
        String name,
        int target,
        int rounds,
        KeptRound latest,
        RoundRecord record,
        RoundReview tour,
        Optional<RoundReview> benchmark,
        Optional<RoundReview> past,
        List<ShotAttribution> causes,
        List<OrdinaryMiss> ordinary,
        Optional<ScoreGap> gap,
        List<ClubMiss> misses,
        Standing standing,
        Optional<Ground> ground,
        List<KeptLesson> homework,
        Optional<KeptForecast> next) {
    /** A row of fewer strokes says too little to be praised. */
    private static final int ENOUGH_STROKES = 3;
    /** A decision that costs less is not worth a sentence. */
    private static final double LEAST_DECISION = 0.1;

    public PlayerReport {
        causes = List.copyOf(causes);
        ordinary = List.copyOf(ordinary);
        misses = List.copyOf(misses);
        homework = List.copyOf(homework);
    }

    /** Where a round was played. */
    public record Ground(Course course, TeeSet tees) {}

    /** The finest yardstick there is: the benchmark, else the player's own past, else the tour. */
    public RoundReview yardstick() {
        return benchmark.or(() -> past).orElse(tour);
    }

    /** What went best in the round, by stroke; none if nothing gained on the yardstick. */
    public Optional<Gain> doneWell() {
        return yardstick().rows().stream()
                .filter(g -> g.strokes() >= ENOUGH_STROKES && g.gained() > 0)
                .max(Comparator.comparingDouble(Gain::gained));
    }

    /** The choice that cost most beyond doubt, where choices were noted. */
    public Optional<ShotAttribution> decision() {
        return causes.stream()
                .filter(s -> s.decision() > LEAST_DECISION && s.decision() > 2 * s.doubt())
                .max(Comparator.comparingDouble(ShotAttribution::decision));
    }

    /** The obstacle to practise against: the largest, told apart or not. */
    public Optional<ScoreGap.Row> practice() {
        return gap.flatMap(g -> g.rows().stream().filter(r -> r.cost() > 0).findFirst());
    }
}
