package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.HolePicture;
import loopwright.action.HolePicture.Room;
import loopwright.action.HolePicture.Shot;
import loopwright.action.RoundPlan;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.GroundKey;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Paragraph;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;
import loopwright.units.Distance;

/** The plan of a hole in words beside its chart: each shot, its room, its alternatives; below, what the marks mean. */
final class HolePanel {
    private static final double SIZE = 9.5;
    private static final double FOOT = 62;
    private static final double KEY = 84;

    /** What is left out of later shots, in this order, where a hole has more of them than the page has room for. */
    private enum Detail {
        FULL,
        NO_ROOM,
        CLUB_AND_LINE
    }

    private final HolePicture picture;
    private final Extent frame;
    private final Extent window;
    private final List<Mark> out = new ArrayList<>();
    private double y;

    HolePanel(HolePicture picture, Extent frame, Extent window) {
        this.picture = picture;
        this.frame = frame;
        this.window = window;
    }

    List<Mark> marks(SheetView view) {
        double room = frame.bottom() - FOOT;
        for (Detail detail : Detail.values()) {
            out.clear();
            y = frame.top();
            for (int i = 0; i < picture.shots().size(); i++) {
                shot(picture.shots().get(i), i + 1, i == 0 ? Detail.FULL : detail);
            }
            if (y <= room) {
                break;
            }
        }
        foot(view);
        return List.copyOf(out);
    }

    private void shot(Shot shot, int number, Detail detail) {
        say(number + "  " + shot.club(), 13, Face.BOLD, Ink.DO_THIS, 0);
        if (!shot.landmark().isEmpty()) {
            say(
                    shot.landmark().startsWith("blind") ? shot.landmark() : RoundPlan.toward(shot.landmark()),
                    10.5,
                    Face.REGULAR,
                    Ink.LINE,
                    0);
        }
        say(
                "start line " + Wording.bearing(shot.from().bearingTo(shot.aim())) + ", cross at "
                        + Wording.yards(shot.from().distanceTo(shot.aim())),
                SIZE,
                Face.REGULAR,
                Ink.LINE,
                0);
        if (detail == Detail.FULL) {
            shot.room().ifPresent(this::roomBars);
        }
        if (detail != Detail.CLUB_AND_LINE) {
            shot.alternatives().forEach(this::alternative);
        }
        y += 9;
        rule();
        y += 4;
    }

    private void alternative(HolePicture.Alternative other) {
        double base = y + SIZE;
        out.add(Mark.text(other.club(), new Point(frame.left() + 12, base), Mark.Anchor.START, SIZE));
        out.add(Mark.text(other.cost(), new Point(frame.right(), base), Mark.Anchor.END, SIZE));
        y += SIZE * 1.4;
    }

    /** Three bars from one axis, in yards: the room, and the widths that hold 8 of 10 and 19 of 20 of the shots. */
    private void roomBars(Room room) {
        double width = room.left().distanceTo(room.right());
        double longest = Math.max(width, room.nineteenInTwentyMetres());
        double perMetre = (frame.width() - 92) / Math.max(1, longest);
        y += 3;
        bar("room", width, perMetre, Ink.PAPER);
        bar("8 in 10", room.eightInTenMetres(), perMetre, Ink.SOFT);
        bar("19 in 20", room.nineteenInTwentyMetres(), perMetre, Ink.FAINT);
        double axis = frame.left() + 54;
        out.add(Mark.drawn(
                Pen.of(Ink.LINE, 0.8), Trace.line(new Point(axis, y - 3 * 13.5 - 1), new Point(axis, y - 1))));
        say("from " + room.leftName() + " to " + room.rightName(), SIZE, Face.ITALIC, Ink.LINE, 0);
    }

    private void bar(String words, double metres, double perMetre, Ink fill) {
        double axis = frame.left() + 54;
        double base = y + SIZE;
        out.add(Mark.text(words, new Point(axis - 6, base), Mark.Anchor.END, SIZE));
        Extent bar = new Extent(axis, y + 2.2, axis + metres * perMetre, y + 10);
        out.add(new Mark.Shape(List.of(Trace.rectangle(bar)), fill, Pen.of(Ink.LINE, 0.7)));
        out.add(Mark.text(Wording.yards(metres), new Point(bar.right() + 4, base), Mark.Anchor.START, SIZE));
        y += 13.5;
    }

    private void say(String words, double size, Face face, Ink ink, double indent) {
        Paragraph text = Paragraph.of(words, frame.width() - indent, size, face);
        out.addAll(text.marks(new Point(frame.left() + indent, y), ink));
        y += text.height();
    }

    private void rule() {
        out.add(Mark.drawn(
                Pen.of(Ink.FAINT, 0.6), Trace.line(new Point(frame.left(), y), new Point(frame.right(), y))));
    }

    /** What the marks mean, the scale and north, at the bottom. */
    private void foot(SheetView view) {
        double bottom = frame.bottom();
        out.addAll(Furniture.scaleBar(
                new Point(frame.left() + 6, bottom - 8), view.pointsPerMetre(), 118, Distance.METRES_PER_YARD, "yd"));
        out.addAll(Furniture.northArrow(new Point(frame.right() - 22, bottom - 30), 44, view.up()));
        if (picture.shots().isEmpty()) {
            Extent below = new Extent(frame.left(), frame.top(), frame.right(), bottom - 80);
            out.addAll(new GroundKey(picture.course(), kindsShown(view), below).marks(frame.top() - 6));
            return;
        }
        if (y > bottom - FOOT - KEY) {
            return;
        }
        double x = frame.left() + 10;
        double row = bottom - 132;
        out.addAll(Furniture.cross(new Point(x, row), 4.6, Ink.DO_THIS));
        key("aim, with its start line", row);
        row += 18;
        out.add(Mark.drawn(Pen.of(Ink.LINE, 1.1), Trace.circle(new Point(x, row), 4)));
        out.add(Mark.drawn(Pen.of(Ink.LINE, 0.9).dashed(3.0, 2.2), Trace.circle(new Point(x, row), 7.5)));
        key("half / 8 in 10 finish inside", row);
        row += 18;
        out.addAll(Furniture.beware(new Point(x, row + 1), 6));
        key("beware", row);
        row += 18;
        out.add(Mark.drawn(Pen.of(Ink.LINE, 0.8), Trace.line(new Point(x - 7, row), new Point(x + 7, row))));
        out.add(Mark.drawn(Pen.of(Ink.LINE, 0.8), Trace.line(new Point(x, row - 4), new Point(x, row + 4))));
        key("yards left to the hole", row);
    }

    private List<AreaKind> kindsShown(SheetView view) {
        return picture.course().areas().stream()
                .filter(a -> a.region().box().intersects(view.groundOf(window)))
                .map(Area::kind)
                .distinct()
                .sorted()
                .toList();
    }

    private void key(String words, double row) {
        out.add(Mark.text(words, new Point(frame.left() + 28, row + 3.4), Mark.Anchor.START, SIZE));
    }
}
