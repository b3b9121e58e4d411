package loopwright.putting;

/** One pace from one distance: how often it is holed, and where the misses stop. */
public final class LevelPace implements CandidatePace {
    private final double overshootMetres;
    private final double holed;
    private final double[] leaves;

    /**
     * @param overshootMetres how far past the hole the player means to roll; negative: short
     * @param holed probability of holing out with this putt
     * @param leaves probability, per distance node of the odds, of missing and being left there; sums to 1 - holed
     */
    LevelPace(double overshootMetres, double holed, double[] leaves) {
        if (!(holed >= 0 && holed <= 1)) {
            throw new IllegalArgumentException("a probability lies between 0 and 1, not " + holed);
        }
        this.overshootMetres = overshootMetres;
        this.holed = holed;
        this.leaves = leaves;
    }

    static LevelPace certain(int nodes) {
        return new LevelPace(0, 1, new double[nodes]);
    }

    @Override
    public double overshootMetres() {
        return overshootMetres;
    }

    @Override
    public double holed() {
        return holed;
    }

    /** Probability of missing and being left at a distance node of the odds. */
    public double leave(int node) {
        return leaves[node];
    }

    @Override
    public double expectedOverLeaves(double[] nodeValues) {
        double sum = 0;
        for (int i = 0; i < leaves.length; i++) {
            sum += leaves[i] * nodeValues[i];
        }
        return sum;
    }
}
