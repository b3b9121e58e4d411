package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
import loopwright.action.LengthUnit;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;

/** One page of the pocket book. */
final class BookPage {
    static final double WIDTH = 72 * Book.PAGE_WIDTH_INCHES;
    static final double HEIGHT = 72 * Book.PAGE_HEIGHT_INCHES;
    static final double EDGE = 14;
    private static final double HEAD = 26;

    private BookPage() {}

    static Drawing of(Book.Page page, int number, LengthUnit unit) {
        List<Mark> marks = switch (page.kind()) {
            case COVER -> new CoverSheet(page).marks();
            case HOLE -> new HoleSheet(page, unit).marks();
            case GREEN -> new GreenSheet(page, unit).marks();
            default -> new TableSheet(page).marks();
        };
        return new Drawing(page.title(), WIDTH, HEIGHT, List.of(part(page.title(), number, marks)));
    }

    /** A page to write on, where the booklet needs one more. */
    static Drawing notes(int number) {
        List<Mark> marks = new ArrayList<>(heading("Notes", frame()));
        marks.addAll(pencilLines(new Extent(EDGE, EDGE + HEAD + 10, WIDTH - EDGE, HEIGHT - EDGE)));
        return new Drawing("Notes", WIDTH, HEIGHT, List.of(part("Notes", number, marks)));
    }

    private static Mark part(String title, int number, List<Mark> marks) {
        return new Mark.Tagged(Mark.Tag.PART, title, number, marks);
    }

    static Extent frame() {
        return new Extent(EDGE, EDGE, WIDTH - EDGE, HEIGHT - EDGE);
    }

    /** The title of a page over a rule. */
    static List<Mark> heading(String title, Extent frame) {
        Mark text =
                Mark.text(title, new Point(frame.left(), frame.top() + 14), Mark.Anchor.START, 14, Face.BOLD, Ink.LINE);
        return List.of(new Mark.Tagged(Mark.Tag.HEADING, "", 0, List.of(text)), rule(frame, frame.top() + 21, 1.2));
    }

    /** The number of a hole in its box, facts beside it, over a rule; returns marks that end {@link #HEAD} lower. */
    static List<Mark> holeHeading(String number, String spoken, String facts, Extent frame) {
        Extent box = new Extent(frame.left(), frame.top(), frame.left() + 28, frame.top() + 22);
        return List.of(
                Mark.drawn(Pen.of(Ink.LINE, 1.2), Trace.rectangle(box)),
                new Mark.Tagged(
                        Mark.Tag.HEADING,
                        spoken,
                        0,
                        List.of(Mark.text(
                                number,
                                new Point(box.centre().x(), box.bottom() - 5.5),
                                Mark.Anchor.MIDDLE,
                                16,
                                Face.BOLD,
                                Ink.LINE))),
                new Mark.Tagged(
                        Mark.Tag.PARAGRAPH,
                        "",
                        0,
                        List.of(Mark.text(
                                facts,
                                new Point(box.right() + 8, box.bottom() - 6.5),
                                Mark.Anchor.START,
                                Book.Role.FACTS.points(),
                                Face.BOLD,
                                Ink.LINE))));
    }

    static double belowHeading() {
        return EDGE + HEAD + 2;
    }

    static Mark rule(Extent frame, double y, double width) {
        return Mark.drawn(Pen.of(Ink.LINE, width), Trace.line(new Point(frame.left(), y), new Point(frame.right(), y)));
    }

    /** Faint lines to write on, a pencil's line apart. */
    static List<Mark> pencilLines(Extent room) {
        List<Trace> lines = new ArrayList<>();
        for (double y = room.top() + 17; y < room.bottom(); y += 17) {
            lines.add(Trace.line(new Point(room.left(), y), new Point(room.right(), y)));
        }
        return lines.isEmpty() ? List.of() : List.of(Mark.drawn(Pen.of(Ink.FAINT, 0.5), lines));
    }
}
