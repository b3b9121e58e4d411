package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
import loopwright.course.Hole;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.GroundLayers;
import loopwright.drawing.Ink;
import loopwright.drawing.Lettering;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;
import loopwright.geo.Place;

/** The whole course, north up, small: the holes' lines with their numbers. */
final class CourseVignette {
    private final Book.CourseGround ground;
    private final Extent window;

    CourseVignette(Book.CourseGround ground, Extent window) {
        this.ground = ground;
        this.window = window;
    }

    Mark figure() {
        SheetView view = view();
        List<Mark> inside = new ArrayList<>(new GroundLayers(view, window, 0.35).marks(ground.course()));
        Lettering lettering = new Lettering(window.grown(-2));
        for (Hole hole : ground.holes()) {
            Trace line = view.toSheet(hole.line());
            inside.add(Mark.drawn(Pen.of(Ink.LINE, 0.8), line));
            Point tee = line.points().get(0);
            inside.add(Mark.filled(Ink.LINE, Trace.circle(tee, 1.6)));
            lettering.beside(Integer.toString(hole.number()), tee, 4, 9, Face.BOLD, Ink.LINE);
        }
        inside.addAll(lettering.texts());
        return new Mark.Tagged(
                Mark.Tag.FIGURE,
                ground.words(),
                0,
                List.of(
                        new Mark.Window(Trace.rectangle(window), inside),
                        Mark.drawn(Pen.of(Ink.LINE, 0.7), Trace.rectangle(window))));
    }

    private SheetView view() {
        SheetView unit = new SheetView(new Place(0, 0), new Point(0, 0), 0, 1);
        List<Point> shown = new ArrayList<>();
        ground.holes().forEach(h -> h.line().places().forEach(p -> shown.add(unit.toSheet(p))));
        Extent all = Extent.around(shown);
        double perMetre = Math.min(
                (window.width() - 24) / Math.max(1, all.width()), (window.height() - 20) / Math.max(1, all.height()));
        return new SheetView(unit.toGround(all.centre()), window.centre(), 0, perMetre);
    }
}
