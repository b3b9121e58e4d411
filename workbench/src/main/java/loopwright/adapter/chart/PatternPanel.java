package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import loopwright.action.LengthUnit;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Ink;
import loopwright.drawing.Isolines;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;
import loopwright.player.Mishit;
import loopwright.player.Shot;
import loopwright.player.ShotPattern;
import loopwright.player.Swing;

/** One club's pattern on squared ground, seen from above, aim straight up the page. */
final class PatternPanel {
    static final double WIDTH = 184;
    static final double HEIGHT = 242;
    private static final double GROUND_TOP = 58;
    /** Of lengths in the reader's unit, as are the three below. */
    private static final double POINTS_PER_UNIT = 1.5;

    private static final double HALF_WIDTH = 50;
    private static final double DEPTH = 110;
    private static final double OUTER = 0.8;
    private static final double FINE = 8.5;
    private static final double TEXT = 9.5;

    /** Ground is drawn at most so much smaller to hold the outlines; what is wilder is cut off. */
    private static final double MOST_ZOOM = 2;

    private static final double MOST_ZOOM_FOR_A_TAIL = 1.3;
    private static final double CROWDED_SIDES = 1.2;

    private final LengthUnit lengths;
    private final double zoom;
    private final Swing swing;
    private final List<Shot> balls;
    private final Point corner;
    private final double far;
    private final Extent ground;
    private final List<Mark> inside = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    /**
     * @param zoom 1: squares at their usual size, 2: half that, the panel holding twice the ground each way
     */
    PatternPanel(Swing swing, List<Shot> balls, LengthUnit lengths, double zoom, Point corner) {
        this.lengths = lengths;
        this.zoom = zoom;
        this.swing = swing;
        this.balls = balls;
        this.corner = corner;
        far = far(new PatternDensity(swing.pattern()).reachOf(OUTER), lengths, zoom);
        double left = corner.x() + WIDTH - 2 * HALF_WIDTH * POINTS_PER_UNIT;
        ground = new Extent(
                left, corner.y() + GROUND_TOP, corner.x() + WIDTH, corner.y() + GROUND_TOP + DEPTH * POINTS_PER_UNIT);
    }

    /**
     * The least zoom, in tenths, at which a panel holds the outline of 80 balls to both sides, and, up to {@value
     * #MOST_ZOOM_FOR_A_TAIL}, its tail of topped balls.
     */
    static double zoomFor(Swing swing, LengthUnit lengths) {
        PatternDensity.Reach reach = new PatternDensity(swing.pattern()).reachOf(OUTER);
        for (double zoom = 1; zoom < MOST_ZOOM; zoom += 0.1) {
            boolean sides = reach.sideMetres() <= HALF_WIDTH * zoom * lengths.inMetres();
            boolean tail = reach.nearMetres() >= (far(reach, lengths, zoom) - DEPTH * zoom) * lengths.inMetres();
            if (sides && (tail || zoom >= MOST_ZOOM_FOR_A_TAIL)) {
                return zoom;
            }
        }
        return MOST_ZOOM;
    }

    /** The length at the far edge: just beyond the outline, or so much that the player stands just inside. */
    private static double far(PatternDensity.Reach reach, LengthUnit lengths, double zoom) {
        return Math.max(reach.farMetres() / lengths.inMetres() + 5, DEPTH * zoom - 5);
    }

