package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.PuttPicture;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.FinishOutline;
import loopwright.drawing.Furniture;
import loopwright.drawing.Ink;
import loopwright.drawing.Lettering;
import loopwright.drawing.Mark;
import loopwright.drawing.Paragraph;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;
import loopwright.geo.Place;
import loopwright.putting.PlaneGreen;
import loopwright.units.Distance;

/**
 * One putt seen from above, the ball below and the hole above: height contours with the way the green falls, the start
 * line ruled to a surveyor's cross beside the hole, the path, and outlines that hold half and eight in ten of the
 * misses.
 */
final class PuttChart {
    private static final double WIDTH = 460;
    private static final double HEIGHT = 640;
    private static final double EDGE = 26;
    private static final double FOOT = Distance.METRES_PER_FOOT;
    private static final double HOLE_RADIUS = 0.054;
    private static final double BALL_RADIUS = 0.021335;
    private static final double CONTOUR_METRES = 0.0254;
    private static final String LEGEND =
            "Dots: where the misses of 400 drawn putts stop; the outlines hold 50 and 80 % of them.";

    private final PuttPicture picture;
    private final List<Mark> marks = new ArrayList<>();
    private final Extent frame;
    private final SheetView view;
    private final Lettering lettering;

    private PuttChart(PuttPicture picture) {
        this.picture = picture;
        double below = words();
        this.frame = new Extent(EDGE, EDGE + 24, WIDTH - EDGE, HEIGHT - EDGE - below);
        this.view = view();
        this.lettering = new Lettering(frame.grown(-6));
    }

    static Drawing of(PuttPicture picture) {
        PuttChart chart = new PuttChart(picture);
        chart.draw();
        return new Drawing(picture.words().get(0), WIDTH, HEIGHT, chart.marks);
    }

    private void draw() {
        List<Mark> ground = new ArrayList<>();
        ground.add(Mark.filled(Ink.GREEN, Trace.rectangle(frame)));
        picture.slope().ifPresent(slope -> contours(slope, ground));
        marks.add(new Mark.Window(Trace.rectangle(frame), ground));
        keepFree();
        misses();
        lines();
        hole();
        picture.slope().ifPresent(this::fall);
        marks.addAll(Furniture.neatLine(frame));
        scale();
        marks.addAll(lettering.texts());
    }

    /** Texts stay off the path, the hole, the cross and the arrow. */
    private void keepFree() {
        Point last = sheet(0, -picture.metres());
        for (double[] p : picture.path()) {
            Point next = sheet(p[0], p[1]);
            lettering.keepFree(last, next);
            last = next;
        }
        Point hole = sheet(0, 0);
        lettering.keepFree(new Extent(hole.x() - 6, hole.y() - 6, hole.x() + 6, hole.y() + 6));
        Point aim = aim();
        lettering.keepFree(new Extent(aim.x() - 9, aim.y() - 9, aim.x() + 9, aim.y() + 9));
        if (picture.slope().isPresent()) {
            lettering.keepFree(new Extent(frame.right() - 86, frame.top(), frame.right(), frame.top() + 100));
        }
    }

    private Point aim() {
        return sheet(picture.metres() * Math.tan(picture.startRadians()), 0);
    }

    /** The sentences: heading on top, the rest below; returns the height below. */
    private double words() {
        marks.add(Mark.text(
                picture.words().get(0), new Point(EDGE, EDGE + 10), Mark.Anchor.START, 13, Face.BOLD, Ink.LINE));
        List<Paragraph> texts = new ArrayList<>(picture.words().stream()
                .skip(1)
                .map(text -> Paragraph.of(text, WIDTH - 2 * EDGE, 10, Face.REGULAR))
                .toList());
        texts.add(Paragraph.of(LEGEND, WIDTH - 2 * EDGE, 9, Face.ITALIC));
        double height = texts.stream().mapToDouble(t -> t.height() + 3).sum();
        double y = HEIGHT - EDGE - height + 8;
        for (Paragraph text : texts) {
            marks.addAll(text.marks(new Point(EDGE, y), Ink.LINE));
            y += text.height() + 3;
        }
        return height;
    }

