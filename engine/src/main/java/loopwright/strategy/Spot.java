package loopwright.strategy;

import loopwright.ground.Situation;
import loopwright.ground.Surface;

/**
 * A ball at rest off the green, in cell coordinates, with the trees it sees.
 *
 * @param sideCells of the square of places round it that it stands for; 0: it stands for itself
 */
record Spot(
        double column,
        double row,
        Surface surface,
        Situation situation,
        boolean onTee,
        TreeFan trees,
        double sideCells) {
    /** How many places of the square {@link #part} knows. */
    static final int PARTS = 4;
    /** Of the two points of Gauss's rule on a line of length 1, the distance from its middle. */
    private static final double GAUSS = 1 / Math.sqrt(12);

    Spot(double column, double row, Surface surface, Situation situation, boolean onTee, TreeFan trees) {
        this(column, row, surface, situation, onTee, trees, 0);
    }

    /** One of the four places whose mean is that of the square for all that bends no more than a parabola. */
    Spot part(int i) {
        double off = GAUSS * sideCells;
        return new Spot(
                column + (i % 2 == 0 ? -off : off),
                row + (i / 2 % 2 == 0 ? -off : off),
                surface,
                situation,
                onTee,
                trees);
    }
}
