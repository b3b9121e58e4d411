package loopwright.strategy;

/**
 * How finely a hole is solved.
 *
 * @param coarseCells node spacing of the exhaustive first pass, yards, even
 * @param middleCells node spacing of the second pass, yards, even
 * @param fineCells node spacing of the answer, yards, even
 * @param coarsePoints points per cloud in the first two passes
 * @param finePoints points per cloud for choosing; the best few at a state often met are told apart on eight times as many
 * @param reportPoints points of the independent clouds that values are reported from
 * @param allRound true: values are reported for balls all round a node; false: for balls on the nodes themselves, as
 *     where ways of playing are compared and in games solved by hand
 */
public record SolverSettings(
        int coarseCells,
        int middleCells,
        int fineCells,
        int coarsePoints,
        int finePoints,
        int reportPoints,
        boolean allRound) {
    public static final SolverSettings STANDARD = new SolverSettings(16, 8, 4, 32, 128, 1024);

    /**
     * To set many ways of playing side by side; what it costs stands in the ledger ({@code FOR_COMPARISON}). Only their
     * differences count, and what a choice loses between nodes is much the same for all.
     */
    public static final SolverSettings FOR_COMPARISON = new SolverSettings(16, 8, 8, 32, 64, 256, false);

    /** Settings that report for balls all round a node. */
    public SolverSettings(
            int coarseCells, int middleCells, int fineCells, int coarsePoints, int finePoints, int reportPoints) {
        this(coarseCells, middleCells, fineCells, coarsePoints, finePoints, reportPoints, true);
    }

    public SolverSettings {
        if (Math.min(coarseCells, Math.min(middleCells, fineCells)) < 2
                || (coarseCells | middleCells | fineCells) % 2 != 0) {
            throw new IllegalArgumentException("node spacings are even numbers of yards from 2");
        }
        if (coarsePoints < 8 || finePoints < 8 || reportPoints < 8) {
            throw new IllegalArgumentException("a cloud has 8 points or more");
        }
    }

    public SolverSettings withFineCells(int cells) {
        return new SolverSettings(coarseCells, middleCells, cells, coarsePoints, finePoints, reportPoints, allRound);
    }

    public SolverSettings withFinePoints(int points) {
        return new SolverSettings(coarseCells, middleCells, fineCells, coarsePoints, points, reportPoints, allRound);
    }

    SolverSettings onNodesAlone() {
        return new SolverSettings(coarseCells, middleCells, fineCells, coarsePoints, finePoints, reportPoints, false);
    }
}
