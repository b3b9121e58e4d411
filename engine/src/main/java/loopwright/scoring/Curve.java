package loopwright.scoring;

import java.util.List;

/** A column of a table: values at rising distances, straight lines between them. */
public record Curve(List<Point> points) {

    /** One printed value. */
    public record Point(double at, double value) {}

    public Curve {
        points = List.copyOf(points);
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).at() > points.get(i - 1).at())) {
                throw new IllegalArgumentException("distances rise, not as in row " + (i + 1));
            }
        }
    }

    Point first() {
        return points.get(0);
    }

    Point last() {
        return points.get(points.size() - 1);
    }

    boolean covers(double x) {
        return x >= first().at() && x <= last().at();
    }

    /** The value at x, not before the first point; beyond the last the line through it and the one {@code rows} back. */
    double valueAt(double x, int rows) {
        if (x > last().at()) {
            return onLine(points.get(points.size() - 1 - rows), last(), x);
        }
        int i = 1;
        while (x > points.get(i).at()) {
            i++;
        }
        return onLine(points.get(i - 1), points.get(i), x);
    }

    private static double onLine(Point a, Point b, double x) {
        return b.value() + (x - b.at()) * (b.value() - a.value()) / (b.at() - a.at());
    }
}
