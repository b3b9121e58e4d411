package loopwright.strategy;

/** Outcome rows as a target field reads them: one row per option of a state, with its chance of a replay added up. */
final class ChanceRows {
    private final OutcomeRows rows;
    private final int cells;
    private final double[] replay;

    ChanceRows(OutcomeRows rows, float[] replayOfCell) {
        this.rows = rows;
        cells = replayOfCell.length;
        replay = new double[rows.cost.length];
        for (int r = 0; r < replay.length; r++) {
            for (int i = rows.start[r]; i < rows.start[r + 1]; i++) {
                replay[r] += rows.code[i] < cells ? rows.weight[i] * replayOfCell[rows.code[i]] : 0;
            }
        }
    }

    boolean isDrop(int row) {
        return rows.drop[row];
    }

    int cost(int row) {
        return rows.cost[row];
    }

    int dropCell(int row) {
        return rows.code[rows.start[row]];
    }

    double sum(int row, double[] found, LaneStakes stakes, int state, double again) {
        double sum = replay[row] * again;
        for (int i = rows.start[row]; i < rows.start[row + 1]; i++) {
            int code = rows.code[i];
            sum += rows.weight[i] * (code < cells ? found[code] : stakes.relieved(code - cells, state, again));
        }
        return sum;
    }
}
