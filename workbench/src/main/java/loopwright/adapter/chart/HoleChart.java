package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.HolePicture;
import loopwright.action.LengthUnit;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Paragraph;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;
import loopwright.geo.Line;
import loopwright.geo.Place;

/** One hole on one sheet, play running up the page: ground and plan at the left, the plan in words at the right. */
final class HoleChart {
    private static final int[] SCALES = {
        600, 750, 1000, 1250, 1500, 1750, 2000, 2250, 2500, 2750, 3000, 3500, 4000, 5000, 6000, 8000
    };
    private static final double WIDTH = 612;
    private static final double HEIGHT = 792;
    private static final double EDGE = 26;
    private static final double PANEL = 196;
    private static final double HEAD = 52;

    private final HolePicture picture;
    private final Hole hole;
    private final List<Mark> marks = new ArrayList<>();

    private HoleChart(HolePicture picture) {
        this.picture = picture;
        this.hole = picture.hole();
    }

    static Drawing of(HolePicture picture) {
        return new HoleChart(picture).draw();
    }

    private Drawing draw() {
        marks.addAll(Furniture.neatLine(new Extent(0, 0, WIDTH, HEIGHT).grown(-12)));
        double top = head();
        double bottom = HEIGHT - EDGE - notes();
        Extent window = new Extent(EDGE, top, WIDTH - EDGE - PANEL - 16, bottom);
        SheetView view = view(window);
        marks.add(new Mark.Window(
                Trace.rectangle(window), new HoleOverlay(picture, view, window, LengthUnit.YARDS).marks()));
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.6), Trace.rectangle(window)));
        Extent side = new Extent(window.right() + 16, top, WIDTH - EDGE, bottom);
        marks.addAll(new HolePanel(picture, side, window).marks(view));
        return new Drawing("Hole " + hole.number() + " of " + picture.course().name(), WIDTH, HEIGHT, marks);
    }

    /** Title, and a band that says what nobody has looked at; returns where the rest begins. */
    private double head() {
        double base = EDGE + 20;
        String number = Integer.toString(hole.number());
        Extent box = new Extent(EDGE, EDGE, EDGE + 34, EDGE + 30);
        marks.add(new Mark.Shape(List.of(Trace.rectangle(box)), Ink.PAPER, Pen.of(Ink.LINE, 1.4)));
        marks.add(
                Mark.text(number, new Point(box.centre().x(), base + 2), Mark.Anchor.MIDDLE, 20, Face.BOLD, Ink.LINE));
        String what = "par " + hole.par() + ", " + Wording.yards(picture.lengthMetres()) + " from "
                + Wording.tees(picture.tees());
        marks.add(Mark.text(what, new Point(box.right() + 10, base - 6), Mark.Anchor.START, 13, Face.BOLD, Ink.LINE));
        String where = picture.course().name()
                + (hole.strokeIndex().isPresent()
                        ? ", stroke index " + hole.strokeIndex().getAsInt()
                        : "");
        marks.add(Mark.text(where, new Point(box.right() + 10, base + 9), Mark.Anchor.START, 9.5));
        if (!picture.expected().isEmpty()) {
            Point right = new Point(WIDTH - EDGE, base - 6);
            marks.add(Mark.text(picture.expected(), right, Mark.Anchor.END, 13, Face.BOLD, Ink.LINE));
            marks.add(Mark.text("expected strokes", right.plus(0, 15), Mark.Anchor.END, 9.5));
        }
        double y = EDGE + HEAD - 12;
        for (String warning : warnings()) {
            marks.addAll(Furniture.beware(new Point(EDGE + 7, y + 6), 6.5));
            Paragraph text = Paragraph.of(warning, WIDTH - 2 * EDGE - 24, 9.5, Face.BOLD);
            marks.addAll(text.marks(new Point(EDGE + 20, y), Ink.BEWARE));
            y += text.height() + 4;
        }
        return y;
    }

    private List<String> warnings() {
        List<String> out = new ArrayList<>();
        if (picture.unsurveyed()) {
            out.add("Unsurveyed: nobody has checked " + unchecked(hole.survey())
                    + " here. Empty ground on this chart is not known to be open.");
        }
        if (hole.greenAssumed()) {
            out.add("The map has no green here; a circle of 12 yards stands in for it.");
        }
        return out;
    }

    private static String unchecked(HoleSurvey survey) {
        List<String> missing = new ArrayList<>();
        if (!survey.trees()) {
            missing.add("trees");
        }
        if (!survey.outOfBounds()) {
            missing.add("out of bounds");
        }
        if (!survey.penaltyAreas()) {
            missing.add("penalty areas");
        }
        int last = missing.size() - 1;
        return last == 0 ? missing.get(0) : String.join(", ", missing.subList(0, last)) + " and " + missing.get(last);
    }

    /** Notes along the bottom; returns the height they take. */
    private double notes() {
        List<Paragraph> texts = picture.notes().stream()
                .map(n -> Paragraph.of(n, WIDTH - 2 * EDGE, 10, Face.REGULAR))
                .toList();
        double height = texts.stream().mapToDouble(t -> t.height() + 3).sum();
        double y = HEIGHT - EDGE - height + 4;
        for (Paragraph text : texts) {
            marks.addAll(text.marks(new Point(EDGE, y), Ink.LINE));
            y += text.height() + 3;
        }
        return height == 0 ? 0 : height + 4;
    }

    /** The largest scale at which tee, line, green and every aim fit, straight up the page from tee to green. */
    private SheetView view(Extent window) {
        Line play = hole.lineFrom(picture.tee());
        double up = picture.tee().bearingTo(hole.holeLocation());
        List<Place> shown = new ArrayList<>(play.places());
        hole.green().polygons().forEach(p -> shown.addAll(p.get(0)));
        picture.shots().forEach(s -> shown.add(s.aim()));
        SheetView unit = new SheetView(picture.tee(), new Point(0, 0), up, 1);
        Extent ground = Extent.around(shown.stream().map(unit::toSheet).toList());
        for (int n : SCALES) {
            double perMetre = SheetView.POINTS_PER_METRE_OF_PAPER / n;
            boolean fits = ground.width() * perMetre + 110 <= window.width()
                    && ground.height() * perMetre + 64 <= window.height();
            if (fits || n == SCALES[SCALES.length - 1]) {
                return new SheetView(unit.toGround(ground.centre()), window.centre(), up, perMetre);
            }
        }
        throw new IllegalStateException("no scale");
    }
}
