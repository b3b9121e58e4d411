package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
import loopwright.action.BookPrinter.Paper;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Mark;

/** A page as a whole sheet of paper, portrait: what is carried on a clipboard and written on. */
final class WholeSheet {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    private static final double EDGE = 40;
    private static final double HEAD = 34;
    private static final double SIZE = 9.5;
    /** A pencil's line. */
    private static final double LEAST_PADDING = 2;

    private static final double MOST_PADDING = 16;

    private final Book.Page page;
    private final int number;
    private final double width;
    private final double height;

    WholeSheet(Book.Page page, Paper paper, int number) {
        this.page = page;
        this.number = number;
        width = paper.widthMillimetres() * POINTS_PER_MILLIMETRE;
        height = paper.heightMillimetres() * POINTS_PER_MILLIMETRE;
    }

    Drawing drawing() {
        Extent frame = new Extent(EDGE, EDGE, width - EDGE, height - EDGE);
        List<Mark> out = new ArrayList<>(BookPage.heading(page.title(), frame));
        Column column = new Column(new Extent(frame.left(), frame.top() + HEAD, frame.right(), frame.bottom()), 1);
        page.lines().forEach(column::say);
        out.addAll(column.marks());
        page.table().ifPresent(t -> {
            Extent room = new Extent(frame.left(), column.bottom() + 6, frame.right(), frame.bottom());
            double padding = Math.min(MOST_PADDING, Grid.paddingToFill(t, room, SIZE, LEAST_PADDING));
            out.addAll(new Grid(t, room, SIZE, padding, true).marks());
        });
        return new Drawing(
                page.title(), width, height, List.of(new Mark.Tagged(Mark.Tag.PART, page.title(), number, out)));
    }
}
