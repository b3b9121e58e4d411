package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** What every chart carries beside the ground: border, scale bar, north arrow, pennant, surveyor's cross. */
public final class Furniture {

    private Furniture() {}

    /** A double neat line, heavy outside and fine inside. */
    public static List<Mark> neatLine(Extent frame) {
        return List.of(
                Mark.drawn(Pen.of(Ink.LINE, 1.4), Trace.rectangle(frame)),
                Mark.drawn(Pen.of(Ink.LINE, 0.4), Trace.rectangle(frame.grown(-3.2))));
    }

    /** A scale bar in a unit, four parts, its left end at {@code at}. */
    public static List<Mark> scaleBar(
            Point at, double pointsPerMetre, double longestPoints, double unitMetres, String unit) {
        double step = niceStep(longestPoints / pointsPerMetre / unitMetres / 4);
        double width = step * unitMetres * pointsPerMetre;
        List<Mark> out = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Trace part =
                    Trace.rectangle(new Extent(at.x() + i * width, at.y(), at.x() + (i + 1) * width, at.y() + 3.6));
            out.add(new Mark.Shape(List.of(part), i % 2 == 0 ? Ink.LINE : Ink.PAPER, Pen.of(Ink.LINE, 0.6)));
        }
        for (int i = 0; i <= 4; i += 2) {
            String text = Math.round(i * step) + (i == 4 ? " " + unit : "");
            out.add(Mark.text(text, new Point(at.x() + i * width, at.y() - 4), Mark.Anchor.MIDDLE, 8.5));
        }
        return out;
    }

    /** The largest of 1, 2, 5 times a power of ten not above {@code most} (at least 1). */
    public static double niceStep(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(1, most))));
        for (double factor : new double[] {5, 2}) {
            if (factor * power <= most) {
                return factor * power;
            }
        }
        return power;
    }

    /** A meridian with a half-filled head; {@code up} is the bearing at the top of the sheet. */
    public static List<Mark> northArrow(Point centre, double length, double up) {
        double north = -Math.PI / 2 - up;
        Point tip = centre.polar(north, length / 2);
        Point tail = centre.polar(north, -length / 2);
        Point notch = tip.polar(north, -length * 0.3);
        Point left = tip.polar(north, -length * 0.38).polar(north - Math.PI / 2, length * 0.12);
        Point right = tip.polar(north, -length * 0.38).polar(north + Math.PI / 2, length * 0.12);
        Point letter = tip.polar(north, 7);
        return List.of(
                Mark.drawn(Pen.of(Ink.LINE, 0.8), Trace.line(tail, tip)),
                new Mark.Shape(List.of(Trace.closed(tip, left, notch)), Ink.PAPER, Pen.of(Ink.LINE, 0.7)),
                new Mark.Shape(List.of(Trace.closed(tip, right, notch)), Ink.LINE, Pen.of(Ink.LINE, 0.7)),
                Mark.text("N", letter.plus(0, 3), Mark.Anchor.MIDDLE, 9, Face.BOLD, Ink.LINE));
    }

    /** The hole location: a staff with a pennant, its foot at {@code at}. */
    public static List<Mark> pennant(Point at, double height) {
        Point top = at.plus(0, -height);
        return List.of(
                Mark.filled(Ink.LINE, Trace.circle(at, Math.max(0.9, height * 0.1))),
                Mark.drawn(Pen.of(Ink.LINE, Math.max(0.7, height * 0.07)), Trace.line(at, top)),
                Mark.filled(
                        Ink.LINE, Trace.closed(top, top.plus(height * 0.55, height * 0.2), top.plus(0, height * 0.4))));
    }

    /** The aim: a surveyor's cross, four strokes that leave the point itself free, in a ring. */
    public static List<Mark> cross(Point at, double radius, Ink ink) {
        List<Trace> strokes = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            double angle = i * Math.PI / 2;
            strokes.add(Trace.line(at.polar(angle, radius * 0.3), at.polar(angle, radius * 1.6)));
        }
        return List.of(
                Mark.drawn(Pen.of(Ink.PAPER, radius * 0.55), strokes),
                Mark.drawn(Pen.of(Ink.PAPER, radius * 0.55), Trace.circle(at, radius)),
                Mark.drawn(Pen.of(ink, radius * 0.22), strokes),
                Mark.drawn(Pen.of(ink, radius * 0.18), Trace.circle(at, radius)));
    }

    /** The mark for "beware": an upright triangle with a stroke in it. */
    public static List<Mark> beware(Point at, double radius) {
        Trace triangle = Trace.closed(
                at.polar(-Math.PI / 2, radius), at.polar(Math.PI / 6, radius), at.polar(5 * Math.PI / 6, radius));
        return List.of(
                new Mark.Shape(List.of(triangle), Ink.PAPER, Pen.of(Ink.BEWARE, radius * 0.2)),
                Mark.drawn(
                        Pen.of(Ink.BEWARE, radius * 0.2),
                        Trace.line(at.plus(0, -radius * 0.4), at.plus(0, radius * 0.05)),
                        Trace.dot(at.plus(0, radius * 0.3))));
    }
}
