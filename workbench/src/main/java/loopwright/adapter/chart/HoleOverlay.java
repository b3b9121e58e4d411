package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import loopwright.action.HolePicture;
import loopwright.action.HolePicture.Shot;
import loopwright.action.LengthUnit;
import loopwright.course.Area;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.FinishOutline;
import loopwright.drawing.Furniture;
import loopwright.drawing.GroundLayers;
import loopwright.drawing.HeightContours;
import loopwright.drawing.Ink;
import loopwright.drawing.Lettering;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;
import loopwright.geo.Box;
import loopwright.geo.Line;

/** What lies in the window of a hole's chart: ground, contours, line of play with ticks, the plan, what to beware of. */
final class HoleOverlay {
    private static final double TICK = 50;
    private static final double FINE = 9;

    private final IdentityHashMap<Shot, Outlines> outlines = new IdentityHashMap<>();
    private final HolePicture picture;
    private final LengthUnit lengths;
    private final SheetView view;
    private final Extent window;
    private final Lettering lettering;
    private final Optional<HeightContours> heights;
    private final Optional<StrokesContours> strokes;
    private final List<Mark> marks = new ArrayList<>();

    HoleOverlay(HolePicture picture, SheetView view, Extent window, LengthUnit lengths) {
        this(picture, view, window, lengths, picture.course().heights().map(h -> new HeightContours(h, view, window)));
    }

    /** {@code heights} of the same course, view and window. */
    HoleOverlay(
            HolePicture picture, SheetView view, Extent window, LengthUnit lengths, Optional<HeightContours> heights) {
        this.lengths = lengths;
        this.picture = picture;
        this.view = view;
        this.window = window;
        this.lettering = new Lettering(window.grown(-3));
        this.heights = heights;
        this.strokes = picture.strokes().map(f -> new StrokesContours(f, view, window));
    }

    /** Lines first, then the marks of aim and warning, then every text. What matters most is lettered first. */
    List<Mark> marks() {
        List<Mark> all = new ArrayList<>(ground());
        all.addAll(plan());
        return List.copyOf(all);
    }

    /** What stays the same whatever is planned. */
    List<Mark> ground() {
        List<Mark> out = new ArrayList<>(new GroundLayers(view, window, detail()).marks(picture.course()));
        heights.ifPresent(h -> out.addAll(h.lines()));
        heights.ifPresent(h -> out.addAll(h.onGreen(picture.hole().green())));
        return out;
    }

    /** What is laid over the ground. */
    List<Mark> plan() {
        Point pin = view.toSheet(picture.hole().holeLocation());
        strokes.ifPresent(s -> marks.addAll(s.lines()));
        playLine();
        picture.shots().forEach(this::outlines);
        picture.shots().forEach(this::roomLine);
        picture.shots().forEach(this::startLine);
        picture.shots().forEach(this::otherAims);
        picture.shots().forEach(s -> marks.addAll(Furniture.cross(view.toSheet(s.aim()), 5.2, Ink.DO_THIS)));
        shownTroubles().forEach(t -> marks.addAll(Furniture.beware(view.toSheet(t.place()), 6.5)));
        marks.addAll(Furniture.pennant(pin, 15));
        keepMarksFree(pin);
        keepNamesClear();
        letter();
        marks.addAll(lettering.texts());
        return List.copyOf(marks);
    }

    /** Finer textures on smaller scales. */
    private double detail() {
        return Math.max(0.62, Math.min(1, view.pointsPerMetre() / 1.6));
    }

    private void keepMarksFree(Point pin) {
        lettering.keepFree(new Extent(pin.x() - 4, pin.y() - 16, pin.x() + 11, pin.y() + 4));
        for (Shot shot : picture.shots()) {
            Point aim = view.toSheet(shot.aim());
            lettering.keepFree(new Extent(aim.x() - 9, aim.y() - 9, aim.x() + 9, aim.y() + 9));
            lettering.keepFree(view.toSheet(shot.from()), aim);
            shot.room().ifPresent(r -> lettering.keepFree(view.toSheet(r.left()), view.toSheet(r.right())));
            for (HolePicture.Alternative other : shot.alternatives()) {
                Point at = view.toSheet(other.aim());
                lettering.keepFree(new Extent(at.x() - 5, at.y() - 5, at.x() + 5, at.y() + 5));
            }
        }
        for (HolePicture.Trouble trouble : shownTroubles()) {
            Point at = view.toSheet(trouble.place());
            lettering.keepFree(new Extent(at.x() - 6, at.y() - 7, at.x() + 6, at.y() + 4));
        }
    }

