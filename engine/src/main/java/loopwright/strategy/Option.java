package loopwright.strategy;

/**
 * A stroke with a shot at a target in cell coordinates; or, with shot {@link #DROP}, an unplayable ball dropped there
 * for {@code penalty} strokes.
 */
record Option(int shot, double column, double row, int penalty) {
    static final int DROP = -1;

    static Option stroke(int shot, double column, double row) {
        return new Option(shot, column, row, 0);
    }

    boolean isDrop() {
        return shot == DROP;
    }

    /** True if the other is the same shot at a target within so many cells either way. */
    boolean isNear(Option other, double cells) {
        return shot == other.shot && Math.abs(column - other.column) <= cells && Math.abs(row - other.row) <= cells;
    }
}
