package loopwright.putting;

import java.util.Arrays;

/** A function of distance read from equal steps: one multiplication and one interpolation per look-up. */
final class FineTable {
    private final double stepsPerMetre;
    private final double[] values;

    private FineTable(double stepsPerMetre, double[] values) {
        this.stepsPerMetre = stepsPerMetre;
        this.values = values;
    }

    /** Interpolates between uneven nodes (ascending from 0) onto equal steps. */
    static FineTable of(double[] nodes, double[] nodeValues, double step) {
        double[] values = new double[(int) Math.ceil(nodes[nodes.length - 1] / step) + 1];
        for (int i = 0; i < values.length; i++) {
            values[i] = interpolate(nodes, nodeValues, i * step);
        }
        return new FineTable(1 / step, values);
    }

    /** Linear between nodes; the last interval is drawn on beyond the last node. */
    static double interpolate(double[] nodes, double[] values, double x) {
        int found = Arrays.binarySearch(nodes, x);
        int left = Math.max(0, Math.min(found >= 0 ? found : -found - 2, nodes.length - 2));
        double share = (x - nodes[left]) / (nodes[left + 1] - nodes[left]);
        return values[left] + share * (values[left + 1] - values[left]);
    }

    double at(double x) {
        if (!(x >= 0)) {
            throw new IllegalArgumentException("a distance is zero or more, not " + x);
        }
        double steps = x * stepsPerMetre;
        int left = Math.min((int) steps, values.length - 2);
        return values[left] + (steps - left) * (values[left + 1] - values[left]);
    }
}