    /** The largest scale at which ball, hole, aim, path and the middle of the misses fit. */
    private SheetView view() {
        double reach = picture.metres() * Math.abs(Math.tan(picture.startRadians()));
        double right = Math.max(0.35, Math.max(reach, 0.06 * picture.metres()));
        double past = 0.4;
        for (double[] p : picture.path()) {
            past = Math.max(past, p[1]);
            right = Math.max(right, Math.abs(p[0]));
        }
        past = Math.max(past, 0.12 * picture.metres()) + 0.15;
        double tall = past + picture.metres() + 0.12 * picture.metres() + 0.1;
        double perMetre = Math.min((frame.height() - 60) / tall, (frame.width() - 40) / (2 * right + 0.3));
        Place centre = new Place(0, (past - 1.12 * picture.metres() - 0.1) / 2);
        return new SheetView(centre, frame.centre().plus(0, 8), 0, perMetre);
    }

    private Point sheet(double x, double y) {
        return view.toSheet(new Place(x, y));
    }

    /** Lines of equal height an inch apart, square to the fall, counted from the hole. */
    private void contours(PlaneGreen slope, List<Mark> ground) {
        double steep = Math.hypot(slope.east(), slope.north());
        if (steep < 1e-4) {
            return;
        }
        double ux = slope.east() / steep;
        double uy = slope.north() / steep;
        double apart = CONTOUR_METRES / steep;
        double reach = Math.hypot(frame.width(), frame.height()) / view.pointsPerMetre();
        int count = (int) Math.min(60, reach / apart);
        for (int k = -count; k <= count; k++) {
            double cx = k * apart * ux;
            double cy = k * apart * uy;
            Trace line = Trace.line(sheet(cx - reach * uy, cy + reach * ux), sheet(cx + reach * uy, cy - reach * ux));
            ground.add(Mark.drawn(Pen.of(Ink.GREEN_LINE, k == 0 ? 0.9 : 0.45), line));
        }
    }

    private void misses() {
        List<Point> balls =
                picture.finishes().stream().map(p -> sheet(p[0], p[1])).toList();
        List<Mark> inside = new ArrayList<>();
        for (Point ball : balls) {
            inside.add(Mark.filled(Ink.SOFT, Trace.circle(ball, 0.9)));
        }
        if (FinishOutline.worthwhile(balls)) {
            FinishOutline outline = new FinishOutline(balls, -Math.PI / 2);
            for (double share : new double[] {0.5, 0.8}) {
                List<Trace> traces = outline.holding(share);
                inside.add(Mark.drawn(Pen.of(Ink.LINE, share < 0.6 ? 0.9 : 0.6), traces));
                traces.stream()
                        .max(java.util.Comparator.comparingDouble(Trace::length))
                        .ifPresent(t -> lettering.onLine(t, Math.round(100 * share) + "%", 8.5, Ink.LINE));
            }
        }
        marks.add(new Mark.Window(Trace.rectangle(frame), inside));
    }

