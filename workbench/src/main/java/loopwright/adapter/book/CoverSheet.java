package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
import loopwright.drawing.Extent;
import loopwright.drawing.Furniture;
import loopwright.drawing.Mark;

/** The cover: what the book is, for whom and which day, and what has to be known before it is carried. */
final class CoverSheet {
    private final Book.Page page;

    CoverSheet(Book.Page page) {
        this.page = page;
    }

    List<Mark> marks() {
        Extent sheet = new Extent(0, 0, BookPage.WIDTH, BookPage.HEIGHT);
        List<Mark> out = new ArrayList<>(Furniture.neatLine(sheet.grown(-9)));
        Extent frame = sheet.grown(-24);
        Column top = new Column(frame, 1);
        Column rest = new Column(frame, 1);
        page.lines().stream().filter(l -> !isLow(l)).forEach(top::say);
        page.lines().stream().filter(CoverSheet::isLow).forEach(rest::say);
        out.addAll(top.marks());
        Extent low =
                new Extent(frame.left(), frame.bottom() - (rest.bottom() - frame.top()), frame.right(), frame.bottom());
        Column below = new Column(low, 1);
        page.lines().stream().filter(CoverSheet::isLow).forEach(below::say);
        if (page.picture().orElse(null) instanceof Book.CourseGround ground) {
            Extent window = new Extent(frame.left(), top.bottom() + 8, frame.right(), low.top() - 10);
            out.add(new CourseVignette(ground, window).figure());
        }
        out.addAll(below.marks());
        return out;
    }

    private static boolean isLow(Book.Line line) {
        return line.role() == Book.Role.WARNING;
    }
}
