package loopwright.adapter.chart;

/** A point on a sheet of paper: points (1/72 inch) right of its left edge and down from its top edge. */
record Point(double x, double y) {
    Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    double distanceTo(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** The point {@code length} away in the direction of an angle, radians clockwise from right (y runs down). */
    Point polar(double angle, double length) {
        return new Point(x + length * Math.cos(angle), y + length * Math.sin(angle));
    }

    double angleTo(Point other) {
        return Math.atan2(other.y - y, other.x - x);
    }
}
