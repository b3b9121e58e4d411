package loopwright.putting;

/** One pace a player may choose for a putt: the odds of holing it and of what is left, per node of a table. */
public interface CandidatePace {
    /** How far past the hole the player means to roll; negative: short of it. */
    double overshootMetres();

    double holed();

    /** Sum over the leaves of their probability (together 1 - holed) times a value per node. */
    double expectedOverLeaves(double[] nodeValues);
}