    List<Mark> marks() {
        ruled();
        int off = balls();
        outlines();
        words(off);
        marks.add(new Mark.Window(Trace.rectangle(ground), inside));
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.7), Trace.rectangle(ground)));
        return List.copyOf(marks);
    }

    /** Squares of 10 yd or m, every fifth line heavier; lengths from the player at the left, to the side below. */
    private void ruled() {
        List<Trace> fine = new ArrayList<>();
        List<Trace> heavy = new ArrayList<>();
        int last = 10 * (int) Math.ceil(HALF_WIDTH * zoom / 10 - 1);
        for (int side = -last; side <= last; side += 10) {
            (side == 0 ? heavy : fine)
                    .add(Trace.line(new Point(x(side), ground.top()), new Point(x(side), ground.bottom())));
        }
        long first = (long) Math.ceil((far - DEPTH * zoom) / 10);
        for (long ten = first; ten * 10 <= far; ten++) {
            double at = y(10.0 * ten);
            (ten % 5 == 0 ? heavy : fine).add(Trace.line(new Point(ground.left(), at), new Point(ground.right(), at)));
            boolean roomForText = at > ground.top() + 3 && at < ground.bottom() - 2;
            if (ten % 2 == 0 && ten >= 0 && roomForText) {
                marks.add(Mark.text(
                        Long.toString(ten * 10), new Point(ground.left() - 3, at + 3), Mark.Anchor.END, FINE));
            }
        }
        inside.add(Mark.drawn(Pen.of(Ink.FAINT, 0.35), fine));
        inside.add(Mark.drawn(Pen.of(Ink.FAINT, 0.8), heavy));
        int step = zoom > CROWDED_SIDES ? 40 : 20;
        for (int side = -last / step * step; side <= last; side += step) {
            String text = side == 0 ? "aim" : Math.abs(side) + (side < 0 ? " L" : " R");
            marks.add(Mark.text(text, new Point(x(side), ground.bottom() + 10), Mark.Anchor.MIDDLE, FINE));
        }
        inside.add(Mark.drawn(
                Pen.of(Ink.DO_THIS, 0.7), Trace.line(new Point(x(0), ground.top()), new Point(x(0), ground.bottom()))));
    }

    /** Solid balls as dots, likely mishits as open triangles; returns how many lie off the ground shown. */
    private int balls() {
        PatternDensity density = new PatternDensity(swing.pattern());
        List<Trace> solid = new ArrayList<>();
        List<Trace> missed = new ArrayList<>();
        int off = 0;
        for (Shot shot : balls) {
            double side = shot.sideMetres().orElse(0);
            double carry = carryMetres(shot);
            double forward = Math.sqrt(Math.max(0, carry * carry - side * side));
            Point at = new Point(x(units(side)), y(units(forward)));
            if (!ground.contains(at)) {
                off++;
            } else if (density.likelyMishit(forward, side)) {
                missed.add(Trace.closed(
                        at.polar(-Math.PI / 2, 2.6), at.polar(Math.PI / 6, 2.6), at.polar(5 * Math.PI / 6, 2.6)));
            } else {
                solid.add(Trace.dot(at));
            }
        }
        inside.add(Mark.drawn(Pen.of(Ink.SOFT, 1.9), solid));
        inside.add(Mark.drawn(Pen.of(Ink.BEWARE, 0.7), missed));
        return off;
    }

    private double carryMetres(Shot shot) {
        OptionalDouble carry = shot.carryMetres();
        return carry.isPresent()
                ? carry.getAsDouble()
                : Math.max(0, shot.totalMetres().orElse(0) - swing.pattern().runMetres());
    }

    /** Outlines of 50 and 80 of 100 balls; unbroken where measured balls say most, dashed where it is assumed. */
    private void outlines() {
        double metresPerPoint = lengths.inMetres() * zoom / POINTS_PER_UNIT;
        double wide = Math.max(ground.width(), 140) * 1.6;
        Extent covered = new Extent(
                ground.centre().x() - wide, ground.top() - 60, ground.centre().x() + wide, y(0) + 40);
        double cell = 2.2;
        int columns = (int) (covered.width() / cell) + 1;
        int rows = (int) (covered.height() / cell) + 1;
        PatternDensity density = new PatternDensity(swing.pattern());
        double[][] values = new double[rows][columns];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                double forward = (y(0) - covered.top() - r * cell) * metresPerPoint;
                double right = (covered.left() + c * cell - x(0)) * metresPerPoint;
                values[r][c] = density.whole(forward, right);
            }
        }
        boolean measured = swing.evidence().balls() > 0 && swing.evidence().assumedShare() < 0.5;
        double square = Math.pow(cell * metresPerPoint, 2);
        for (double share : new double[] {OUTER, 0.5}) {
            double level = PatternDensity.levelHolding(share, values, square);
            List<Trace> lines = Isolines.of(values, level).stream()
                    .map(t -> new Trace(
                            t.points().stream()
                                    .map(p -> new Point(covered.left() + p.x() * cell, covered.top() + p.y() * cell))
                                    .toList(),
                            t.closed()))
                    .filter(t -> t.length() > 8)
                    .toList();
            Pen pen = Pen.of(Ink.LINE, share < 0.6 ? 1.2 : 0.8);
            inside.add(Mark.drawn(measured ? pen : pen.dashed(2.6, 2.0), lines));
            number(lines, share);
        }
    }

    private void number(List<Trace> lines, double share) {
        lines.stream().max((a, b) -> Double.compare(a.length(), b.length())).ifPresent(line -> {
            // The wider outline is numbered at its far end, the narrower at its near end.
            double way = share > 0.6 ? 1 : -1;
            Point end = line.points().stream()
                    .reduce((a, b) -> way * a.y() <= way * b.y() ? a : b)
                    .orElseThrow();
            inside.add(new Mark.Label(
                    Math.round(share * 100) + "",
                    end.plus(0, 3),
                    Mark.Anchor.MIDDLE,
                    FINE,
                    Face.REGULAR,
                    Ink.LINE,
                    0,
                    true));
        });
    }

    private void words(int off) {
        ShotPattern p = swing.pattern();
        double y = corner.y() + 12;
        Mark.Label carry = Mark.text(
                lengths.of(p.carryMetres()),
                new Point(corner.x() + WIDTH, y),
                Mark.Anchor.END,
                11.5,
                Face.BOLD,
                Ink.LINE);
        double room = WIDTH - carry.width() - 8;
        double size = Math.min(11.5, 11.5 * room / Face.BOLD.width(swing.label(), 11.5));
        marks.add(Mark.text(swing.label(), new Point(corner.x(), y), Mark.Anchor.START, size, Face.BOLD, Ink.LINE));
        marks.add(carry);
        // 8 of 10 of a normal spread lie within 1.2816 standard deviations either side.
        long length = Math.round(units(2 * 1.2816 * p.carrySdMetres()));
        long width = Math.round(units(2 * 1.2816 * p.directionSdRadians() * p.carryMetres()));
        say("solid, 8 in 10: " + length + " long, " + width + " wide", y + 13);
        say(evidence(), y + 25.5);
        say(mishits(), y + 38);
        if (off > 0) {
            inside.add(new Mark.Label(
                    off + " off this ground",
                    new Point(ground.right() - 4, ground.bottom() - 5),
                    Mark.Anchor.END,
                    FINE,
                    Face.ITALIC,
                    Ink.LINE,
                    0,
                    true));
        }
    }

    private void say(String words, double y) {
        marks.add(Mark.text(words, new Point(corner.x(), y), Mark.Anchor.START, TEXT));
    }

    private String evidence() {
        int n = swing.evidence().balls();
        if (n == 0) {
            return "assumed";
        }
        String counted = n + (n == 1 ? " ball" : " balls");
        long assumed = Math.round(swing.evidence().assumedShare() * 100);
        return assumed >= 5 ? counted + ", " + assumed + " % assumed" : counted;
    }

    private String mishits() {
        double rate =
                swing.pattern().mishits().stream().mapToDouble(Mishit::rate).sum();
        return String.format(Locale.ROOT, "mishits %d in 100", Math.round(100 * rate));
    }

    private double x(double side) {
        return ground.centre().x() + side * POINTS_PER_UNIT / zoom;
    }

    private double y(double forward) {
        return ground.top() + (far - forward) * POINTS_PER_UNIT / zoom;
    }

    private double units(double metres) {
        return metres / lengths.inMetres();
    }
}
