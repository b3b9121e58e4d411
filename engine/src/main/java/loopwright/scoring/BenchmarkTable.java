package loopwright.scoring;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a benchmark player needs on one course: a player of the target score with this player's length, solved by our own
 * engine. The values stand on their own, so that a table that was written down can be used without solving again.
 *
 * @param name of the benchmark, as it is said beside numbers
 * @param holes number of a hole to what he does there
 * @param offGreen strokes to hole out from each lie, by yards to the hole, over the whole course
 * @param putts expected putts by feet
 * @param firstPuttHoled share of putts holed by feet
 * @param threePutts putts beyond the second, expected, by feet of the first
 */
public record BenchmarkTable(
        String name,
        Map<Integer, Hole> holes,
        Map<Lie, Curve> offGreen,
        Curve putts,
        Curve firstPuttHoled,
        Curve threePutts) {

    /**
     * A hole as the benchmark plays it.
     *
     * @param lengthMetres from the tee to the hole along the hole
     * @param strokes expected from the tee
     * @param beyondBogey expected strokes above one over par
     * @param penalties expected penalty strokes
     */
    public record Hole(double lengthMetres, double strokes, double beyondBogey, double penalties) {}

    public BenchmarkTable {
        holes = new TreeMap<>(holes);
        offGreen = offGreen.isEmpty() ? new EnumMap<>(Lie.class) : new EnumMap<>(offGreen);
        if (!offGreen.containsKey(Lie.FAIRWAY) || !offGreen.containsKey(Lie.ROUGH)) {
            throw new IllegalArgumentException("a benchmark needs values from fairway and rough");
        }
    }
}
