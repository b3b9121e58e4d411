package loopwright.drawing;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** What is drawn where letters may stand and makes them hard to read: outlines, and areas full of small marks. */
final class LinesBelow {
    /** How far apart a line is looked at, points: letters of any size used here are taller. */
    private static final double STEP = 2;
    /** A text over small marks is as hard to read as one over so much of a line, for each of its places looked at. */
    private static final double MARKS = 5;

    private static final int PLACES = 5;

    private final List<Point> lines = new ArrayList<>();
    private final List<Path2D> textures = new ArrayList<>();

    void line(Trace trace) {
        List<Point> points = trace.points();
        int n = points.size();
        for (int i = 1; i < (trace.closed() ? n + 1 : n); i++) {
            Point from = points.get(i - 1);
            Point to = points.get(i % n);
            double length = from.distanceTo(to);
            double angle = from.angleTo(to);
            for (double at = 0; at < length; at += STEP) {
                lines.add(from.polar(angle, at));
            }
        }
    }

    /** {@code rings} of one area; inner rings are holes. */
    void texture(List<Trace> rings) {
        textures.add(Raster.path(rings));
    }

    /** Length of line under a text, points, and as much again for the small marks under it; 0 where it stands clear. */
    double under(Extent text) {
        Extent letters = text.grown(1.5);
        double length = STEP * lines.stream().filter(letters::contains).count();
        for (int i = 0; i < PLACES; i++) {
            double x = text.left() + text.width() * i / (PLACES - 1.0);
            double y = text.centre().y();
            length += textures.stream().anyMatch(t -> t.contains(x, y)) ? MARKS : 0;
        }
        return length;
    }
}