    /** The names of other choices stand beside what is drawn finely round a green, not on it. */
    private void keepNamesClear() {
        Box shown = view.groundOf(window);
        for (Area area : picture.course().areas()) {
            if (area.region().box().intersects(shown)) {
                switch (area.kind()) {
                    case GREEN, BUNKER, OUT_OF_BOUNDS, BUILDING ->
                        view.toSheet(area.region()).forEach(lettering::avoid);
                    case WOODS -> lettering.avoidInside(view.toSheet(area.region()));
                    default -> {}
                }
            }
        }
        picture.course().boundary().ifPresent(b -> view.toSheet(b).forEach(lettering::avoid));
        for (Shot shot : picture.shots()) {
            if (FinishOutline.worthwhile(shot.finishes())) {
                outline(shot).half().forEach(lettering::avoid);
                outline(shot).eightInTen().forEach(lettering::avoid);
            }
        }
    }

    private void letter() {
        int number = 0;
        for (Shot shot : picture.shots()) {
            number++;
            lettering.beside(number + "  " + shot.club(), view.toSheet(shot.aim()), 11, 11, Face.BOLD, Ink.DO_THIS);
        }
        for (HolePicture.Trouble trouble : shownTroubles()) {
            lettering.beside(trouble.words(), view.toSheet(trouble.place()), 9, FINE, Face.BOLD, Ink.BEWARE);
        }
        for (Shot shot : picture.shots()) {
            letterShot(shot);
        }
        ticks((at, words) -> lettering.besideIfFree(words, at, 7, FINE, Face.REGULAR, Ink.LINE));
        strokes.ifPresent(s -> s.letter(lettering));
        heights.ifPresent(h -> h.letter(lettering));
    }

    private void letterShot(Shot shot) {
        Point from = view.toSheet(shot.from());
        Point aim = view.toSheet(shot.aim());
        lettering.along(from, aim, Wording.bearing(shot.from().bearingTo(shot.aim())), FINE, Ink.DO_THIS);
        shot.room().ifPresent(r -> {
            String words = "room " + lengths.of(r.left().distanceTo(r.right()));
            lettering.besideIfFree(words, view.toSheet(r.right()), 5, FINE, Face.REGULAR, Ink.LINE);
        });
        if (FinishOutline.worthwhile(shot.finishes())) {
            Outlines outline = outline(shot);
            lettering.onLine(longest(outline.eightInTen()), "80 %", FINE, Ink.LINE);
            lettering.onLine(longest(outline.half()), "50 %", FINE, Ink.LINE);
        }
        for (HolePicture.Alternative other : shot.alternatives()) {
            Point at = view.toSheet(other.aim());
            if (window.contains(at)) {
                lettering.apart(other.club() + " " + other.cost(), at, 7, FINE, Face.ITALIC, Ink.LINE);
            }
        }
    }

