package loopwright.drawing;

/** A rectangle on the sheet, in points; y runs down. */
public record Extent(double left, double top, double right, double bottom) {
    public static Extent around(Iterable<Point> points) {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Point p : points) {
            left = Math.min(left, p.x());
            top = Math.min(top, p.y());
            right = Math.max(right, p.x());
            bottom = Math.max(bottom, p.y());
        }
        return new Extent(left, top, right, bottom);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    public Point centre() {
        return new Point((left + right) / 2, (top + bottom) / 2);
    }

    public Extent grown(double by) {
        return new Extent(left - by, top - by, right + by, bottom + by);
    }

    public Extent union(Extent o) {
        return new Extent(
                Math.min(left, o.left), Math.min(top, o.top), Math.max(right, o.right), Math.max(bottom, o.bottom));
    }

    public boolean contains(Point p) {
        return p.x() >= left && p.x() <= right && p.y() >= top && p.y() <= bottom;
    }

    public boolean contains(Extent o) {
        return o.left >= left && o.right <= right && o.top >= top && o.bottom <= bottom;
    }

    public boolean overlaps(Extent o) {
        return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
    }

    /** Area shared with another rectangle. */
    public double shared(Extent o) {
        double w = Math.min(right, o.right) - Math.max(left, o.left);
        double h = Math.min(bottom, o.bottom) - Math.max(top, o.top);
        return w > 0 && h > 0 ? w * h : 0;
    }
}
