package loopwright.handicap;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where handicap strokes fall, and the most a hole can count for handicap purposes.
 *
 * <p>One stroke on each hole for every full set of holes, the rest on the holes of lowest stroke index; a plus handicap
 * gives strokes back from the highest stroke index down. Net double bogey (Rule 3.1): par + 2 + strokes received;
 * before a player has an index: par + 5 (from memory).
 */
public final class StrokesReceived {
    private StrokesReceived() {}

    /** Strokes received on each hole, in the order of the given stroke indexes (9 or 18 different ones, any order). */
    public static List<Integer> perHole(int handicap, List<Integer> strokeIndexes) {
        int holes = strokeIndexes.size();
        if (holes == 0 || strokeIndexes.stream().distinct().count() != holes) {
            throw new IllegalArgumentException("every hole needs a stroke index of its own, not " + strokeIndexes);
        }
        List<Integer> hardestFirst = IntStream.range(0, holes)
                .boxed()
                .sorted(Comparator.comparing(strokeIndexes::get))
                .toList();
        List<Integer> received = new ArrayList<>(Collections.nCopies(holes, Math.floorDiv(handicap, holes)));
        // With a plus handicap floorDiv takes one from every hole and the remainder returns it to the hardest ones.
        for (int i = 0; i < Math.floorMod(handicap, holes); i++) {
            received.set(hardestFirst.get(i), received.get(hardestFirst.get(i)) + 1);
        }
        return received;
    }

    /** The most a hole counts for a player with a handicap. */
    public static int netDoubleBogey(int par, int received) {
        return par + 2 + received;
    }

    /** The most a hole counts for a player who has no index yet. */
    public static int mostBeforeAnIndex(int par) {
        return par + 5;
    }

    /** A round's adjusted gross score: each hole at most its net double bogey. */
    public static int adjustedGross(List<Integer> scores, List<Integer> pars, List<Integer> received) {
        int sum = 0;
        for (int i = 0; i < scores.size(); i++) {
            sum += Math.min(scores.get(i), netDoubleBogey(pars.get(i), received.get(i)));
        }
        return sum;
    }
}
