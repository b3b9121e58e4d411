package loopwright.putting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The distances at which the odds of a level green are solved, and the paces tried from each. */
final class LevelNodes {
    private static final double FINE_STEP = 0.05;
    private static final double FINE_END = 3;
    private static final double GROWTH = 1.04;
    private static final double LAST = 61;

    /** How far past the hole the candidate paces mean to roll, metres. From three feet short to four and a half past. */
    private static final double[] OVERSHOOTS = {-0.9, -0.5, -0.2, 0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.75, 0.9, 1.1, 1.4};

    private LevelNodes() {}

    /** 0, the hole's radius, then ascending. */
    static double[] metres() {
        List<Double> nodes = new ArrayList<>(List.of(0.0, Cup.RADIUS_METRES));
        for (int i = 2; i * FINE_STEP < FINE_END - FINE_STEP / 2; i++) {
            nodes.add(i * FINE_STEP);
        }
        for (double d = FINE_END; d < LAST; d *= GROWTH) {
            nodes.add(d);
        }
        nodes.add(LAST);
        return nodes.stream().mapToDouble(Double::doubleValue).toArray();
    }

    static List<List<LevelPace>> paces(double[] nodes, LevelPutt putt) {
        List<List<LevelPace>> all = new ArrayList<>();
        for (double d : nodes) {
            all.add(pacesFrom(d, nodes, putt));
        }
        return List.copyOf(all);
    }

    private static List<LevelPace> pacesFrom(double metres, double[] nodes, LevelPutt putt) {
        if (metres <= Cup.RADIUS_METRES) {
            return List.of(LevelPace.certain(nodes.length));
        }
        List<LevelPace> paces = new ArrayList<>();
        for (double past : OVERSHOOTS) {
            if (metres + past > metres / 2) {
                paces.add(LevelPaceIntegral.of(putt, metres, past, nodes));
            }
        }
        return List.copyOf(paces);
    }

    static int nearest(double[] nodes, double metres) {
        int found = Arrays.binarySearch(nodes, metres);
        if (found >= 0) {
            return found;
        }
        int right = Math.min(-found - 1, nodes.length - 1);
        int left = Math.max(0, right - 1);
        return metres - nodes[left] <= nodes[right] - metres ? left : right;
    }
}
