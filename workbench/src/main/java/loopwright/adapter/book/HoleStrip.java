package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.stream.LongStream;
import loopwright.action.Book;
import loopwright.action.HolePicture;
import loopwright.action.LengthUnit;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.GroundLayers;
import loopwright.drawing.Ink;
import loopwright.drawing.Lettering;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;
import loopwright.geo.Line;
import loopwright.geo.Place;

/** The ground of a hole as a strip, play running up the page, with the prepared shots, at a scale that is stated. */
final class HoleStrip {
    private static final int[] SCALES = {
        500, 750, 1000, 1250, 1500, 1750, 2000, 2250, 2500, 2750, 3000, 3250, 3500, 3750, 4000, 4500, 5000, 6000, 7000,
        8000, 10000
    };
    private static final double TICK = 50;
    private static final double SIDE = 14;
    private static final double FOOT = 22;
    private static final double LETTERS = 9;
    /** What the scale's figures need beside the bar. */
    private static final double BESIDE_BAR = 62;

    private final Book.HoleGround ground;
    private final Extent frame;
    private final Extent window;
    private final LengthUnit unit;
    private final int scale;
    private final SheetView view;
    private final Lettering lettering;
    private final List<Mark> marks = new ArrayList<>();

    HoleStrip(Book.HoleGround ground, Extent frame, LengthUnit unit) {
        this.ground = ground;
        this.frame = frame;
        this.window = new Extent(frame.left(), frame.top(), frame.right(), frame.bottom() - FOOT);
        this.unit = unit;
        double up = ground.tee().bearingTo(ground.hole().holeLocation());
        SheetView flat = new SheetView(ground.tee(), new Point(0, 0), up, 1);
        Extent shown = Extent.around(shown().stream().map(flat::toSheet).toList());
        this.scale = scale(shown);
        this.view = new SheetView(
                flat.toGround(shown.centre()),
                window.centre().plus(0, 3),
                up,
                SheetView.POINTS_PER_METRE_OF_PAPER / scale);
        this.lettering = new Lettering(window.grown(-1.5));
    }

    private List<Place> shown() {
        List<Place> out = new ArrayList<>(ground.hole().lineFrom(ground.tee()).places());
        ground.hole().green().polygons().forEach(p -> out.addAll(p.get(0)));
        ground.shots().forEach(s -> out.add(s.aim()));
        return out;
    }

    private int scale(Extent shown) {
        for (int n : SCALES) {
            double perMetre = SheetView.POINTS_PER_METRE_OF_PAPER / n;
            if (shown.width() * perMetre + 2 * SIDE <= window.width()
                    && shown.height() * perMetre + 2 * SIDE + 6 <= window.height()) {
                return n;
            }
        }
        return SCALES[SCALES.length - 1];
    }

    Mark figure() {
        double detail = Math.max(0.5, Math.min(1, view.pointsPerMetre() / 1.6));
        List<Mark> inside = new ArrayList<>(new GroundLayers(view, window, detail).marks(ground.course()));
        playLine();
        ground.shots().forEach(s -> s.room().ifPresent(this::roomLine));
        ground.shots().forEach(this::startLine);
        carryMark();
        for (Book.Shot shot : ground.shots()) {
            marks.addAll(Furniture.cross(view.toSheet(shot.aim()), 4.4, Ink.DO_THIS));
        }
        marks.addAll(Furniture.pennant(view.toSheet(ground.hole().holeLocation()), 12));
        north();
        letter();
        inside.addAll(marks);
        inside.addAll(lettering.texts());
        List<Mark> all = new ArrayList<>();
        all.add(new Mark.Window(Trace.rectangle(window), inside));
        all.add(Mark.drawn(Pen.of(Ink.LINE, 0.7), Trace.rectangle(window)));
        all.addAll(scaleBar());
        return new Mark.Tagged(Mark.Tag.FIGURE, ground.words(), 0, all);
    }

