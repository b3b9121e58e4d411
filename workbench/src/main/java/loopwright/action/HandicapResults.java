package loopwright.action;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the handicap sums answer; their component names are the keys of {@code docs/schema/handicap.schema.json}. */
public final class HandicapResults {
    /** Said on every answer. */
    public static final String NOTE =
            "Arithmetic only: only an authorised association issues a Handicap Index and rates a course.";

    private HandicapResults() {}

    /**
     * An index from differentials.
     *
     * @param differentials those used, after any reduction, in the order given (at most the most recent 20)
     * @param counted the lowest ones that count
     * @param mean of the counted ones, not rounded
     * @param adjustment because there are few scores
     * @param calculated before caps
     * @param low the low index the caps were measured from, where given
     * @param exceptionalReduction what the newest score took off every differential
     * @param index below zero for a plus handicap
     */
    public record Index(
            String kind,
            double index,
            List<Double> differentials,
            List<Double> counted,
            double mean,
            double adjustment,
            double calculated,
            @Nullable Double low,
            boolean softCap,
            boolean hardCap,
            double exceptionalReduction,
            String note) {}

    /**
     * A score differential.
     *
     * @param exact before rounding
     * @param expectedPart what was added for holes not played; 0 for a whole round
     * @param approximate true where the expected part enters: its formula is not published
     */
    public record Differential(
            String kind,
            double differential,
            double exact,
            int holes,
            double expectedPart,
            boolean approximate,
            String note) {}

    /** A course handicap, before rounding and rounded. */
    public record Course(String kind, double index, int holes, double exact, int courseHandicap, String note) {}

    /** A playing handicap: the unrounded course handicap times the allowance, rounded once. */
    public record Playing(
            String kind,
            double index,
            int holes,
            double courseHandicapExact,
            int courseHandicap,
            double allowance,
            double exact,
            int playingHandicap,
            String note) {}

    /** The effect of the soft and the hard cap. */
    public record Cap(
            String kind, double calculated, double low, double index, boolean softCap, boolean hardCap, String note) {}

    /**
     * Strokes received hole by hole.
     *
     * @param most net double bogey of each hole, where pars were given
     * @param adjustedGross where scores were given
     */
    public record Strokes(
            String kind,
            int handicap,
            List<Integer> strokeIndexes,
            List<Integer> received,
            @Nullable List<Integer> most,
            @Nullable Integer adjustedGross,
            String note) {}

    /**
     * A whole scoring record.
     *
     * @param index after the last score; missing with fewer than three
     */
    public record Scores(String kind, @Nullable Double index, List<Entry> scores, String note) {}

    /**
     * One score of a record.
     *
     * @param adjustment sum of exceptional score reductions on it, those of later scores too
     * @param low low index when the index after this score was computed; missing before there are 20 scores
     */
    public record Entry(
            String date,
            double differential,
            double adjustment,
            @Nullable Double low,
            @Nullable Double indexAfter) {}
}
