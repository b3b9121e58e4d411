package loopwright.putting;

import java.util.ArrayList;
import java.util.List;

/**
 * The set of start directions and energies that drop, cut into small patches in speed and offset at the rim.
 *
 * <p>In speed u a patch is a Gauss-Legendre point, in offset b one of six slices of the width {@link Cup} allows at u.
 * The chance that a stroke falls into a patch is p(E) |dE/du - (dE/db) (ds/du) / (ds/db)| du [Phi(s2) - Phi(s1)], s the
 * start direction at the slice's two edges: the change of variables from (direction, energy) to (b, u), with the
 * direction integrated exactly.
 */
final class DropRegion {
    private static final int SLICES = 6;

    private final List<Patch> patches = new ArrayList<>();

    /** One patch: directions between two (either order), one energy, and the width of energy it stands for. */
    record Patch(double fromStart, double toStart, double energy, double energyWidth) {}

    DropRegion(HoleLines lines) {
        double slowest = HoleLines.SLOWEST;
        double fastest = Cup.CENTRE_SPEED_METRES_PER_SECOND;
        Panel.forEach(0, slowest, (u, width) -> slices(lines, u, width));
        double[] cuts = {slowest, 0.45, 0.8, 1.2, fastest};
        for (int i = 1; i < cuts.length; i++) {
            Panel.forEach(cuts[i - 1], cuts[i], (u, width) -> slices(lines, u, width));
        }
    }

    private void slices(HoleLines lines, double u, double width) {
        double widest = Cup.widestOffsetMetres(u);
        HoleLines.Line left = lines.lineAt(0, u);
        HoleLines.Line centre = lines.lineAt(1, u);
        HoleLines.Line right = lines.lineAt(2, u);
        Parabola start = Parabola.of(left.start(), centre.start(), right.start());
        Parabola energy = Parabola.of(left.energy(), centre.energy(), right.energy());
        Parabola startSlope = Parabola.of(left.startSlope(), centre.startSlope(), right.startSlope());
        Parabola energySlope = Parabola.of(left.energySlope(), centre.energySlope(), right.energySlope());
        for (int i = 0; i < SLICES; i++) {
            double from = widest * (2.0 * i / SLICES - 1);
            double to = widest * (2.0 * (i + 1) / SLICES - 1);
            double b = (from + to) / 2;
            double perOffset = start.slope(b);
            double stretch = energySlope.at(b) - energy.slope(b) * startSlope.at(b) / perOffset;
            patches.add(new Patch(start.at(from), start.at(to), energy.at(b), Math.abs(stretch) * width));
        }
    }

    List<Patch> patches() {
        return patches;
    }

    /** Through the values at the three offsets. */
    private record Parabola(double middle, double first, double second) {
        static Parabola of(double left, double centre, double right) {
            double h = HoleLines.aside();
            return new Parabola(centre, (right - left) / (2 * h), (right - 2 * centre + left) / (h * h));
        }

        double at(double b) {
            return middle + b * (first + b * second / 2);
        }

        double slope(double b) {
            return first + b * second;
        }
    }
}
