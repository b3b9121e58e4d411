package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.FlownShot;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;
import loopwright.flight.Breeze;
import loopwright.flight.Flight;
import loopwright.flight.FlightPoint;
import loopwright.flight.Wind;
import loopwright.units.Distance;
import loopwright.units.Speed;

/**
 * One flight on one sheet, play running to the right: from the side above, from above below, lengths, heights and sides
 * all to the same scale.
 */
final class FlightChart {
    private static final double WIDTH = 720;
    private static final double EDGE = 30;
    private static final double HEAD = 62;
    private static final double LEAST_SIDE_POINTS = 34;
    private static final double MOST_PANEL_POINTS = 420;
    private static final double BETWEEN = 58;
    private static final double TEXT = 9.5;

    private final FlownShot shot;
    private final Flight flight;
    private final double perMetre;
    private final double leftMetres;
    private final double groundY;
    private final double lineY;
    private final double height;
    private final List<Mark> marks = new ArrayList<>();

    private FlightChart(FlownShot shot) {
        this.shot = shot;
        this.flight = shot.flight();
        double back = Math.min(0, Math.min(flight.forwardMetres(), shot.restForwardMetres()));
        double far = Math.max(20, Math.max(flight.forwardMetres(), shot.restForwardMetres()));
        double low = Math.min(0, shot.question().landingMetres());
        double high = Math.max(flight.apexMetres(), shot.question().landingMetres());
        double left = sideMetres(-1);
        double right = sideMetres(1);
        leftMetres = back;
        double across = 0.92 * (WIDTH - 2 * EDGE) / (far - back);
        perMetre = Math.min(across, MOST_PANEL_POINTS / Math.max(high - low, right - left));
        groundY = HEAD + EDGE + high * perMetre;
        double below = groundY - low * perMetre + BETWEEN;
        lineY = below + Math.max(LEAST_SIDE_POINTS, left * perMetre + 12);
        height = lineY + Math.max(LEAST_SIDE_POINTS, right * perMetre + 24) + EDGE;
    }

    static Drawing of(FlownShot shot) {
        return new FlightChart(shot).draw();
    }

    /** How far the ball strays to one side (-1 left, 1 right), on the way or at the end. */
    private double sideMetres(int sign) {
        double most = Math.max(0, sign * shot.restRightMetres());
        for (FlightPoint p : shot.path()) {
            most = Math.max(most, sign * p.rightMetres());
        }
        return most;
    }

    private Drawing draw() {
        marks.addAll(Furniture.neatLine(new Extent(0, 0, WIDTH, height).grown(-12)));
        head();
        fromTheSide();
        fromAbove();
        return new Drawing("Flight of one ball", WIDTH, height, marks);
    }

    private void head() {
        String lengths = "Carry " + Wording.yards(flight.carryMetres()) + ", total " + Wording.yards(shot.totalMetres())
                + " on "
                + shot.question().surface().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        marks.add(Mark.text(lengths, new Point(EDGE, EDGE + 12), Mark.Anchor.START, 14, Face.BOLD, Ink.LINE));
        var launch = shot.question().launch();
        String struck = String.format(
                Locale.ROOT,
                "%.1f mph, %.1f\u00b0 up, %.1f\u00b0 %s, %,.0f rpm, axis %.1f\u00b0 %s; air %.3f kg/m3",
                Speed.ofMetresPerSecond(launch.speedMetresPerSecond()).milesPerHour(),
                Math.toDegrees(launch.launchRadians()),
                Math.abs(Math.toDegrees(launch.startRadians())),
                launch.startRadians() < 0 ? "left" : "right",
                launch.spinRadiansPerSecond() * 30 / Math.PI,
                Math.abs(Math.toDegrees(launch.axisRadians())),
                launch.axisRadians() < 0 ? "left" : "right",
                shot.question().day().air().densityKgPerCubicMetre());
        marks.add(Mark.text(struck, new Point(EDGE, EDGE + 28), Mark.Anchor.START, TEXT));
    }