    /** Thin dash-dot line; ticks every 50 yd or m tell what is left to the hole. */
    private void playLine() {
        Line line = picture.hole().lineFrom(picture.tee());
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.55).dashed(7.0, 2.0, 1.0, 2.0), view.toSheet(line)));
        ticks((at, words) -> {
            Point ahead = view.toSheet(line.placeAt(line.along(view.toGround(at)) + 1));
            double angle = at.angleTo(ahead) + Math.PI / 2;
            marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.8), Trace.line(at.polar(angle, 4), at.polar(angle, -4))));
        });
    }

    private void ticks(BiConsumer<Point, String> each) {
        Line line = picture.hole().lineFrom(picture.tee());
        double length = line.lengthMetres();
        double step = TICK * lengths.inMetres();
        for (int i = 1; i * step < length - step / 3; i++) {
            each.accept(view.toSheet(line.placeAt(length - i * step)), Long.toString(Math.round(i * TICK)));
        }
    }

    private void outlines(Shot shot) {
        if (!FinishOutline.worthwhile(shot.finishes())) {
            return;
        }
        Outlines outline = outline(shot);
        boolean beside = isBesideAnother(shot);
        Pen eightInTen = Pen.of(Ink.LINE, beside ? 1.4 : 0.9);
        outline(outline.eightInTen(), beside ? eightInTen.dashed(1.2, 4.2) : eightInTen.dashed(3.0, 2.2));
        Pen half = Pen.of(Ink.LINE, beside ? 1.7 : 1.1);
        outline(outline.half(), beside ? half.dashed(1.6, 2.2) : half);
    }

    /** Two choices from one spot are told apart: the outlines of the second are dotted. */
    private boolean isBesideAnother(Shot shot) {
        Shot first = picture.shots().get(0);
        return !shot.equals(first) && shot.from().equals(first.from());
    }

    /** Worked out once: it is drawn first and lettered last. */
    private Outlines outline(Shot shot) {
        return outlines.computeIfAbsent(shot, this::newOutline);
    }

    private record Outlines(List<Trace> half, List<Trace> eightInTen) {}

    private Outlines newOutline(Shot shot) {
        double direction = view.toSheet(shot.from()).angleTo(view.toSheet(shot.aim()));
        FinishOutline finishes =
                new FinishOutline(shot.finishes().stream().map(view::toSheet).toList(), direction);
        return new Outlines(finishes.holding(0.5), finishes.holding(0.8));
    }

    private void outline(List<Trace> traces, Pen pen) {
        List<Trace> seen = traces.stream().filter(t -> t.length() > 18).toList();
        marks.add(Mark.drawn(Pen.of(Ink.PAPER, pen.width() + 1.2), seen));
        marks.add(Mark.drawn(pen, seen));
    }

    private static Trace longest(List<Trace> traces) {
        return traces.stream()
                .max((a, b) -> Double.compare(a.length(), b.length()))
                .orElseThrow();
    }

    private void startLine(Shot shot) {
        Point from = view.toSheet(shot.from());
        Point aim = view.toSheet(shot.aim());
        marks.add(Mark.drawn(Pen.of(Ink.PAPER, 2.4), Trace.line(from, aim)));
        marks.add(Mark.drawn(Pen.of(Ink.DO_THIS, 0.9), Trace.line(from, aim)));
        marks.add(new Mark.Shape(List.of(Trace.circle(from, 2.4)), Ink.LINE, Pen.of(Ink.PAPER, 0.8)));
    }

    /** Room between the troubles: a dimension line. */
    private void roomLine(Shot shot) {
        shot.room().ifPresent(r -> {
            Point left = view.toSheet(r.left());
            Point right = view.toSheet(r.right());
            double angle = left.angleTo(right);
            marks.add(Mark.drawn(Pen.of(Ink.PAPER, 2.6), Trace.line(left, right)));
            marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.8), Trace.line(left, right)));
            for (Point end : List.of(left, right)) {
                marks.add(Mark.drawn(
                        Pen.of(Ink.LINE, 1.2),
                        Trace.line(end.polar(angle + Math.PI / 2, 5), end.polar(angle - Math.PI / 2, 5))));
            }
        });
    }

    /** The next best: crosses without ring. */
    private void otherAims(Shot shot) {
        for (HolePicture.Alternative other : shot.alternatives()) {
            Point at = view.toSheet(other.aim());
            List<Trace> strokes = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                double angle = Math.PI / 4 + i * Math.PI / 2;
                strokes.add(Trace.line(at.polar(angle, 1.3), at.polar(angle, 5)));
            }
            marks.add(Mark.drawn(Pen.of(Ink.PAPER, 2.6), strokes));
            marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.9), strokes));
        }
    }

    private List<HolePicture.Trouble> shownTroubles() {
        return picture.troubles().stream()
                .filter(t -> window.contains(view.toSheet(t.place())))
                .toList();
    }
}
