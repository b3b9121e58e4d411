package loopwright.drawing;

/** A point on a sheet of paper: points (1/72 inch) right of its left edge and down from its top edge. */
public record Point(double x, double y) {
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    public double distanceTo(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** The point {@code length} away in the direction of an angle, radians clockwise from right (y runs down). */
    public Point polar(double angle, double length) {
        return new Point(x + length * Math.cos(angle), y + length * Math.sin(angle));
    }

    public double angleTo(Point other) {
        return Math.atan2(other.y - y, other.x - x);
    }
}
