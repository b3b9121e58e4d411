package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.PracticePictures.DrillCard;
import loopwright.action.PracticePictures.Expected;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Paragraph;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;
import loopwright.player.Player;
import loopwright.practice.Drill;
import loopwright.practice.PuttStation;
import loopwright.practice.ShotStation;
import loopwright.practice.Station;
import loopwright.practice.UpAndDownStation;
import loopwright.practice.Zone;

/** A drill on one sheet: what to lay out, drawn to scale from above with play running up, how to score, a sheet to write on. */
final class DrillChart {
    private static final double WIDTH = 460;
    private static final double HEIGHT = 640;
    private static final double EDGE = 32;
    private static final double TEXT = 10.5;
    private static final double TOP = 250;
    private static final double BOTTOM = 505;
    private static final int SCORES = 8;
    /** Shorter lengths are told in inches or centimetres: two and a half feet. */
    private static final double HAND_METRES = 0.762;
    /** Depth of the box behind a hole: 3 ft. */
    private static final double BEHIND_METRES = 0.9144;

    private final DrillCard card;
    private final Drill drill;
    private final List<Mark> marks = new ArrayList<>();

    private DrillChart(DrillCard card) {
        this.card = card;
        drill = card.drill();
    }

    static Drawing of(DrillCard card) {
        return new DrillChart(card).draw();
    }

    private Drawing draw() {
        marks.addAll(Furniture.neatLine(new Extent(0, 0, WIDTH, HEIGHT).grown(-12)));
        double y = EDGE + 6;
        marks.add(Mark.text(title(drill.name()), new Point(EDGE, y + 12), Mark.Anchor.START, 17, Face.BOLD, Ink.LINE));
        String where = drill.facility().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        marks.add(Mark.text(
                drill.minutes() + " minutes, " + where, new Point(WIDTH - EDGE, y + 12), Mark.Anchor.END, TEXT));
        y = paragraph(drill.purpose(), y + 22);
        y = paragraph("Set-up: " + drill.setUp(), y + 4);
        y = paragraph("Score: " + drill.scoring(), y + 4);
        paragraph("Tells: " + drill.tells(), y + 4);
        stations();
        expected();
        sheet();
        return new Drawing("Drill " + drill.name(), WIDTH, HEIGHT, marks);
    }