    private void lines() {
        Point ball = sheet(0, -picture.metres());
        List<Point> path = picture.path().stream().map(p -> sheet(p[0], p[1])).toList();
        marks.add(Mark.drawn(Pen.of(Ink.DO_THIS, 1.8), new Trace(path, false)));
        Point rest = path.get(path.size() - 1);
        marks.add(new Mark.Shape(List.of(Trace.circle(rest, 2.6)), Ink.PAPER, Pen.of(Ink.DO_THIS, 1)));
        lettering.beside("stops here if the hole is covered", rest, 7, 8.5, Face.ITALIC, Ink.LINE);
        Point aim = aim();
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.7), Trace.line(ball, aim)));
        feet(ball, aim);
        if (picture.slope().isPresent()) {
            marks.addAll(Furniture.cross(aim, 5, Ink.DO_THIS));
            String side = picture.startRadians() >= 0 ? "right" : "left";
            String words = Math.abs(picture.startRadians()) < 5e-4
                    ? "start line straight"
                    : String.format(
                            Locale.ROOT,
                            "start line %.1f\u00b0 %s",
                            Math.abs(Math.toDegrees(picture.startRadians())),
                            side);
            lettering.along(ball, aim, words, 9, Ink.LINE);
        }
        double radius = Math.max(2.4, BALL_RADIUS * view.pointsPerMetre());
        marks.add(new Mark.Shape(List.of(Trace.circle(ball, radius)), Ink.PAPER, Pen.of(Ink.LINE, 0.9)));
    }

    /** Ticks along the start line, a number on every few. */
    private void feet(Point ball, Point aim) {
        double pointsPerFoot = ball.distanceTo(aim) / (picture.metres() / Math.cos(picture.startRadians())) * FOOT;
        double step = Furniture.niceStep(Math.max(1, 30 / pointsPerFoot));
        double angle = ball.angleTo(aim);
        for (double at = step; at * FOOT < picture.metres() - 0.3 * FOOT; at += step) {
            Point p = ball.polar(angle, at * pointsPerFoot);
            marks.add(Mark.drawn(
                    Pen.of(Ink.LINE, 0.7),
                    Trace.line(p.polar(angle - Math.PI / 2, 3), p.polar(angle + Math.PI / 2, 3))));
            lettering.besideIfFree(String.format(Locale.ROOT, "%.0f ft", at), p, 6, 8, Face.REGULAR, Ink.SOFT);
        }
    }

    private void hole() {
        Point hole = sheet(0, 0);
        double radius = Math.max(2.6, HOLE_RADIUS * view.pointsPerMetre());
        marks.add(new Mark.Shape(List.of(Trace.circle(hole, radius)), Ink.LINE, Pen.of(Ink.PAPER, 1.2)));
    }

    /** An arrow downhill in a corner of the frame, with the slope. */
    private void fall(PlaneGreen slope) {
        double steep = Math.hypot(slope.east(), slope.north());
        Point centre = new Point(frame.right() - 46, frame.top() + 44);
        if (steep < 1e-4) {
            lettering.beside("level", centre, 0, 9, Face.REGULAR, Ink.LINE);
            return;
        }
        double angle = Math.atan2(slope.north(), -slope.east());
        Point tail = centre.polar(angle, -17);
        Point tip = centre.polar(angle, 17);
        marks.add(Mark.drawn(Pen.of(Ink.PAPER, 5), Trace.line(tail, tip)));
        marks.add(Mark.drawn(Pen.of(Ink.GREEN_LINE, 1.4), Trace.line(tail, tip)));
        marks.add(Mark.filled(
                Ink.GREEN_LINE,
                Trace.closed(tip.polar(angle, 5), tip.polar(angle + 2.4, 6), tip.polar(angle - 2.4, 6))));
        marks.add(new Mark.Label(
                String.format(Locale.ROOT, "falls %.1f %%", 100 * steep),
                new Point(frame.right() - 46, frame.top() + 82),
                Mark.Anchor.MIDDLE,
                9,
                Face.REGULAR,
                Ink.LINE,
                0,
                true));
        marks.add(new Mark.Label(
                "contours 1 in",
                new Point(frame.right() - 46, frame.top() + 94),
                Mark.Anchor.MIDDLE,
                8,
                Face.ITALIC,
                Ink.LINE,
                0,
                true));
    }

    private void scale() {
        double foot = FOOT * view.pointsPerMetre();
        double feet = Furniture.niceStep(Math.max(1, 60 / foot));
        Point at = new Point(frame.left() + 12, frame.bottom() - 12);
        marks.add(Mark.drawn(
                Pen.of(Ink.LINE, 1),
                Trace.line(at.plus(0, -4), at, at.plus(feet * foot, 0), at.plus(feet * foot, -4))));
        marks.add(new Mark.Label(
                String.format(Locale.ROOT, "%.0f ft", feet),
                at.plus(feet * foot / 2, -4),
                Mark.Anchor.MIDDLE,
                8.5,
                Face.REGULAR,
                Ink.LINE,
                0,
                true));
    }
}
