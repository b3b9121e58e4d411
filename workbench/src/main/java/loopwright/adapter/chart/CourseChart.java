package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.HoleScreens;
import loopwright.action.LengthUnit;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.GroundLayers;
import loopwright.drawing.HeightContours;
import loopwright.drawing.Ink;
import loopwright.drawing.LabelRoom;
import loopwright.drawing.Lettering;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.SvgPage;
import loopwright.drawing.Trace;
import loopwright.geo.Box;
import loopwright.geo.Place;

/** The whole course on one sheet, north up: ground, holes with their numbers, and a panel that explains it. */
final class CourseChart {
    /** Scales an engraver would choose, 1:N. */
    private static final int[] SCALES = {
        1000, 1250, 1500, 2000, 2500, 3000, 3500, 4000, 4500, 5000, 6000, 7500, 10_000, 15_000
    };

    private static final double WIDEST = 900;
    private static final double TALLEST = 760;
    private static final double MARGIN = 26;
    private static final double PANEL = 232;
    private static final double STATION = 15;

    private final Course course;
    private final int scale;
    private final SheetView view;
    private final Extent window;

    private CourseChart(Course course) {
        this.course = course;
        Box ground = groundOf(course);
        scale = scaleFor(ground);
        double perMetre = SheetView.POINTS_PER_METRE_OF_PAPER / scale;
        double width = Math.max(ground.width() * perMetre, 320);
        double height = Math.max(ground.height() * perMetre, CoursePanel.height(course) - 2 * MARGIN);
        window = new Extent(MARGIN, MARGIN, MARGIN + width, MARGIN + height);
        view = new SheetView(
                new Place((ground.minX() + ground.maxX()) / 2, (ground.minY() + ground.maxY()) / 2),
                window.centre(),
                0,
                perMetre);
    }

    static Drawing of(Course course, LengthUnit lengths) {
        return new CourseChart(course).draw(lengths);
    }

    /** The ground with its holes alone, for a screen. */
    static HoleScreens.Ground groundOn(Course course) {
        return new OnScreen(new CourseChart(course));
    }

    private record OnScreen(CourseChart chart) implements HoleScreens.Ground {
        @Override
        public double width() {
            return chart.window.right() + MARGIN;
        }

        @Override
        public double height() {
            return chart.window.bottom() + MARGIN;
        }

        @Override
        public String ground() {
            return SvgPage.marksOf(chart.ground());
        }

        @Override
        public double[] at(Place place) {
            Point p = chart.view.toSheet(place);
            return new double[] {p.x(), p.y()};
        }

        @Override
        public Place placeAt(double x, double y) {
            return chart.view.toGround(new Point(x, y));
        }
    }

    private Drawing draw(LengthUnit lengths) {
        double width = window.right() + PANEL + MARGIN;
        double height = window.bottom() + MARGIN;
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Window(Trace.rectangle(window), ground()));
        marks.add(Mark.drawn(Pen.of(Ink.LINE, 0.6), Trace.rectangle(window)));
        marks.addAll(Furniture.neatLine(new Extent(0, 0, width, height).grown(-12)));
        Extent panel = new Extent(window.right() + 18, MARGIN, width - MARGIN, window.bottom());
        marks.addAll(new CoursePanel(course, lengths, panel).marks(view, scale));
        return new Drawing("Chart of " + course.name(), width, height, marks);
    }

    private List<Mark> ground() {
        List<Mark> out = new ArrayList<>(new GroundLayers(view, window, 0.62).marks(course));
        course.heights().ifPresent(h -> out.addAll(new HeightContours(h, view, window).lines()));
        out.addAll(holes());
        return out;
    }

    private List<Mark> holes() {
        List<Mark> out = new ArrayList<>();
        List<Trace> lines = new ArrayList<>();
        LabelRoom room = new LabelRoom(window.grown(-2));
        for (Hole hole : course.holes()) {
            lines.add(view.toSheet(hole.line()));
            Point pin = view.toSheet(hole.holeLocation());
            room.take(new Extent(pin.x() - 4, pin.y() - 14, pin.x() + 9, pin.y() + 3));
        }
        out.add(Mark.drawn(Pen.of(Ink.SOFT, 0.6).dashed(5.0, 2.0), lines));
        for (Hole hole : course.holes()) {
            out.addAll(Furniture.pennant(view.toSheet(hole.holeLocation()), 12));
        }
        Lettering lettering = new Lettering(window.grown(-3));
        for (Hole hole : course.holes()) {
            Extent box = stationBox(hole, room);
            lettering.keepFree(box);
            out.addAll(station(hole, box));
        }
        course.heights().ifPresent(h -> new HeightContours(h, view, window).letter(lettering));
        out.addAll(lettering.texts());
        return out;
    }

    /** The square for a hole's number, beside its tee or along its line where there is room. */
    private Extent stationBox(Hole hole, LabelRoom room) {
        double length = hole.line().lengthMetres();
        List<Extent> candidates = new ArrayList<>();
        for (double share : new double[] {0, 0.08, 0.16, 0.3, 0.45}) {
            Point on = view.toSheet(hole.line().placeAt(share * length));
            Point ahead = view.toSheet(hole.line().placeAt(share * length + 5));
            double angle = on.angleTo(ahead);
            if (share == 0) {
                candidates.add(square(on.polar(angle, -15)));
            }
            candidates.add(square(on.polar(angle + Math.PI / 2, 15)));
            candidates.add(square(on.polar(angle - Math.PI / 2, 15)));
        }
        return room.takeBest(candidates);
    }

    private static List<Mark> station(Hole hole, Extent box) {
        Point c = box.centre();
        return List.of(
                new Mark.Shape(List.of(Trace.rectangle(box)), Ink.PAPER, Pen.of(Ink.LINE, 0.9)),
                Mark.text(
                        Integer.toString(hole.number()),
                        c.plus(0, 3.7),
                        Mark.Anchor.MIDDLE,
                        10.5,
                        Face.BOLD,
                        Ink.LINE));
    }

    private static Extent square(Point c) {
        double half = STATION / 2;
        return new Extent(c.x() - half, c.y() - half, c.x() + half, c.y() + half);
    }

    private static int scaleFor(Box ground) {
        for (int n : SCALES) {
            double perMetre = SheetView.POINTS_PER_METRE_OF_PAPER / n;
            if (ground.width() * perMetre <= WIDEST && ground.height() * perMetre <= TALLEST) {
                return n;
            }
        }
        return SCALES[SCALES.length - 1];
    }

    /** Ground to be shown: holes and what is played on around them, and the border if it stays near. */
    private static Box groundOf(Course course) {
        Box box = null;
        for (Hole hole : course.holes()) {
            Box own = Box.around(hole.line().places()).union(hole.green().box()).grown(60);
            box = box == null ? own : box.union(own);
        }
        if (box == null) {
            box = course.areas().stream()
                    .filter(a -> a.kind() != AreaKind.ROAD)
                    .map(a -> a.region().box())
                    .reduce(Box::union)
                    .orElse(new Box(-100, -100, 100, 100));
        }
        if (course.boundary().isPresent()) {
            Box border = course.boundary().get().box().grown(42);
            if (border.width() <= box.width() * 1.6 && border.height() <= box.height() * 1.6) {
                box = box.union(border);
            }
        }
        return box;
    }
}
