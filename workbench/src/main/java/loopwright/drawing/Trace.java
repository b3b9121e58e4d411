package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** A polyline on the sheet, open or closed; two equal points make a dot when drawn with a round pen. */
public record Trace(List<Point> points, boolean closed) {
    public Trace {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a trace needs a point");
        }
    }

    public static Trace line(Point... points) {
        return new Trace(List.of(points), false);
    }

    public static Trace closed(Point... points) {
        return new Trace(List.of(points), true);
    }

    public static Trace dot(Point at) {
        return line(at, at);
    }

    public static Trace rectangle(Extent extent) {
        return closed(
                new Point(extent.left(), extent.top()),
                new Point(extent.right(), extent.top()),
                new Point(extent.right(), extent.bottom()),
                new Point(extent.left(), extent.bottom()));
    }

    public static Trace circle(Point centre, double radius) {
        int corners = radius < 3 ? 12 : 36;
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            out.add(centre.polar(2 * Math.PI * i / corners, radius));
        }
        return new Trace(out, true);
    }

    public static Trace arc(Point centre, double radius, double fromAngle, double toAngle) {
        int steps = 10;
        List<Point> out = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            out.add(centre.polar(fromAngle + (toAngle - fromAngle) * i / steps, radius));
        }
        return new Trace(out, false);
    }

    public double length() {
        double length = 0;
        int n = points.size();
        for (int i = 1; i < (closed ? n + 1 : n); i++) {
            length += points.get(i - 1).distanceTo(points.get(i % n));
        }
        return length;
    }

    public Extent extent() {
        return Extent.around(points);
    }
}
