package loopwright.putting;

/**
 * Integrates one pace from one distance over the two normal errors of {@link LevelPutt}.
 *
 * <p>The start direction is cut where the path leaves the hole and integrated by Gauss-Legendre panels up to five
 * standard deviations; for each direction the rolls that miss are integrated by panels on either side of those that drop
 * ({@link HoledChance}). A leave between two nodes is shared by distance, so that the mean distance left is kept. The
 * mass beyond five deviations (6e-7) is shared in proportion.
 */
final class LevelPaceIntegral {
    private static final double DEVIATIONS = HoledChance.DEVIATIONS;

    private final LevelPutt putt;
    private final double metres;
    private final double mean;
    private final double sd;
    private final double[] nodes;
    private final double[] leaves;
    private int cursor;

    private LevelPaceIntegral(LevelPutt putt, double metres, double overshoot, double[] nodes) {
        this.putt = putt;
        this.metres = metres;
        this.mean = metres + overshoot;
        this.sd = putt.paceSd() * mean;
        this.nodes = nodes;
        this.leaves = new double[nodes.length];
    }

    static LevelPace of(LevelPutt putt, double metres, double overshoot, double[] nodes) {
        LevelPaceIntegral integral = new LevelPaceIntegral(putt, metres, overshoot, nodes);
        integral.integrateDirections();
        return integral.pace(overshoot, HoledChance.of(putt, metres, overshoot));
    }

    private void integrateDirections() {
        double s = putt.directionSdRadians();
        double last = Math.min(DEVIATIONS * s, Math.PI / 2);
        double rim = Math.min(last, Math.asin(Cup.RADIUS_METRES / metres));
        double middle = Math.min(last, rim + 1.5 * s);
        directions(0, rim);
        directions(rim, middle);
        directions(middle, last);
    }

    /** Left and right are alike, so one side counts twice. */
    private void directions(double from, double to) {
        double s = putt.directionSdRadians();
        Panel.forEach(from, to, (angle, width) -> direction(angle, 2 * width * NormalLaw.density(angle / s) / s));
    }

    private void direction(double angle, double weight) {
        boolean meets = metres * Math.sin(angle) < Cup.RADIUS_METRES;
        if (!meets) {
            double nearest = metres * Math.cos(angle);
            misses(angle, weight, Double.NEGATIVE_INFINITY, nearest);
            misses(angle, weight, nearest, Double.POSITIVE_INFINITY);
            return;
        }
        double rim = LevelPutt.rimMetres(metres, angle);
        double last = rim + putt.windowMetres(metres, angle);
        misses(angle, weight, Double.NEGATIVE_INFINITY, rim);
        misses(angle, weight, last, Double.POSITIVE_INFINITY);
    }

    private void misses(double angle, double weight, double from, double to) {
        double low = Math.max(from, mean - DEVIATIONS * sd);
        double high = Math.min(to, mean + DEVIATIONS * sd);
        cursor = 0;
        Panel.forEach(low, high, (roll, width) -> {
            double left = LevelPutt.leftMetres(metres, angle, Math.max(0, roll));
            share(left, weight * width * NormalLaw.density((roll - mean) / sd) / sd);
        });
    }

    private void share(double left, double weight) {
        int right = cursorAt(left);
        double step = nodes[right] - nodes[right - 1];
        double share = Math.min(1, (left - nodes[right - 1]) / step);
        leaves[right - 1] += weight * (1 - share);
        leaves[right] += weight * share;
    }

    /** The first node beyond a distance; rolls come in order, so the last answer is near. */
    private int cursorAt(double left) {
        int right = Math.max(1, cursor);
        while (right < nodes.length - 1 && nodes[right] < left) {
            right++;
        }
        while (right > 1 && nodes[right - 1] > left) {
            right--;
        }
        cursor = right;
        return right;
    }

    private LevelPace pace(double overshoot, double holed) {
        double sum = holed;
        for (double leave : leaves) {
            sum += leave;
        }
        for (int i = 0; i < leaves.length; i++) {
            leaves[i] /= sum;
        }
        return new LevelPace(overshoot, Math.min(1, holed / sum), leaves);
    }
}
