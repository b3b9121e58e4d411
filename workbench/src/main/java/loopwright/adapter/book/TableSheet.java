package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
import loopwright.drawing.Extent;
import loopwright.drawing.Mark;

/** A page of lines and a table: the card, what to expect, the pencil card, the wedge table, the slip for the end. */
final class TableSheet {
    private static final double SIZE = 9;

    private final Book.Page page;

    TableSheet(Book.Page page) {
        this.page = page;
    }

    List<Mark> marks() {
        Extent frame = BookPage.frame();
        List<Mark> out = new ArrayList<>(BookPage.heading(page.title(), frame));
        Column column =
                new Column(new Extent(frame.left(), BookPage.belowHeading() + 2, frame.right(), frame.bottom()), 1);
        Book.Role before = null;
        for (Book.Line line : page.lines()) {
            if (before != null && before != line.role()) {
                column.rule();
                column.gap(3);
            }
            column.say(line);
            before = line.role();
        }
        out.addAll(column.marks());
        page.table().ifPresent(t -> {
            Extent room = new Extent(frame.left(), column.bottom(), frame.right(), frame.bottom());
            boolean pencil = page.kind() == Book.Kind.PENCIL_CARD;
            double padding =
                    pencil ? Grid.paddingToFill(t, room, SIZE, 2) : Math.min(4, Grid.paddingToFill(t, room, SIZE, 1));
            out.addAll(new Grid(t, room, SIZE, padding, pencil).marks());
        });
        return out;
    }
}
