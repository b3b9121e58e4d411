package loopwright.geo;

import java.util.List;

/** A polyline of two or more places, measured along; for a hole, from tee to hole location. */
public record Line(List<Place> places) {
    public Line {
        places = List.copyOf(places);
        if (places.size() < 2) {
            throw new IllegalArgumentException("a line needs two places or more, not " + places.size());
        }
    }

    public Place start() {
        return places.get(0);
    }

    public Place end() {
        return places.get(places.size() - 1);
    }

    public double lengthMetres() {
        double length = 0;
        for (int i = 1; i < places.size(); i++) {
            length += places.get(i - 1).distanceTo(places.get(i));
        }
        return length;
    }

    /** The place {@code metres} along the line; before the start or past the end the end place itself. */
    public Place placeAt(double metres) {
        if (metres <= 0) {
            return start();
        }
        double left = metres;
        for (int i = 1; i < places.size(); i++) {
            Place a = places.get(i - 1);
            Place b = places.get(i);
            double step = a.distanceTo(b);
            if (left <= step && step > 0) {
                double t = left / step;
                return new Place(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
            }
            left -= step;
        }
        return end();
    }

    /** How far along the line its nearest place to {@code place} lies, metres. */
    public double along(Place place) {
        return nearest(place)[0];
    }

    /** Distance from {@code place} to the line, metres. */
    public double distanceTo(Place place) {
        return nearest(place)[1];
    }

    public Line reversed() {
        List<Place> turned = new java.util.ArrayList<>(places);
        java.util.Collections.reverse(turned);
        return new Line(turned);
    }

    private double[] nearest(Place place) {
        double best = Double.POSITIVE_INFINITY;
        double bestAlong = 0;
        double passed = 0;
        for (int i = 1; i < places.size(); i++) {
            Place a = places.get(i - 1);
            Place b = places.get(i);
            double dx = b.x() - a.x();
            double dy = b.y() - a.y();
            double squared = dx * dx + dy * dy;
            double t = squared == 0
                    ? 0
                    : Math.max(0, Math.min(1, ((place.x() - a.x()) * dx + (place.y() - a.y()) * dy) / squared));
            double distance = Math.hypot(place.x() - a.x() - t * dx, place.y() - a.y() - t * dy);
            double step = Math.sqrt(squared);
            if (distance < best) {
                best = distance;
                bestAlong = passed + t * step;
            }
            passed += step;
        }
        return new double[] {bestAlong, best};
    }
}