    private void fromTheSide() {
        double landing = shot.question().landingMetres();
        double end = Math.max(shot.restForwardMetres(), flight.forwardMetres()) + 6;
        ground(0, landing == 0 ? end : flight.forwardMetres() * 0.5, 0);
        if (landing != 0) {
            ground(flight.forwardMetres() - 10, end, landing);
        }
        ticks(groundY - Math.min(0, landing) * perMetre + 4);
        marks.add(Mark.drawn(
                Pen.of(Ink.DO_THIS, 1.6),
                new Trace(
                        shot.path().stream()
                                .map(p -> side(p.forwardMetres(), p.heightMetres()))
                                .toList(),
                        false)));
        run(side(flight.forwardMetres(), landing), side(shot.restForwardMetres(), landing));
        FlightPoint top = shot.path().get(0);
        for (FlightPoint p : shot.path()) {
            top = p.heightMetres() > top.heightMetres() ? p : top;
        }
        Point apex = side(top.forwardMetres(), flight.apexMetres());
        label(Wording.yards(flight.apexMetres()) + " high", apex.plus(0, -6), Mark.Anchor.MIDDLE);
        String descent = String.format(Locale.ROOT, "%.0f\u00b0", Math.toDegrees(flight.descentRadians()));
        Point touch = side(flight.forwardMetres(), landing);
        double back = -Math.PI + flight.descentRadians();
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.6), Trace.arc(touch, 26, -Math.PI, back)));
        label(descent, touch.polar(-Math.PI + flight.descentRadians() / 2, 30).plus(0, 3), Mark.Anchor.END);
    }

    private void ground(double from, double to, double heightMetres) {
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.9), Trace.line(side(from, heightMetres), side(to, heightMetres))));
    }

    /** Lengths along the aim, from the strike. */
    private void ticks(double y) {
        double yard = Distance.METRES_PER_YARD;
        double longest = (WIDTH - 2 * EDGE) / perMetre / yard;
        double step = Furniture.niceStep(longest / 4);
        for (double at = 0; at * yard <= Math.max(shot.restForwardMetres(), flight.forwardMetres()) + 6; at += step) {
            Point p = new Point(side(at * yard, 0).x(), y);
            marks.add(Mark.drawn(Pen.of(Ink.SOFT, 0.6), Trace.line(p, p.plus(0, 4))));
            String number = Math.round(at) + (at == 0 ? " yd" : "");
            marks.add(Mark.text(number, p.plus(0, 14), Mark.Anchor.MIDDLE, 8.5, Face.REGULAR, Ink.SOFT));
        }
    }

    private void fromAbove() {
        double end = Math.max(shot.restForwardMetres(), flight.forwardMetres()) + 6;
        Point far = above(end, 0);
        marks.add(Mark.drawn(Pen.of(Ink.SOFT, 0.6).dashed(7.0, 3.0), Trace.line(above(0, 0), far)));
        label("aim " + Wording.bearing(shot.question().bearingRadians()), far.plus(0, -5), Mark.Anchor.END);
        marks.add(Mark.drawn(
                Pen.of(Ink.DO_THIS, 1.6),
                new Trace(
                        shot.path().stream()
                                .map(p -> above(p.forwardMetres(), p.rightMetres()))
                                .toList(),
                        false)));
        Point touch = above(flight.forwardMetres(), flight.rightMetres());
        Point rest = above(shot.restForwardMetres(), shot.restRightMetres());
        run(touch, rest);
        double away = flight.rightMetres() >= 0 ? 16 : -9;
        label("lands " + side(flight.rightMetres()), touch.plus(0, away), Mark.Anchor.END);
        wind();
    }

    private void run(Point touch, Point rest) {
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 1.1).dashed(2.0, 2.0), Trace.line(touch, rest)));
        marks.add(new Mark.Shape(List.of(Trace.circle(touch, 3.2)), Ink.PAPER, Pen.of(Ink.LINE, 1.1)));
        marks.add(Mark.filled(Ink.LINE, Trace.circle(rest, 2.4)));
    }

    private void wind() {
        Wind wind = shot.question().day().wind();
        if (wind.isStill()) {
            return;
        }
        Breeze breeze = wind.along(shot.question().bearingRadians());
        double angle = Math.atan2(breeze.rightMetresPerSecond(), breeze.forwardMetresPerSecond());
        Point middle = new Point(EDGE + 24, lineY - LEAST_SIDE_POINTS - 8);
        Point tail = middle.polar(angle, -16);
        Point tip = middle.polar(angle, 16);
        marks.add(Mark.drawn(
                Pen.of(Ink.LINE, 1.3),
                List.of(Trace.line(tail, tip), Trace.line(tip.polar(angle + 2.6, 8), tip, tip.polar(angle - 2.6, 8)))));
        String words = String.format(
                Locale.ROOT,
                "wind %.0f mph from %s",
                Speed.ofMetresPerSecond(wind.speedMetresPerSecond()).milesPerHour(),
                Wording.bearing(wind.fromBearingRadians()));
        label(words, middle.plus(24, 3), Mark.Anchor.START);
    }

    private static String side(double rightMetres) {
        double yards = Distance.ofMetres(rightMetres).yards();
        if (Math.abs(yards) < 0.5) {
            return "on line";
        }
        return String.format(Locale.ROOT, "%.0f yd %s", Math.abs(yards), yards < 0 ? "left" : "right");
    }

    private void label(String words, Point at, Mark.Anchor anchor) {
        marks.add(new Mark.Label(words, at, anchor, TEXT, Face.REGULAR, Ink.LINE, 0, true));
    }

    private Point side(double forwardMetres, double heightMetres) {
        return new Point(EDGE + (forwardMetres - leftMetres) * perMetre + 8, groundY - heightMetres * perMetre);
    }

    private Point above(double forwardMetres, double rightMetres) {
        return new Point(EDGE + (forwardMetres - leftMetres) * perMetre + 8, lineY + rightMetres * perMetre);
    }
}
