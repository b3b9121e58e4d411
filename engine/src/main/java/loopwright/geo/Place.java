package loopwright.geo;

/** A point in the local frame of a course: metres east and metres north of its centre. */
public record Place(double x, double y) {
    public Place {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a place must be finite, not (" + x + ", " + y + ")");
        }
    }

    public double distanceTo(Place other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** Bearing of {@code other} seen from here: radians clockwise from north, in (-pi, pi]. */
    public double bearingTo(Place other) {
        return Math.atan2(other.x - x, other.y - y);
    }

    /** The place {@code metres} away on a bearing (radians clockwise from north). */
    public Place along(double bearing, double metres) {
        return new Place(x + Math.sin(bearing) * metres, y + Math.cos(bearing) * metres);
    }

    /** The place reached by going {@code forward} metres on the bearing and {@code right} metres square to it. */
    public Place offset(double bearing, double forward, double right) {
        double sin = Math.sin(bearing);
        double cos = Math.cos(bearing);
        return new Place(x + sin * forward + cos * right, y + cos * forward - sin * right);
    }
}
