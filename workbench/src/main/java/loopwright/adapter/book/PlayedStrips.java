package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.Book;
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
import loopwright.geo.Place;

/** Holes as they were played, small strips beside each other, play running up the page; each at a scale of its own. */
final class PlayedStrips {
    private static final double GAP = 7;
    private static final double HEAD = 13;
    private static final double SIDE = 7;
    private static final double LETTERS = 9;

    private final Book.PlayedGround ground;
    private final Extent frame;
    private final int columns;

    /** As many columns whether all are filled or not, so that strips of several rows are alike. */
    PlayedStrips(Book.PlayedGround ground, Extent frame, int columns) {
        this.ground = ground;
        this.frame = frame;
        this.columns = columns;
    }

    Mark figure() {
        double width = (frame.width() - (columns - 1) * GAP) / columns;
        List<Mark> out = new ArrayList<>();
        for (int i = 0; i < ground.holes().size(); i++) {
            double left = frame.left() + i * (width + GAP);
            Book.PlayedHole hole = ground.holes().get(i);
            out.add(Mark.text(
                    hole.heading(), new Point(left, frame.top() + 9), Mark.Anchor.START, LETTERS, Face.BOLD, Ink.LINE));
            out.addAll(strip(hole, new Extent(left, frame.top() + HEAD, left + width, frame.bottom())));
        }
        return new Mark.Tagged(Mark.Tag.FIGURE, ground.words(), 0, out);
    }

    private List<Mark> strip(Book.PlayedHole hole, Extent window) {
        SheetView view = view(hole, window);
        double detail = Math.max(0.35, Math.min(1, view.pointsPerMetre() / 1.6));
        List<Mark> inside = new ArrayList<>(new GroundLayers(view, window, detail).marks(ground.course()));
        inside.add(Mark.drawn(
                Pen.of(Ink.LINE, 0.4).dashed(5.0, 2.0, 1.0, 2.0),
                view.toSheet(hole.hole().lineFrom(hole.tee()))));
        List<Point> dots =
                hole.spots().stream().map(s -> view.toSheet(s.place())).toList();
        List<Point> way = new ArrayList<>(dots);
        Point pin = view.toSheet(hole.hole().holeLocation());
        if (hole.holed()) {
            way.add(pin);
        }
        if (way.size() > 1) {
            Trace line = new Trace(way, false);
            inside.add(Mark.drawn(Pen.of(Ink.PAPER, 2.0), line));
            inside.add(Mark.drawn(Pen.of(Ink.DO_THIS, 0.9), line));
        }
        Lettering lettering = new Lettering(window.grown(-1));
        for (int i = 0; i < dots.size(); i++) {
            inside.add(new Mark.Shape(
                    List.of(Trace.circle(dots.get(i), 2.1)),
                    hole.spots().get(i).noted() ? Ink.LINE : Ink.PAPER,
                    Pen.of(Ink.LINE, 0.8)));
        }
        inside.addAll(Furniture.pennant(pin, 9));
        for (int i = 0; i < dots.size(); i++) {
            lettering.besideIfFree(Integer.toString(i + 1), dots.get(i), 5, LETTERS, Face.REGULAR, Ink.LINE);
        }
        inside.addAll(lettering.texts());
        return List.of(
                new Mark.Window(Trace.rectangle(window), inside),
                Mark.drawn(Pen.of(Ink.LINE, 0.6), Trace.rectangle(window)));
    }

    private static SheetView view(Book.PlayedHole hole, Extent window) {
        double up = hole.tee().bearingTo(hole.hole().holeLocation());
        SheetView flat = new SheetView(hole.tee(), new Point(0, 0), up, 1);
        List<Place> shown = new ArrayList<>(hole.hole().lineFrom(hole.tee()).places());
        hole.hole().green().polygons().forEach(p -> shown.addAll(p.get(0)));
        hole.spots().forEach(s -> shown.add(s.place()));
        Extent all = Extent.around(shown.stream().map(flat::toSheet).toList());
        double perMetre = Math.min(
                (window.width() - 2 * SIDE) / Math.max(1, all.width()),
                (window.height() - 2 * SIDE - 6) / Math.max(1, all.height()));
        return new SheetView(flat.toGround(all.centre()), window.centre().plus(0, 3), up, perMetre);
    }
}
