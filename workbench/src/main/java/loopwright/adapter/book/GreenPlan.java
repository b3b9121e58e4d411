package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.Book;
import loopwright.action.LengthUnit;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.GroundLayers;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;
import loopwright.geo.Place;

/**
 * A green from above, the way of play up the page, never larger than 3/8 inch to 5 yards (1:480, Clarification 4.3a/1 of
 * the Rules of Golf): paces from the front and from the left, nine parts, a safe target in each, and slopes only where
 * they were measured.
 */
final class GreenPlan {
    private static final int[] SCALES = {Book.LARGEST_GREEN_SCALE, 500, 600, 750, 1000, 1250, 1500, 2000};
    private static final double MARGIN = 20;
    private static final double STEP = 5;
    private static final double LETTERS = 9;
    private static final double STEEP = 0.005;

    private final Book.GreenGround ground;
    private final LengthUnit unit;
    private final int scale;
    private final SheetView view;
    private final Extent window;
    private final Extent green;
    private final List<Mark> inside = new ArrayList<>();

    GreenPlan(Book.GreenGround ground, Extent most, LengthUnit unit) {
        this.ground = ground;
        this.unit = unit;
        double wide = ground.left() + ground.right();
        double deep = ground.front() + ground.back();
        this.scale = scale(wide, deep, most);
        double perMetre = SheetView.POINTS_PER_METRE_OF_PAPER / scale;
        double height = Math.min(most.height(), deep * perMetre + 2 * MARGIN + 6);
        this.window = new Extent(most.left(), most.top(), most.right(), most.top() + height);
        Place middle = ground.hole().green().centre();
        Place shown =
                middle.offset(ground.up(), (ground.back() - ground.front()) / 2, (ground.right() - ground.left()) / 2);
        this.view = new SheetView(shown, window.centre(), ground.up(), perMetre);
        Point centre = window.centre();
        this.green = new Extent(
                centre.x() - wide * perMetre / 2,
                centre.y() - deep * perMetre / 2,
                centre.x() + wide * perMetre / 2,
                centre.y() + deep * perMetre / 2);
    }

    private static int scale(double wide, double deep, Extent most) {
        for (int n : SCALES) {
            double perMetre = SheetView.POINTS_PER_METRE_OF_PAPER / n;
            if (wide * perMetre + 2 * MARGIN + 8 <= most.width() && deep * perMetre + 2 * MARGIN + 6 <= most.height()) {
                return n;
            }
        }
        return SCALES[SCALES.length - 1];
    }

    double bottom() {
        return window.bottom() + 19;
    }

    Mark figure() {
        inside.addAll(new GroundLayers(view, window, 1).marks(ground.course()));
        if (ground.hole().greenAssumed()) {
            inside.add(Mark.drawn(
                    Pen.of(Ink.LINE, 0.8).dashed(3.0, 2.0),
                    view.toSheet(ground.hole().green())));
        }
        parts();
        ground.slopes().forEach(this::slope);
        ground.targets().forEach(this::target);
        paces();
        List<Mark> all = new ArrayList<>();
        all.add(new Mark.Window(Trace.rectangle(window), inside));
        all.add(Mark.drawn(Pen.of(Ink.LINE, 0.7), Trace.rectangle(window)));
        all.add(Mark.text(
                String.format(Locale.ROOT, "1:%d", scale)
                        + (scale == Book.LARGEST_GREEN_SCALE ? ", 3/8 in to 5 yd" : ""),
                new Point(window.left(), window.bottom() + 18),
                Mark.Anchor.START,
                Book.Role.SMALL.points()));
        all.add(Mark.text(
                "dot: hole, cross: aim, arrow: aim off the picture; paces from front and left",
                new Point(window.left(), window.bottom() + 9),
                Mark.Anchor.START,
                Book.Role.SMALL.points()));
        return new Mark.Tagged(Mark.Tag.FIGURE, ground.words(), 0, all);
    }

