package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.LengthUnit;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;
import loopwright.player.Player;
import loopwright.player.Shot;
import loopwright.player.ShotLog;
import loopwright.player.Swing;

/** All patterns of a bag on one sheet, longest first, every panel at the same scale. */
final class PatternChart {
    private static final int COLUMNS = 5;
    private static final double EDGE = 28;
    private static final double GAP_ACROSS = 18;
    private static final double GAP_DOWN = 14;
    private static final double HEAD = 62;

    private PatternChart() {}

    static Drawing of(Player player, ShotLog log, LengthUnit lengths) {
        List<Swing> swings = player.swings();
        int columns = Math.min(COLUMNS, swings.size());
        int rows = (swings.size() + columns - 1) / columns;
        double width = Math.max(560, 2 * EDGE + columns * PatternPanel.WIDTH + (columns - 1) * GAP_ACROSS);
        double height = EDGE + HEAD + rows * (PatternPanel.HEIGHT + GAP_DOWN) + EDGE - GAP_DOWN;
        List<Mark> marks = new ArrayList<>(Furniture.neatLine(new Extent(0, 0, width, height).grown(-12)));
        marks.addAll(head(player, lengths, width));
        double zoom = swings.stream()
                .mapToDouble(s -> PatternPanel.zoomFor(s, lengths))
                .max()
                .orElse(1);
        for (int i = 0; i < swings.size(); i++) {
            Swing swing = swings.get(i);
            int row = i / columns;
            Point corner = new Point(
                    EDGE + (i % columns) * (PatternPanel.WIDTH + GAP_ACROSS),
                    EDGE + HEAD + row * (PatternPanel.HEIGHT + GAP_DOWN));
            marks.addAll(new PatternPanel(swing, balls(log, swing), lengths, zoom, corner).marks());
        }
        return new Drawing("Shot patterns of " + player.name(), width, height, marks);
    }

    private static List<Shot> balls(ShotLog log, Swing swing) {
        return log.shots().stream()
                .filter(s -> s.club().equals(swing.club()) && s.effort().equals(swing.effort()))
                .toList();
    }

    private static List<Mark> head(Player player, LengthUnit lengths, double width) {
        List<Mark> out = new ArrayList<>();
        double fit = Math.min(20, 20 * (width - 2 * EDGE) / Face.BOLD.width("Shot patterns: " + player.name(), 20));
        out.add(Mark.text(
                "Shot patterns: " + player.name(),
                new Point(EDGE, EDGE + 16),
                Mark.Anchor.START,
                fit,
                Face.BOLD,
                Ink.LINE));
        out.add(Mark.text(
                "Where the ball lands, seen from above; squares of 10 " + lengths.words()
                        + ", the player stands below, aiming up.",
                new Point(EDGE, EDGE + 32),
                Mark.Anchor.START,
                10));
        double y = EDGE + 46;
        double x = EDGE + 3;
        out.add(Mark.drawn(Pen.of(Ink.SOFT, 1.9), Trace.dot(new Point(x, y - 3))));
        x = after(out, x + 8, y, "solid ball");
        Point at = new Point(x + 4, y - 2.5);
        out.add(Mark.drawn(
                Pen.of(Ink.BEWARE, 0.7),
                Trace.closed(at.polar(-Math.PI / 2, 2.6), at.polar(Math.PI / 6, 2.6), at.polar(5 * Math.PI / 6, 2.6))));
        x = after(out, x + 12, y, "likely a mishit");
        out.add(Mark.drawn(Pen.of(Ink.LINE, 1), Trace.line(new Point(x, y - 3), new Point(x + 16, y - 3))));
        x = after(out, x + 21, y, "outline of 50 and 80 in 100 balls, measured");
        out.add(Mark.drawn(
                Pen.of(Ink.LINE, 1).dashed(2.6, 2.0), Trace.line(new Point(x, y - 3), new Point(x + 16, y - 3))));
        after(out, x + 21, y, "mostly assumed");
        return out;
    }

    private static double after(List<Mark> out, double x, double y, String words) {
        Mark.Label label = Mark.text(words, new Point(x, y), Mark.Anchor.START, 9.5);
        out.add(label);
        return x + label.width() + 16;
    }
}
