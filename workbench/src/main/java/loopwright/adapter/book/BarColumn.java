package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
import loopwright.drawing.Extent;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;

/**
 * The bars of a ledger, all from one axis and in one scale: above zero filled, below zero open, so that they differ without
 * colour; whiskers reach as far as what is not known. The numbers stand in the cells beside them.
 */
final class BarColumn {
    private static final double EDGE = 5;
    private static final double THICK = 6.5;

    private final List<Book.Bar> bars;
    private final double axis;
    private final double pointsPerStroke;

    BarColumn(Book.Table table, Extent frame) {
        bars = table.bars();
        double width = table.shares().get(table.shares().size() - 1) * frame.width() - 2 * EDGE;
        double low = bars.stream().mapToDouble(b -> Math.min(0, b.low())).min().orElse(0);
        double high =
                bars.stream().mapToDouble(b -> Math.max(0, b.high())).max().orElse(0);
        pointsPerStroke = width / Math.max(1, high - low);
        axis = frame.right() - EDGE - width - low * pointsPerStroke;
    }

    /** The bar of a row between two heights; nothing where the table has none. */
    List<Mark> marks(int row, double top, double bottom) {
        if (bars.isEmpty()) {
            return List.of();
        }
        Book.Bar bar = bars.get(row);
        double middle = (top + bottom) / 2;
        double end = axis + bar.value() * pointsPerStroke;
        List<Mark> out = new ArrayList<>();
        out.add(new Mark.Shape(
                List.of(Trace.rectangle(
                        new Extent(Math.min(axis, end), middle - THICK / 2, Math.max(axis, end), middle + THICK / 2))),
                bar.value() >= 0 ? Ink.FAINT : Ink.PAPER,
                Pen.of(Ink.LINE, 0.6)));
        if (bar.high() > bar.low()) {
            out.addAll(whisker(axis + bar.low() * pointsPerStroke, axis + bar.high() * pointsPerStroke, middle));
        }
        out.add(Mark.drawn(Pen.of(Ink.LINE, 0.9), Trace.line(new Point(axis, top), new Point(axis, bottom))));
        return out;
    }

    private static List<Mark> whisker(double from, double to, double y) {
        return List.of(Mark.drawn(
                Pen.of(Ink.LINE, 1),
                Trace.line(new Point(from, y), new Point(to, y)),
                Trace.line(new Point(from, y - 3), new Point(from, y + 3)),
                Trace.line(new Point(to, y - 3), new Point(to, y + 3))));
    }
}
