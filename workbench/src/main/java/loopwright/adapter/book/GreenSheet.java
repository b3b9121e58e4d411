package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
import loopwright.action.Book.Role;
import loopwright.action.LengthUnit;
import loopwright.drawing.Extent;
import loopwright.drawing.Mark;

/** A green's page: the green at a scale the Rules allow, where to aim for every hole location, and room for a pencil. */
final class GreenSheet {
    private static final double FIGURE_SHARE = 0.58;

    private final Book.Page page;
    private final LengthUnit unit;
    private final Extent frame = BookPage.frame();

    GreenSheet(Book.Page page, LengthUnit unit) {
        this.page = page;
        this.unit = unit;
    }

    List<Mark> marks() {
        List<Mark> out = new ArrayList<>(BookPage.holeHeading(
                Integer.toString(page.hole()), page.title(), String.join("", page.texts(Role.FACTS)), frame));
        Column head = new Column(new Extent(frame.left(), BookPage.belowHeading(), frame.right(), frame.bottom()), 1);
        lines(head, Role.MISS);
        out.addAll(head.marks());
        double top = head.bottom() + 2;
        double y = top;
        if (page.picture().orElse(null) instanceof Book.GreenGround ground) {
            GreenPlan plan = new GreenPlan(
                    ground, new Extent(frame.left(), top, frame.right(), top + FIGURE_SHARE * frame.height()), unit);
            out.add(plan.figure());
            y = plan.bottom() + 1;
        }
        Column below = new Column(new Extent(frame.left(), y, frame.right(), frame.bottom()), 1);
        lines(below, Role.SMALL);
        below.gap(3);
        lines(below, Role.NOTE);
        out.addAll(below.marks());
        y = below.bottom();
        if (page.table().isPresent()) {
            Grid grid = new Grid(
                    page.table().get(), new Extent(frame.left(), y, frame.right(), frame.bottom()), 9.5, 3, true);
            out.addAll(grid.marks());
            y = grid.bottom();
        }
        out.addAll(BookPage.pencilLines(new Extent(frame.left(), y + 4, frame.right(), frame.bottom() + 1)));
        return out;
    }

    private void lines(Column column, Role role) {
        page.lines().stream().filter(l -> l.role() == role).forEach(column::say);
    }
}
