package loopwright.action;

import java.util.List;
import java.util.Optional;
import loopwright.ground.Surface;
import loopwright.player.Swing;
import loopwright.units.Distance;

/**
 * Which club and effort covers which distance with the fewest expected strokes, on plain level ground.
 *
 * @param lie what the ball lies on
 * @param unit whole steps of which the rows are apart
 * @param swings every swing that can cover one of the distances, longest first
 * @param rows shortest distance first
 * @param gaps lengths between two neighbouring swings that nothing covers well, shortest first
 * @param measure swings of the table that are mostly assumed, most rows first
 */
public record WedgeTable(
        String player,
        Surface lie,
        LengthUnit unit,
        List<Reach> swings,
        List<Row> rows,
        List<Gap> gaps,
        List<String> measure) {
    /** A gap that costs less than this is not worth a club, strokes from its middle: assumed. */
    public static final double WORTH_A_CLUB = 0.03;

    /** The green that is played to, from side to side, metres. */
    public static final double GREEN_METRES = 2 * PlainHole.GREEN_RADIUS_METRES;
    /** Neighbours that lie closer together leave no gap, metres: half the width of a usual green, assumed. */
    public static final double LEAST_GAP_METRES = 8 * Distance.METRES_PER_YARD;

    public WedgeTable {
        swings = List.copyOf(swings);
        rows = List.copyOf(rows);
        gaps = List.copyOf(gaps);
        measure = List.copyOf(measure);
    }

    /**
     * How far a swing goes, mishits apart.
     *
     * @param depthMetres of the carry that holds the middle 8 of 10 solid balls
     * @param widthMetres the same sideways
     * @param mishitRate share of all balls
     */
    public record Reach(
            Swing swing,
            double carryMetres,
            double runMetres,
            double depthMetres,
            double widthMetres,
            double mishitRate) {}

    /**
     * The best from one distance.
     *
     * @param shot club and effort, or a touch shot
     * @param expected strokes to hole out
     * @param onGreen chance that it finishes on the green
     * @param nearMetres distance to the hole that holds 8 of 10 of its finishes
     * @param next the best other choice, and what it costs
     */
    public record Row(
            double metres,
            String shot,
            double expected,
            double standardError,
            double onGreen,
            double nearMetres,
            Optional<RoundPlan.Alternative> next) {}

    /**
     * A length that no swing has; lengths are carry and run.
     *
     * @param saving strokes from there that a swing of just that length would save, as tight as the longer neighbour
     */
    public record Gap(
            String shorter,
            double shorterMetres,
            String longer,
            double longerMetres,
            double saving,
            double standardError) {
        public double middleMetres() {
            return (shorterMetres + longerMetres) / 2;
        }

        /** True if a swing in between is worth having, beyond doubt. */
        public boolean isWorthFilling() {
            return saving > WORTH_A_CLUB && saving > 2 * standardError;
        }
    }

    /** The gap that is most worth filling, if one is. */
    public Optional<Gap> findGapToFill() {
        return gaps.stream().filter(Gap::isWorthFilling).max((a, b) -> Double.compare(a.saving(), b.saving()));
    }
}
