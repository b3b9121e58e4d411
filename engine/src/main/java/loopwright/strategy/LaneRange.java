package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;
import loopwright.numerics.Watch;

/**
 * The lanes of a hole in the order in which they are solved, from the fewest strokes in hand on the tee that leave hope
 * until the chance is as good as one. On the tee only the first state is asked for; the lanes after it are solved whole.
 */
final class LaneRange {
    /** A hole of this many strokes is never asked about. */
    private static final int LONGEST = 60;

    private LaneRange() {}

    /** Solves lanes. */
    interface Work {
        /** Every state of a lane. */
        void whole(Lane lane);

        /** The first state alone; its chance. */
        double tee(Lane lane);
    }

    /** The chance on the tee for the fewest strokes in hand that leave hope, and each one more. */
    static List<Double> solve(LaneTable table, Work work, double clip, Watch watch) {
        List<Double> chances = new ArrayList<>();
        int solved = 0;
        double chance = 0;
        for (int b = table.lowestInHand(); chance < 1 - clip && b < table.securedInHand(LONGEST); b++) {
            watch.check();
            Lane start = table.start(b);
            for (Lane lane : table.from(solved)) {
                if (lane != start) {
                    work.whole(lane);
                    solved = lane.number + 1;
                }
            }
            chance = work.tee(start);
            chances.add(chance);
        }
        return chances;
    }

    /** What the hole hands back: never falling, exact at both ends. */
    static HandOver handOver(LaneTable table, List<Double> chances, double clip) {
        int first = 0;
        while (first < chances.size() && chances.get(first) < clip) {
            first++;
        }
        int end = first;
        while (end < chances.size() && chances.get(end) < 1 - clip) {
            end++;
        }
        double[] kept = new double[end - first];
        double before = 0;
        for (int i = 0; i < kept.length; i++) {
            before = Math.max(before, Math.min(1, chances.get(first + i)));
            kept[i] = before;
        }
        return new HandOver(table.lowestInHand() + first, kept);
    }
}
