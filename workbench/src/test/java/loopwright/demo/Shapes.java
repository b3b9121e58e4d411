package loopwright.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** Rounded natural shapes: noisy ellipses, strips of changing width, lines without corners. */
final class Shapes {
    private Shapes() {}

    /** An ellipse whose radius wavers by about {@code rough} (0 to 0.3); {@code bearing} is that of its long axis. */
    static Region blob(
            Place centre, double halfLength, double halfWidth, double bearing, double rough, SplittableRandom random) {
        double[] share = new double[6];
        double[] phase = new double[6];
        for (int k = 2; k < 6; k++) {
            share[k] = rough * random.nextDouble(0.4, 1) / (k - 1);
            phase[k] = random.nextDouble(2 * Math.PI);
        }
        List<Place> ring = new ArrayList<>();
        int corners = (int) Math.max(20, Math.min(72, halfLength * 2.5));
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double radius = 1;
            for (int k = 2; k < 6; k++) {
                radius += share[k] * Math.cos(k * angle + phase[k]);
            }
            ring.add(centre.offset(
                    bearing, radius * halfLength * Math.cos(angle), radius * halfWidth * Math.sin(angle)));
        }
        return Region.of(ring);
    }

    /** A blob of a wanted area. */
    static Region blobOfArea(
            Place centre,
            double squareMetres,
            double elongation,
            double bearing,
            double rough,
            SplittableRandom random) {
        Region first = blob(centre, 10 * elongation, 10 / elongation, bearing, rough, random);
        double scale = Math.sqrt(squareMetres / first.areaSquareMetres());
        return first.mapped(
                p -> new Place(centre.x() + (p.x() - centre.x()) * scale, centre.y() + (p.y() - centre.y()) * scale));
    }

    /** A strip along a line whose half widths left and right are given along it, metres; its ends are rounded. */
    static Region strip(
            Line line, double from, double to, DoubleUnaryOperator left, DoubleUnaryOperator right, double rounding) {
        List<Place> port = new ArrayList<>();
        List<Place> starboard = new ArrayList<>();
        int steps = (int) Math.max(8, Math.ceil((to - from) / 3));
        for (int i = 0; i <= steps; i++) {
            double at = from + (to - from) * i / steps;
            double end = Math.max(0, Math.min(at - from, to - at));
            double taper = end >= rounding ? 1 : Math.sqrt(1 - Math.pow(1 - end / rounding, 2));
            Place place = line.placeAt(at);
            double bearing = line.placeAt(Math.max(from, at - 4)).bearingTo(line.placeAt(Math.min(to, at + 4)));
            port.add(place.offset(bearing, 0, -Math.max(0.3, taper * left.applyAsDouble(at))));
            starboard.add(place.offset(bearing, 0, Math.max(0.3, taper * right.applyAsDouble(at))));
        }
        Collections.reverse(starboard);
        port.addAll(starboard);
        return Region.of(port);
    }

    /** The line with its corners cut (Chaikin's rule); the ends stay. */
    static Line rounded(Line line, int times) {
        List<Place> p = line.places();
        for (int t = 0; t < times; t++) {
            List<Place> next = new ArrayList<>();
            next.add(p.get(0));
            for (int i = 1; i < p.size(); i++) {
                next.add(between(p.get(i - 1), p.get(i), i == 1 ? 0.35 : 0.25));
                next.add(between(p.get(i - 1), p.get(i), i == p.size() - 1 ? 0.65 : 0.75));
            }
            next.add(p.get(p.size() - 1));
            p = next;
        }
        return new Line(p);
    }

    /** A closed ring with its corners cut. */
    static List<Place> roundedRing(List<Place> ring, int times) {
        List<Place> p = ring;
        for (int t = 0; t < times; t++) {
            List<Place> next = new ArrayList<>();
            for (int i = 0; i < p.size(); i++) {
                Place a = p.get(i);
                Place b = p.get((i + 1) % p.size());
                next.add(between(a, b, 0.25));
                next.add(between(a, b, 0.75));
            }
            p = next;
        }
        return p;
    }

    /** A rectangle turned to a bearing. */
    static Region box(Place centre, double bearing, double halfLength, double halfWidth) {
        return Region.of(List.of(
                centre.offset(bearing, halfLength, -halfWidth),
                centre.offset(bearing, halfLength, halfWidth),
                centre.offset(bearing, -halfLength, halfWidth),
                centre.offset(bearing, -halfLength, -halfWidth)));
    }

    /** A smooth wavering between -1 and 1 along a length, of about the given wave length. */
    static DoubleUnaryOperator waver(double waveMetres, SplittableRandom random) {
        double a = random.nextDouble(2 * Math.PI);
        double b = random.nextDouble(2 * Math.PI);
        return s -> 0.6 * Math.sin(2 * Math.PI * s / waveMetres + a)
                + 0.4 * Math.sin(2 * Math.PI * s / waveMetres * 1.9 + b);
    }

    private static Place between(Place a, Place b, double t) {
        return new Place(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
    }
}