    private void playLine() {
        Line line = ground.hole().lineFrom(ground.tee());
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.5).dashed(6.0, 2.0, 1.0, 2.0), view.toSheet(line)));
        ticks((at, words) -> {
            Point ahead = view.toSheet(line.placeAt(line.along(view.toGround(at)) + 1));
            double angle = at.angleTo(ahead) + Math.PI / 2;
            marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.8), Trace.line(at.polar(angle, 3.5), at.polar(angle, -3.5))));
        });
    }

    /** Every fifty, counted from the hole. */
    private void ticks(BiConsumer<Point, String> each) {
        Line line = ground.hole().lineFrom(ground.tee());
        double step = TICK * unit.inMetres();
        for (int i = 1; i * step < line.lengthMetres() - step / 3; i++) {
            each.accept(
                    view.toSheet(line.placeAt(line.lengthMetres() - i * step)), Long.toString(Math.round(i * TICK)));
        }
    }

    private void startLine(Book.Shot shot) {
        Point from = view.toSheet(shot.from());
        Point aim = view.toSheet(shot.aim());
        marks.add(Mark.drawn(Pen.of(Ink.PAPER, 2.2), Trace.line(from, aim)));
        marks.add(Mark.drawn(Pen.of(Ink.DO_THIS, 0.9), Trace.line(from, aim)));
        marks.add(new Mark.Shape(List.of(Trace.circle(from, 2.2)), Ink.LINE, Pen.of(Ink.PAPER, 0.7)));
    }

    private void roomLine(HolePicture.Room room) {
        Point left = view.toSheet(room.left());
        Point right = view.toSheet(room.right());
        double angle = left.angleTo(right) + Math.PI / 2;
        marks.add(Mark.drawn(Pen.of(Ink.PAPER, 2.4), Trace.line(left, right)));
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.7), Trace.line(left, right)));
        for (Point end : List.of(left, right)) {
            marks.add(Mark.drawn(Pen.of(Ink.LINE, 1.1), Trace.line(end.polar(angle, 4), end.polar(angle, -4))));
        }
    }

    private Point carryPoint(double metres) {
        Place aim = ground.shots().get(0).aim();
        return view.toSheet(ground.tee().along(ground.tee().bearingTo(aim), metres));
    }

    private void carryMark() {
        ground.carry().ifPresent(metres -> {
            Point at = carryPoint(metres);
            double across = view.toSheet(ground.tee()).angleTo(at) + Math.PI / 2;
            marks.add(Mark.drawn(Pen.of(Ink.PAPER, 3.2), Trace.line(at.polar(across, 6), at.polar(across, -6))));
            marks.add(Mark.drawn(Pen.of(Ink.DO_THIS, 1.6), Trace.line(at.polar(across, 6), at.polar(across, -6))));
        });
    }

    private void north() {
        Point at = new Point(window.right() - 23, window.bottom() - 23);
        Extent room = new Extent(at.x() - 21, at.y() - 21, at.x() + 21, at.y() + 21);
        lettering.keepFree(room);
        marks.addAll(Furniture.northArrow(at, 20, view.up()));
    }

    private void letter() {
        Point pin = view.toSheet(ground.hole().holeLocation());
        lettering.keepFree(new Extent(pin.x() - 3, pin.y() - 13, pin.x() + 9, pin.y() + 3));
        for (Book.Shot shot : ground.shots()) {
            Point aim = view.toSheet(shot.aim());
            lettering.keepFree(new Extent(aim.x() - 7, aim.y() - 7, aim.x() + 7, aim.y() + 7));
            lettering.keepFree(view.toSheet(shot.from()), aim);
            shot.room().ifPresent(r -> lettering.keepFree(view.toSheet(r.left()), view.toSheet(r.right())));
        }
        for (Book.Shot shot : ground.shots()) {
            lettering.besideIfFree(shot.club(), view.toSheet(shot.aim()), 9, LETTERS, Face.BOLD, Ink.DO_THIS);
        }
        ground.carry()
                .ifPresent(c -> lettering.besideIfFree(
                        Long.toString(unit.whole(c)), carryPoint(c), 9, LETTERS, Face.BOLD, Ink.LINE));
        ticks((at, words) -> lettering.besideIfFree(words, at, 6, LETTERS, Face.REGULAR, Ink.LINE));
    }

    /** A bar of fifty (twenty, ten, where that is too long), and the scale as a number. */
    private List<Mark> scaleBar() {
        double perUnit = unit.inMetres() * view.pointsPerMetre();
        long bar = LongStream.of(50, 20)
                .filter(b -> b * perUnit <= frame.width() - BESIDE_BAR)
                .findFirst()
                .orElse(10);
        double length = bar * perUnit;
        double y = frame.bottom() - FOOT + 6;
        double x = frame.left() + 1;
        List<Mark> out = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            Extent half = new Extent(x + i * length / 2, y, x + (i + 1) * length / 2, y + 3);
            out.add(new Mark.Shape(
                    List.of(Trace.rectangle(half)), i == 0 ? Ink.LINE : Ink.PAPER, Pen.of(Ink.LINE, 0.5)));
        }
        double size = Book.Role.SMALL.points();
        out.add(Mark.text(bar + " " + unit.sign(), new Point(x + length + 4, y + 4.5), Mark.Anchor.START, size));
        out.add(Mark.text(
                String.format(Locale.ROOT, "1:%d", scale), new Point(frame.right(), y + 4.5), Mark.Anchor.END, size));
        return out;
    }
}
