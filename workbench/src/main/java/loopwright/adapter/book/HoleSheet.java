package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loopwright.action.Book;
import loopwright.action.Book.Role;
import loopwright.action.LengthUnit;
import loopwright.drawing.Extent;
import loopwright.drawing.Mark;

/** A hole's page: the strip of ground at the left, the prepared shots in words at the right, cautions along the foot. */
final class HoleSheet {
    private static final double GAP = 8;
    private static final double[] STRIPS = {136, 120, 106, 94};
    private static final double[] SIZES = {1, 0.97, 0.94};
    private static final Set<Role> HEAD = EnumSet.of(Role.UNSURVEYED);
    private static final Set<Role> FOOT = EnumSet.of(Role.PROVISIONAL, Role.BEWARE, Role.NOTE, Role.SENTENCE);

    private final Book.Page page;
    private final LengthUnit unit;
    private final Extent frame = BookPage.frame();

    HoleSheet(Book.Page page, LengthUnit unit) {
        this.page = page;
        this.unit = unit;
    }

    List<Mark> marks() {
        List<Mark> out = new ArrayList<>(BookPage.holeHeading(
                Integer.toString(page.hole()), page.title(), String.join("", page.texts(Role.FACTS)), frame));
        Column head = column(new Extent(frame.left(), BookPage.belowHeading(), frame.right(), frame.bottom()), 1, HEAD);
        out.addAll(head.marks());
        double top = head.bottom() + 4;
        Layout layout = layout(top);
        Extent window = new Extent(frame.left(), top, frame.left() + layout.strip, layout.footTop - 6);
        if (page.picture().orElse(null) instanceof Book.HoleGround ground) {
            out.add(new HoleStrip(ground, window, unit).figure());
        }
        out.addAll(layout.body.marks());
        out.add(BookPage.rule(frame, layout.footTop - 2, 0.5));
        out.addAll(layout.foot.marks());
        return out;
    }

    private record Layout(double strip, double footTop, Column body, Column foot) {}

    /** The widest strip and the largest letters with which everything fits; the last try is taken as it is. */
    private Layout layout(double top) {
        Layout last = null;
        for (double strip : STRIPS) {
            for (double size : SIZES) {
                last = layout(top, strip, size);
                if (last.body.fits()) {
                    return last;
                }
            }
        }
        if (last == null) {
            throw new IllegalStateException("no layout was tried");
        }
        return last;
    }

    private Layout layout(double top, double strip, double size) {
        double height = column(frame, size, FOOT).bottom() - frame.top();
        double footTop = frame.bottom() - height;
        Column foot = column(new Extent(frame.left(), footTop, frame.right(), frame.bottom()), size, FOOT);
        Extent right = new Extent(frame.left() + strip + GAP, top - 3, frame.right(), footTop - 6);
        return new Layout(strip, footTop, body(right, size), foot);
    }

    private Column column(Extent extent, double size, Set<Role> roles) {
        Column out = new Column(extent, size);
        page.lines().stream().filter(l -> roles.contains(l.role())).forEach(out::say);
        return out;
    }

    private Column body(Extent extent, double size) {
        Column out = new Column(extent, size);
        Role before = Role.CLUB;
        for (Book.Line line : page.lines()) {
            Role role = line.role();
            if (role == Role.FACTS || HEAD.contains(role) || FOOT.contains(role)) {
                continue;
            }
            if (role != before && (role == Role.START_LINE || role == Role.WIND || role == Role.NEXT)) {
                out.rule();
            }
            out.say(line);
            before = role;
        }
        return out;
    }
}