    private static String title(String name) {
        String words = name.replace('-', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private double paragraph(String text, double y) {
        Paragraph p = Paragraph.of(text, WIDTH - 2 * EDGE, TEXT, Face.REGULAR);
        marks.addAll(p.marks(new Point(EDGE, y), Ink.LINE));
        return y + p.height();
    }

    /** One column for each of the first stations, each to its own scale. */
    private void stations() {
        List<Station> shown = drill.stations().stream().distinct().limit(4).toList();
        double column = (WIDTH - 2 * EDGE) / shown.size();
        for (int i = 0; i < shown.size(); i++) {
            station(shown.get(i), EDGE + column * (i + 0.5), column);
        }
        int more = drill.stations().size() - shown.size();
        if (more > 0) {
            marks.add(Mark.text(
                    "and " + more + " more like these",
                    new Point(WIDTH / 2, BOTTOM + 24),
                    Mark.Anchor.MIDDLE,
                    9,
                    Face.ITALIC,
                    Ink.SOFT));
        }
    }

    private void station(Station station, double x, double column) {
        if (station instanceof PuttStation putt) {
            putt(putt, x, column);
        } else if (station instanceof ShotStation shot) {
            shot(shot, x, column);
        } else if (station instanceof UpAndDownStation upAndDown) {
            line(x, yards(upAndDown.metres()), upAndDown.tries());
            hole(new Point(x, TOP));
        }
    }

    private void putt(PuttStation putt, double x, double column) {
        if (putt.task() == PuttStation.Task.HOLE) {
            Point centre = new Point(x, (TOP + BOTTOM) / 2);
            double radius = Math.min(100, column / 2 - 30);
            hole(centre);
            for (int i = 0; i < putt.tries(); i++) {
                ball(centre.polar(2 * Math.PI * i / putt.tries(), radius));
            }
            marks.add(Mark.drawn(Pen.of(Ink.SOFT, 0.6).dashed(4.0, 3.0), Trace.circle(centre, radius)));
            label(feet(putt.metres()), centre.plus(radius / 2, -5));
            return;
        }
        line(x, feet(putt.metres()), putt.tries());
        if (putt.task() == PuttStation.Task.GATE) {
            marks.add(Mark.filled(Ink.DO_THIS, Trace.circle(new Point(x - 9, TOP + 20), 3)));
            marks.add(Mark.filled(Ink.DO_THIS, Trace.circle(new Point(x + 9, TOP + 20), 3)));
        } else {
            Point hole = new Point(x, TOP + 46);
            marks.add(Mark.drawn(
                    Pen.of(Ink.DO_THIS, 1.4), Trace.rectangle(new Extent(x - 26, TOP + 10, x + 26, TOP + 46))));
            hole(hole);
            label(feet(BEHIND_METRES), new Point(x + 40, TOP + 24));
        }
    }

    private void shot(ShotStation shot, double x, double column) {
        boolean drive = shot.zones().get(0).kind() == Zone.Kind.CORRIDOR;
        line(x, drive ? "driver" : yards(shot.metres()), shot.tries());
        Point target = new Point(x, TOP + 40);
        for (Zone zone : shot.zones()) {
            switch (zone.kind()) {
                case CORRIDOR -> {
                    double half = Math.min(column / 2 - 20, 44);
                    marks.add(Mark.drawn(
                            Pen.of(Ink.DO_THIS, 1.4),
                            Trace.line(new Point(x - half, TOP), new Point(x - half, TOP + 110)),
                            Trace.line(new Point(x + half, TOP), new Point(x + half, TOP + 110))));
                    label(yards(zone.metres()), new Point(x, TOP - 4));
                }
                case HALF -> {
                    marks.add(Mark.drawn(Pen.of(Ink.GREEN_LINE, 0.9), Trace.circle(target.plus(22, 0), 46)));
                    marks.add(Mark.drawn(
                            Pen.of(Ink.DO_THIS, 1.4), Trace.rectangle(new Extent(x - 22, TOP + 4, x + 22, TOP + 76))));
                    label(yards(zone.metres()) + " wide", target.plus(0, 54));
                }
                case OUT ->
                    marks.add(Mark.drawn(
                            Pen.of(Ink.SAND_DOT, 0.9).dashed(2.0, 2.0), Trace.circle(new Point(x, BOTTOM), 26)));
                case INSIDE, LANDS -> {
                    marks.add(Mark.drawn(Pen.of(Ink.DO_THIS, 1.4), Trace.circle(target, 30)));
                    label(radius(zone.metres()), target.plus(0, 46));
                }
            }
        }
        if (!drive) {
            marks.addAll(Furniture.cross(target, 6, Ink.DO_THIS));
        }
    }

    /** The line of play with its length and the balls at its foot. */
    private void line(double x, String length, int tries) {
        marks.add(Mark.drawn(
                Pen.of(Ink.SOFT, 0.6).dashed(7.0, 3.0), Trace.line(new Point(x, BOTTOM - 8), new Point(x, TOP + 10))));
        ball(new Point(x, BOTTOM));
        stance(new Point(x, BOTTOM));
        label(length, new Point(x, (TOP + BOTTOM) / 2 + 40));
        label(tries + (tries == 1 ? " ball" : " balls"), new Point(x, BOTTOM + 14));
    }

    /** Two soles beside the ball, toes towards it: on its left for a right-hander who plays up the sheet. */
    private void stance(Point ball) {
        double side = card.hand() == Player.Hand.RIGHT ? -1 : 1;
        for (double along : new double[] {-6, 6}) {
            double toe = ball.x() + side * 13;
            double heel = toe + side * 13;
            double y = ball.y() + along;
            marks.add(Mark.drawn(
                    Pen.of(Ink.SOFT, 0.9),
                    Trace.closed(
                            new Point(toe, y - 1.2),
                            new Point(toe, y + 1.2),
                            new Point(heel - side * 7, y + 2.6),
                            new Point(heel, y + 1.6),
                            new Point(heel, y - 1.6),
                            new Point(heel - side * 7, y - 2.6))));
        }
    }

    private void ball(Point at) {
        marks.add(new Mark.Shape(List.of(Trace.circle(at, 3.2)), Ink.PAPER, Pen.of(Ink.LINE, 1.1)));
    }

    private void hole(Point at) {
        marks.add(Mark.filled(Ink.LINE, Trace.circle(at, 4)));
        marks.addAll(Furniture.pennant(at, 22));
    }

    private void label(String text, Point at) {
        marks.add(new Mark.Label(text, at, Mark.Anchor.MIDDLE, 9.5, Face.REGULAR, Ink.LINE, 0, true));
    }

    private void expected() {
        double y = BOTTOM + 38;
        for (String line : List.of(
                card.player() + " should expect " + said(card.own()) + " of " + drill.most(),
                card.level() + ": " + said(card.target()))) {
            marks.add(Mark.text(line, new Point(EDGE, y), Mark.Anchor.START, TEXT, Face.BOLD, Ink.LINE));
            y += 14;
        }
    }

    private static String said(Expected e) {
        return String.format(Locale.ROOT, "%.1f (8 in 10: %d to %d)", e.mean(), e.low(), e.high());
    }

    /** Boxes for day and score. */
    private void sheet() {
        double width = (WIDTH - 2 * EDGE) / SCORES;
        double top = BOTTOM + 58;
        for (int i = 0; i < SCORES; i++) {
            double left = EDGE + i * width;
            marks.add(
                    Mark.drawn(Pen.of(Ink.LINE, 0.7), Trace.rectangle(new Extent(left, top, left + width, top + 40))));
            marks.add(Mark.text(
                    i == 0 ? "day" : "",
                    new Point(left + 4, top + 11),
                    Mark.Anchor.START,
                    7.5,
                    Face.REGULAR,
                    Ink.SOFT));
            marks.add(Mark.text(
                    i == 0 ? "score" : "",
                    new Point(left + 4, top + 31),
                    Mark.Anchor.START,
                    7.5,
                    Face.REGULAR,
                    Ink.SOFT));
            marks.add(Mark.drawn(
                    Pen.of(Ink.FAINT, 0.5), Trace.line(new Point(left, top + 20), new Point(left + width, top + 20))));
        }
    }

    private String feet(double metres) {
        return metres < HAND_METRES
                ? card.lengths().hand(metres)
                : card.lengths().near(metres);
    }

    private String yards(double metres) {
        return card.lengths().far(metres);
    }

    private String radius(double metres) {
        return "within " + (metres < 5 ? feet(metres) : yards(metres));
    }
}
