package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.BookPrinter.Paper;
import loopwright.drawing.Drawing;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;

/**
 * Lays pages on sheets for a folded booklet: two pages on each side, so that the sheets, printed on both sides, turned over
 * the short edge, laid on each other, cut and folded, read from front to back.
 *
 * <p>Of n pages (a multiple of four) the front of sheet i = 0, 1, ... carries n - 2i at the left and 2i + 1 at the right, its
 * back 2i + 2 at the left and n - 2i - 1 at the right.
 */
final class BookletSheets {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    private static final double MARK = 14;
    private static final double OFF = 5;

    private final double width;
    private final double height;
    private final double left;
    private final double top;

    private BookletSheets(Paper paper) {
        width = paper.heightMillimetres() * POINTS_PER_MILLIMETRE;
        height = paper.widthMillimetres() * POINTS_PER_MILLIMETRE;
        left = (width - 2 * BookPage.WIDTH) / 2;
        top = (height - BookPage.HEIGHT) / 2;
    }

    static List<Drawing> of(List<Drawing> pages, Paper paper) {
        List<Drawing> all = new ArrayList<>(pages);
        while (all.size() % 4 != 0) {
            all.add(BookPage.notes(all.size() + 1));
        }
        BookletSheets sheets = new BookletSheets(paper);
        List<Drawing> out = new ArrayList<>();
        int n = all.size();
        for (int i = 0; i < n / 4; i++) {
            out.add(sheets.side(
                    all.get(n - 1 - 2 * i), all.get(2 * i), "Sheet " + (i + 1) + " of " + n / 4 + ", front"));
            out.add(sheets.side(
                    all.get(2 * i + 1), all.get(n - 2 - 2 * i), "Sheet " + (i + 1) + " of " + n / 4 + ", back"));
        }
        return out;
    }

    private Drawing side(Drawing leftPage, Drawing rightPage, String name) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Moved(left, top, leftPage.marks()));
        marks.add(new Mark.Moved(left + BookPage.WIDTH, top, rightPage.marks()));
        marks.addAll(cutMarks());
        marks.addAll(foldMarks());
        marks.add(Mark.text(
                name + ". Cut at the corners, fold at the dashes.",
                new Point(left + OFF, height - top + 22),
                Mark.Anchor.START,
                7));
        marks.add(Mark.text(
                "Print at 100 %, on both sides, turned over the short edge.",
                new Point(width - left - OFF, height - top + 22), Mark.Anchor.END, 7));
        return new Drawing(name, width, height, marks);
    }

    /** Two strokes at each corner of what is kept, outside it. */
    private List<Mark> cutMarks() {
        List<Trace> strokes = new ArrayList<>();
        double right = width - left;
        double bottom = height - top;
        for (double x : new double[] {left, right}) {
            strokes.add(Trace.line(new Point(x, top - OFF), new Point(x, top - OFF - MARK)));
            strokes.add(Trace.line(new Point(x, bottom + OFF), new Point(x, bottom + OFF + MARK)));
        }
        for (double y : new double[] {top, bottom}) {
            strokes.add(Trace.line(new Point(left - OFF, y), new Point(left - OFF - MARK, y)));
            strokes.add(Trace.line(new Point(right + OFF, y), new Point(right + OFF + MARK, y)));
        }
        return List.of(Mark.drawn(Pen.of(Ink.LINE, 0.4), strokes));
    }

    private List<Mark> foldMarks() {
        double x = width / 2;
        return List.of(Mark.drawn(
                Pen.of(Ink.LINE, 0.5).dashed(2.5, 2.0),
                Trace.line(new Point(x, top - OFF), new Point(x, top - OFF - MARK)),
                Trace.line(new Point(x, height - top + OFF), new Point(x, height - top + OFF + MARK))));
    }
}
