package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** A polyline on the sheet, open or closed; two equal points make a dot when drawn with a round pen. */
public record Trace(List<Point> points, boolean closed) {
    /** So near a polygon keeps to its circle, points: 18 micrometres on paper, a twentieth of a pixel. */
    private static final double ROUND = 0.05;

    private static final int FEWEST_CORNERS = 8;

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
        int corners = (int) Math.max(FEWEST_CORNERS, Math.ceil(2 * Math.PI / turn(radius)));
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            out.add(centre.polar(2 * Math.PI * i / corners, radius));
        }
        return new Trace(out, true);
    }

    public static Trace arc(Point centre, double radius, double fromAngle, double toAngle) {
        int steps = (int) Math.max(2, Math.ceil(Math.abs(toAngle - fromAngle) / turn(radius)));
        List<Point> out = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            out.add(centre.polar(fromAngle + (toAngle - fromAngle) * i / steps, radius));
        }
        return new Trace(out, false);
    }

    /** How far a chord of a circle may turn, radians. */
    private static double turn(double radius) {
        return 2 * Math.acos(Math.max(0, 1 - ROUND / radius));
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
