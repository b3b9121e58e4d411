package loopwright.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Engraver's textures as plain traces cut exactly at the edge of an area (even-odd rings), so that every back end draws
 * them alike. Patterns are fixed to the sheet, not to the area: neighbours of one kind run into each other unseen.
 */
public final class Texture {
    private Texture() {}

    /** Parallel lines at an angle (radians clockwise from right), {@code spacing} apart. */
    public static List<Trace> ruled(List<Trace> rings, double angle, double spacing, Extent window) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        // In turned coordinates u runs along the lines, v across them.
        Extent turned = Extent.around(rings.stream()
                .flatMap(r -> r.points().stream())
                .map(p -> new Point(cos * p.x() + sin * p.y(), cos * p.y() - sin * p.x()))
                .toList());
        List<Trace> out = new ArrayList<>();
        for (long row = (long) Math.ceil(turned.top() / spacing); row * spacing <= turned.bottom(); row++) {
            double v = row * spacing;
            double[] cuts = cuts(rings, cos, sin, v);
            for (int i = 0; i + 1 < cuts.length; i += 2) {
                Trace line = Trace.line(
                        new Point(cos * cuts[i] - sin * v, sin * cuts[i] + cos * v),
                        new Point(cos * cuts[i + 1] - sin * v, sin * cuts[i + 1] + cos * v));
                if (line.extent().grown(1).overlaps(window)) {
                    out.add(line);
                }
            }
        }
        return out;
    }

    /** Where the line v = constant crosses the rings, ascending in u. */
    private static double[] cuts(List<Trace> rings, double cos, double sin, double v) {
        List<Double> found = new ArrayList<>();
        for (Trace ring : rings) {
            List<Point> p = ring.points();
            for (int i = 0; i < p.size(); i++) {
                Point a = p.get(i);
                Point b = p.get((i + 1) % p.size());
                double va = cos * a.y() - sin * a.x();
                double vb = cos * b.y() - sin * b.x();
                if (va <= v != vb <= v) {
                    double t = (v - va) / (vb - va);
                    double ua = cos * a.x() + sin * a.y();
                    double ub = cos * b.x() + sin * b.y();
                    found.add(ua + t * (ub - ua));
                }
            }
        }
        double[] out = found.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(out);
        return out;
    }

    /** Points of a shaken lattice that lie inside the rings and the window; {@code pitch} is their mean distance. */
    public static List<Point> scattered(List<Trace> rings, double pitch, double shake, Extent window) {
        Extent all =
                Extent.around(rings.stream().flatMap(r -> r.points().stream()).toList());
        double rowStep = pitch * Math.sqrt(3) / 2;
        List<Point> out = new ArrayList<>();
        long firstRow = (long) Math.floor(Math.max(all.top(), window.top()) / rowStep) - 1;
        long lastRow = (long) Math.ceil(Math.min(all.bottom(), window.bottom()) / rowStep) + 1;
        long firstColumn = (long) Math.floor(Math.max(all.left(), window.left()) / pitch) - 1;
        long lastColumn = (long) Math.ceil(Math.min(all.right(), window.right()) / pitch) + 1;
        for (long row = firstRow; row <= lastRow; row++) {
            for (long column = firstColumn; column <= lastColumn; column++) {
                double dx = (noise(row, column, 1) - 0.5) * 2 * shake * pitch;
                double dy = (noise(row, column, 2) - 0.5) * 2 * shake * pitch;
                Point p = new Point(pitch * (column + (row & 1) * 0.5) + dx, rowStep * row + dy);
                if (inside(rings, p)) {
                    out.add(p);
                }
            }
        }
        return out;
    }

    /** Short slanted strokes along a closed ring, on its outer (or inner) side. */
    public static List<Trace> fringe(Trace ring, double spacing, double length, boolean outside) {
        List<Point> p = ring.points();
        double side = signedArea(p) > 0 == outside ? -1 : 1;
        List<Trace> out = new ArrayList<>();
        double next = spacing / 2;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            double step = a.distanceTo(b);
            double angle = a.angleTo(b);
            while (next <= step) {
                Point foot = a.polar(angle, next);
                out.add(Trace.line(foot, foot.polar(angle + side * Math.toRadians(60), length)));
                next += spacing;
            }
            next -= step;
        }
        return out;
    }

    /** Points along a ring, {@code spacing} apart. */
    public static List<Point> stations(Trace ring, double spacing) {
        return fringe(ring, spacing, 0, true).stream()
                .map(t -> t.points().get(0))
                .toList();
    }

    public static boolean inside(List<Trace> rings, Point q) {
        boolean in = false;
        for (Trace ring : rings) {
            List<Point> p = ring.points();
            for (int i = 0, j = p.size() - 1; i < p.size(); j = i++) {
                Point a = p.get(i);
                Point b = p.get(j);
                if (a.y() > q.y() != b.y() > q.y()
                        && q.x() < (b.x() - a.x()) * (q.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                    in = !in;
                }
            }
        }
        return in;
    }

    private static double signedArea(List<Point> p) {
        double sum = 0;
        for (int i = 0, j = p.size() - 1; i < p.size(); j = i++) {
            sum += p.get(j).x() * p.get(i).y() - p.get(i).x() * p.get(j).y();
        }
        return sum / 2;
    }

    /** A number between 0 and 1 that depends on nothing but its arguments (a bit mixer of 64 bits). */
    public static double noise(long row, long column, long salt) {
        long h = row * 0x9E3779B97F4A7C15L + column * 0xC2B2AE3D27D4EB4FL + salt * 0x165667B19E3779F9L;
        h ^= h >>> 31;
        h *= 0xBF58476D1CE4E5B9L;
        h ^= h >>> 29;
        h *= 0x94D049BB133111EBL;
        h ^= h >>> 32;
        return (h >>> 11) * 0x1p-53;
    }
}
