package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Paragraph;
import loopwright.drawing.Point;

/** Sets the lines of a page below each other in a column, each as large as its role asks, a little less where it must. */
final class Column {
    private static final double INDENT = 12;

    private final Extent frame;
    private final double shrink;
    private final List<Mark> marks = new ArrayList<>();
    private double y;

    /** @param shrink at most 1; what is read during play is never set smaller than it may be */
    Column(Extent frame, double shrink) {
        this.frame = frame;
        this.shrink = shrink;
        y = frame.top();
    }

    double bottom() {
        return y;
    }

    boolean fits() {
        return y <= frame.bottom() + 0.01;
    }

    List<Mark> marks() {
        return List.copyOf(marks);
    }

    void gap(double points) {
        y += points;
    }

    void rule() {
        marks.add(BookPage.rule(new Extent(frame.left(), y, frame.right(), y), y + 2, 0.5));
        y += 5;
    }

    void say(Book.Line line) {
        Paragraph text =
                Paragraph.of(line.text(), frame.width() - indent(line.role()), size(line.role()), face(line.role()));
        sign(line.role());
        marks.add(new Mark.Tagged(
                Mark.Tag.PARAGRAPH,
                "",
                0,
                text.marks(new Point(frame.left() + indent(line.role()), y), ink(line.role()))));
        y += text.height() + gapAfter(line.role());
    }

    private double size(Book.Role role) {
        double least = role.duringPlay() ? Book.Role.LEAST_DURING_PLAY : 7;
        return Math.max(Math.min(least, role.points()), role.points() * shrink);
    }

    private static double gapAfter(Book.Role role) {
        return switch (role) {
            case CLUB, START_LINE, WIND -> 0.5;
            case DECISION, EXPECTATION, WARNING, LEAD -> 5;
            default -> 2.5;
        };
    }

    private static double indent(Book.Role role) {
        return isWarned(role) ? INDENT : 0;
    }

    private static boolean isWarned(Book.Role role) {
        return role == Book.Role.BEWARE
                || role == Book.Role.PROVISIONAL
                || role == Book.Role.UNSURVEYED
                || role == Book.Role.WARNING;
    }

    private void sign(Book.Role role) {
        if (isWarned(role)) {
            marks.addAll(Furniture.beware(new Point(frame.left() + 4.5, y + 7), 5));
        }
    }

    private static Face face(Book.Role role) {
        return switch (role) {
            case CLUB, CARRY, MISS, FACTS, COVER_NAME, BEWARE -> Face.BOLD;
            case SENTENCE -> Face.ITALIC;
            default -> Face.REGULAR;
        };
    }

    private static Ink ink(Book.Role role) {
        return switch (role) {
            case CLUB -> Ink.DO_THIS;
            case BEWARE -> Ink.BEWARE;
            default -> Ink.LINE;
        };
    }
}
