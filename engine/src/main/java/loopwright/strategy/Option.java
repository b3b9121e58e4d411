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
}
