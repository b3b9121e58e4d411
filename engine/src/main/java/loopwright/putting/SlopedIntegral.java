package loopwright.putting;

/**
 * Integrates one stroke of {@link PuttFrom} over the player's two normal errors: the chance to hole from the patches of
 * {@link DropRegion}; the misses from cells half a standard deviation wide, each less what of it drops, at rest where
 * {@link RestGrid} puts the cell's middle.
 */
final class SlopedIntegral {
    static final double DEVIATIONS = 4;
    private static final int CELLS = 16;
    private static final double WIDTH = 2 * DEVIATIONS / CELLS;
    private static final double[] MASS = new double[CELLS];

    static {
        double inside = 2 * NormalTable.below(DEVIATIONS) - 1;
        for (int i = 0; i < CELLS; i++) {
            double from = WIDTH * i - DEVIATIONS;
            MASS[i] = (NormalTable.below(from + WIDTH) - NormalTable.below(from)) / inside;
        }
    }

    private final Stroke stroke;
    private final double[] dropped = new double[CELLS * CELLS];
    private double holed;

    /** What the player means to do and how far off he is: start direction and energy. */
    record Stroke(double start, double startSd, double energy, double energySd) {}

    SlopedIntegral(Stroke stroke, DropRegion region) {
        this.stroke = stroke;
        for (DropRegion.Patch patch : region.patches()) {
            drop(patch);
        }
    }

    private void drop(DropRegion.Patch patch) {
        double pace = (patch.energy() - stroke.energy()) / stroke.energySd();
        if (Math.abs(pace) > DEVIATIONS) {
            return;
        }
        double from = (patch.fromStart() - stroke.start()) / stroke.startSd();
        double to = (patch.toStart() - stroke.start()) / stroke.startSd();
        double chance = NormalLaw.density(pace)
                / stroke.energySd()
                * patch.energyWidth()
                * Math.abs(NormalTable.below(to) - NormalTable.below(from));
        holed += chance;
        spread(Math.min(from, to), Math.max(from, to), pace, chance);
    }

    /** Notes what drops in the cells it covers, in proportion to their mass. */
    private void spread(double from, double to, double pace, double chance) {
        int row = cell(pace) * CELLS;
        int first = cell(from);
        int last = cell(to);
        double covered = 0;
        for (int i = first; i <= last; i++) {
            covered += MASS[i] * overlap(i, from, to);
        }
        for (int i = first; i <= last && covered > 0; i++) {
            dropped[row + i] += chance * MASS[i] * overlap(i, from, to) / covered;
        }
    }

    private static double overlap(int cell, double from, double to) {
        double low = WIDTH * cell - DEVIATIONS;
        return Math.max(0, Math.min(to, low + WIDTH) - Math.max(from, low)) / WIDTH;
    }

    private static int cell(double z) {
        return Math.max(0, Math.min(CELLS - 1, (int) ((z + DEVIATIONS) / WIDTH)));
    }

    double holed() {
        return Math.min(1, holed);
    }

    /** Adds the misses; together they come to 1 - holed. */
    void misses(RestGrid rests, double towards, PolarLeaves leaves) {
        double sum = 0;
        for (int i = 0; i < dropped.length; i++) {
            dropped[i] = Math.max(0, MASS[i / CELLS] * MASS[i % CELLS] - dropped[i]);
            sum += dropped[i];
        }
        double factor = sum > 0 ? (1 - holed()) / sum : 0;
        for (int i = 0; i < dropped.length; i++) {
            if (dropped[i] > 0) {
                double bearing = towards + stroke.start() + stroke.startSd() * middle(i % CELLS);
                double energy = stroke.energy() + stroke.energySd() * middle(i / CELLS);
                leaves.add(rests.x(bearing, energy), rests.y(bearing, energy), dropped[i] * factor);
            }
        }
        leaves.close();
    }

    private static double middle(int cell) {
        return WIDTH * (cell + 0.5) - DEVIATIONS;
    }
}
