package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Paragraph;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;

/** A table: heads over a rule, rows between fine rules, each as high as its text or as a pencil needs. */
final class Grid {
    private static final double CELL_EDGE = 2.5;
    private static final double MOST_HEAD_PADDING = 3;

    private final Book.Table table;
    private final Extent frame;
    private final double size;
    private final List<Mark> lines = new ArrayList<>();
    private final List<Mark> rows = new ArrayList<>();
    private double y;

    /**
     * @param padding above and below the text of a row
     * @param ruledDown true for rules between the columns too
     */
    Grid(Book.Table table, Extent frame, double size, double padding, boolean ruledDown) {
        this.table = table;
        this.frame = frame;
        this.size = size;
        y = frame.top();
        row(table.heads(), Mark.Tag.HEAD_CELL, Face.BOLD, 1, Math.min(padding, MOST_HEAD_PADDING));
        BarColumn column = new BarColumn(table, frame);
        for (int i = 0; i < table.rows().size(); i++) {
            double top = y;
            row(table.rows().get(i), Mark.Tag.CELL, Face.REGULAR, 0.35, padding);
            lines.addAll(column.marks(i, top, y));
        }
        if (ruledDown) {
            downRules();
        }
    }

    /** The padding with which the rows fill a height, at least {@code least}. */
    static double paddingToFill(Book.Table table, Extent frame, double size, double least) {
        double bare = new Grid(table, frame, size, 0, false).bottom() - frame.top();
        return Math.max(least, (frame.height() - bare) / (table.rows().size() + 1) / 2);
    }

    double bottom() {
        return y;
    }

    List<Mark> marks() {
        List<Mark> out = new ArrayList<>(lines);
        out.add(new Mark.Tagged(Mark.Tag.TABLE, table.name(), 0, rows));
        return out;
    }

    private void row(List<String> cells, Mark.Tag tag, Face face, double rule, double around) {
        List<Mark> out = new ArrayList<>();
        double x = frame.left();
        double height = size * 1.32;
        for (int i = 0; i < cells.size(); i++) {
            double width = table.shares().get(i) * frame.width();
            boolean head = tag == Mark.Tag.HEAD_CELL || i == 0;
            Paragraph text = Paragraph.of(cells.get(i), width - 2 * CELL_EDGE, size, head ? Face.BOLD : face);
            out.add(new Mark.Tagged(tag, "", 0, text.marks(new Point(x + CELL_EDGE, y + around - 1), Ink.LINE)));
            height = Math.max(height, text.height());
            x += width;
        }
        rows.add(new Mark.Tagged(Mark.Tag.ROW, "", 0, out));
        y += height + 2 * around;
        lines.add(Mark.drawn(
                Pen.of(Ink.LINE, rule), Trace.line(new Point(frame.left(), y), new Point(frame.right(), y))));
    }

    private void downRules() {
        double x = frame.left();
        for (int i = 0; i + 1 < table.shares().size(); i++) {
            x += table.shares().get(i) * frame.width();
            lines.add(Mark.drawn(Pen.of(Ink.FAINT, 0.5), Trace.line(new Point(x, frame.top()), new Point(x, y))));
        }
    }
}
