package loopwright.adapter.book;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import loopwright.action.Book;
import loopwright.action.BookPrinter.Paper;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Mark;
import loopwright.drawing.Point;

/**
 * The parts of a report set below each other on whole sheets, portrait; a part that does not fit
 * begins a new sheet, a long table is broken.
 */
final class ReportPages {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    private static final double EDGE = 40;
    private static final double HEAD = 28;
    private static final double FOOT = 16;
    private static final double GAP = 14;
    private static final double STRIP_HEIGHT = 300;
    private static final int STRIPS = 6;
    /** Fewer rows of a broken table are not left behind on a sheet. */
    private static final int FEWEST_ROWS = 4;

    private static final String CONTINUED = ", continued";

    private final Book report;
    private final double width;
    private final double height;
    private final Extent frame;

    private ReportPages(Book report, Paper paper) {
        this.report = report;
        width = paper.widthMillimetres() * POINTS_PER_MILLIMETRE;
        height = paper.heightMillimetres() * POINTS_PER_MILLIMETRE;
        frame = new Extent(EDGE, EDGE, width - EDGE, height - EDGE - FOOT);
    }

    static List<Drawing> of(Book report, Paper paper) {
        return new ReportPages(report, paper).sheets();
    }

    private List<Drawing> sheets() {
        List<List<Mark>> sheets = new ArrayList<>(List.of(new ArrayList<>()));
        Deque<Book.Page> left = new ArrayDeque<>(report.pages());
        double y = frame.top();
        int order = 1;
        while (!left.isEmpty()) {
            Book.Page page = left.pop();
            Part part = new Part(page, y);
            int rows = part.bottom > frame.bottom() ? rowsThatFit(page, y) : 0;
            if (rows >= FEWEST_ROWS) {
                left.push(rest(page, rows));
                part = new Part(first(page, rows), y);
            } else if (part.bottom > frame.bottom() && y > frame.top()) {
                left.push(page);
                sheets.add(new ArrayList<>());
                y = frame.top();
                continue;
            }
            sheets.get(sheets.size() - 1).add(new Mark.Tagged(Mark.Tag.PART, page.title(), order++, part.marks));
            y = part.bottom + GAP;
        }
        List<Drawing> out = new ArrayList<>();
        for (List<Mark> marks : sheets) {
            marks.add(foot(out.size() + 1, sheets.size()));
            out.add(new Drawing(report.title(), width, height, marks));
        }
        return out;
    }

    /** How many rows of a long table fit below a height, with what stands above them. */
    private int rowsThatFit(Book.Page page, double top) {
        int rows = page.table().map(t -> t.rows().size()).orElse(0);
        while (rows > 0 && new Part(first(page, rows), top).bottom > frame.bottom()) {
            rows--;
        }
        return rows;
    }

    private static Book.Page first(Book.Page page, int rows) {
        return new Book.Page(
                page.kind(), 0, page.title(), page.lines(), page.table().map(t -> t.rows(0, rows)), page.picture());
    }

    private static Book.Page rest(Book.Page page, int rows) {
        String title = page.title().endsWith(CONTINUED) ? page.title() : page.title() + CONTINUED;
        return new Book.Page(
                page.kind(),
                0,
                title,
                List.of(),
                page.table().map(t -> t.rows(rows, t.rows().size())),
                Optional.empty());
    }

    private Mark foot(int number, int of) {
        return Mark.text(
                report.title() + ", sheet " + number + " of " + of,
                new Point(frame.left(), height - EDGE),
                Mark.Anchor.START,
                8);
    }

    /** One part from a height on. */
    private final class Part {
        private final List<Mark> marks;
        private final double bottom;

        Part(Book.Page page, double top) {
            Extent room = new Extent(frame.left(), top, frame.right(), frame.bottom());
            boolean large = page.kind() == Book.Kind.PLAYER_PAGE;
            marks = new ArrayList<>(BookPage.heading(page.title(), room));
            Column column = new Column(new Extent(room.left(), top + HEAD, room.right(), room.bottom()), 1);
            page.lines().forEach(column::say);
            marks.addAll(column.marks());
            double y = column.bottom() + 2;
            if (page.picture().orElse(null) instanceof Book.PlayedGround ground) {
                Extent strips = new Extent(room.left(), y, room.right(), y + STRIP_HEIGHT);
                marks.add(new PlayedStrips(ground, strips, STRIPS).figure());
                y = strips.bottom();
            }
            if (page.table().isPresent()) {
                Grid grid = new Grid(
                        page.table().get(),
                        new Extent(room.left(), y, room.right(), room.bottom()),
                        large ? 12 : 9,
                        large ? 5 : 1.5,
                        false);
                marks.addAll(grid.marks());
                y = grid.bottom();
            }
            bottom = y;
        }
    }
}
