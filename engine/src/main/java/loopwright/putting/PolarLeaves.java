package loopwright.putting;

import java.util.Arrays;

/** Where the misses of one pace stop: probabilities on {@link PolarNodes}, and their mean place. */
public final class PolarLeaves {
    private final PolarNodes nodes;
    private double[] weights;
    private int[] index = new int[0];
    private double sum;
    private double sumX;
    private double sumY;
    private double sumMetres;

    PolarLeaves(PolarNodes nodes) {
        this.nodes = nodes;
        this.weights = new double[nodes.count()];
    }

    void add(double x, double y, double probability) {
        sum += probability;
        sumX += probability * x;
        sumY += probability * y;
        sumMetres += probability * nodes.metresTo(x, y);
        nodes.share(x, y, (node, share) -> weights[node] += probability * share);
    }

    /** Ends the collecting: keeps only nodes that were reached. */
    void close() {
        int count = 0;
        int[] reached = new int[weights.length];
        double[] kept = new double[weights.length];
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] > 0) {
                reached[count] = i;
                kept[count] = weights[i];
                count++;
            }
        }
        index = Arrays.copyOf(reached, count);
        weights = Arrays.copyOf(kept, count);
    }

    double expected(double[] nodeValues) {
        double total = 0;
        for (int i = 0; i < index.length; i++) {
            total += weights[i] * nodeValues[index[i]];
        }
        return total;
    }

    /** How many nodes have a share. */
    public int size() {
        return index.length;
    }

    public int node(int i) {
        return index[i];
    }

    public double probability(int i) {
        return weights[i];
    }

    /** Mean place of the misses; 0 where nothing misses. */
    public double meanX() {
        return sum > 0 ? sumX / sum : 0;
    }

    public double meanY() {
        return sum > 0 ? sumY / sum : 0;
    }

    /** Mean distance left by the misses, metres; 0 where nothing misses. */
    public double meanMetres() {
        return sum > 0 ? sumMetres / sum : 0;
    }
}