    /** Three by three, by thin lines over the green. */
    private void parts() {
        List<Trace> lines = new ArrayList<>();
        for (int i = 1; i < 3; i++) {
            double x = green.left() + i * green.width() / 3;
            double y = green.top() + i * green.height() / 3;
            lines.add(Trace.line(new Point(x, green.top()), new Point(x, green.bottom())));
            lines.add(Trace.line(new Point(green.left(), y), new Point(green.right(), y)));
        }
        inside.add(Mark.drawn(Pen.of(Ink.GREEN_LINE, 0.4).dashed(2.0, 2.5), lines));
    }

    private void slope(Book.Slope slope) {
        if (slope.fall() < STEEP) {
            return;
        }
        Point at = view.toSheet(slope.place());
        Point ahead = view.toSheet(slope.place().along(slope.downhillRadians(), 1));
        double angle = at.angleTo(ahead);
        double length = 7 + 120 * Math.min(0.08, slope.fall());
        Point tip = at.polar(angle, length / 2);
        Point tail = at.polar(angle, -length / 2);
        inside.add(Mark.drawn(Pen.of(Ink.CONTOUR, 0.9), Trace.line(tail, tip)));
        inside.add(
                Mark.filled(Ink.CONTOUR, Trace.closed(tip, tip.polar(angle + 2.7, 4.5), tip.polar(angle - 2.7, 4.5))));
    }

    private void target(Book.Target target) {
        Point hole = view.toSheet(target.hole());
        Point aim = view.toSheet(target.aim());
        if (!window.grown(-4).contains(aim)) {
            outside(hole, hole.angleTo(aim));
            return;
        }
        if (hole.distanceTo(aim) > 1) {
            inside.add(Mark.drawn(Pen.of(Ink.DO_THIS, 0.6), Trace.line(hole, aim)));
        }
        inside.addAll(Furniture.cross(aim, 3.2, Ink.DO_THIS));
        inside.add(new Mark.Shape(List.of(Trace.circle(hole, 1.7)), Ink.LINE, Pen.of(Ink.PAPER, 0.5)));
    }

    /** An aim that lies off the picture: an arrow toward it, which ends on the picture. */
    private void outside(Point hole, double angle) {
        double length = 4;
        while (window.grown(-6).contains(hole.polar(angle, length + 2)) && length < 40) {
            length += 2;
        }
        Point tip = hole.polar(angle, length);
        inside.add(Mark.drawn(Pen.of(Ink.DO_THIS, 0.6), Trace.line(hole, tip)));
        inside.add(Mark.filled(Ink.DO_THIS, Trace.closed(tip, tip.polar(angle + 2.7, 5), tip.polar(angle - 2.7, 5))));
        inside.add(new Mark.Shape(List.of(Trace.circle(hole, 1.7)), Ink.LINE, Pen.of(Ink.PAPER, 0.5)));
    }

    /** Paces from the front up the left edge of the window, and from the left along its foot. */
    private void paces() {
        double step = STEP * unit.inMetres() * view.pointsPerMetre();
        List<Trace> ticks = new ArrayList<>();
        for (int i = 0; i * step <= green.height() + 0.01; i++) {
            double y = green.bottom() - i * step;
            ticks.add(Trace.line(new Point(window.left(), y), new Point(window.left() + 4, y)));
            label(Long.toString(Math.round(i * STEP)), new Point(window.left() + 6, y + 3.2), Mark.Anchor.START);
        }
        for (int i = 0; i * step <= green.width() + 0.01; i++) {
            double x = green.left() + i * step;
            ticks.add(Trace.line(new Point(x, window.bottom()), new Point(x, window.bottom() - 4)));
            label(Long.toString(Math.round(i * STEP)), new Point(x, window.bottom() - 6), Mark.Anchor.MIDDLE);
        }
        inside.add(Mark.drawn(Pen.of(Ink.LINE, 0.8), ticks));
    }

    private void label(String words, Point at, Mark.Anchor anchor) {
        inside.add(new Mark.Label(words, at, anchor, LETTERS, Face.REGULAR, Ink.LINE, 0, true));
    }
}
