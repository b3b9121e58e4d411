package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import loopwright.action.AimField;
import loopwright.action.LengthUnit;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Ink;
import loopwright.drawing.Isolines;
import loopwright.drawing.Lettering;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;

/**
 * Lines of equal expected strokes over the aims from a spot, with their number on the line. A dotted rung crosses the
 * strip at every length that can be played, with the shot that is cheapest there; between rungs the lines are straight.
 */
final class AimContours {
    private static final double SIZE = 9;
    private static final double FINE = 8;
    /** Lines lie at multiples of one of these: the first that makes no more lines than can be read. */
    private static final double[] STEPS = {0.05, 0.1, 0.2, 0.5, 1};

    private static final int MOST_LINES = 12;
    /** Clear of the handle of an aim that lies on it, points. */
    private static final double BESIDE_HANDLE = 18;
    /** Shorter lines carry no number, points. */
    private static final double LETTERED = 40;

    private final AimField field;
    private final SheetView view;
    private final double[][] strokes;
    private final double step;

    AimContours(AimField field, SheetView view) {
        this.field = field;
        this.view = view;
        strokes = field.rows().stream()
                .map(r -> r.aims().stream().mapToDouble(AimField.Aim::strokes).toArray())
                .toArray(double[][]::new);
        double range =
                Arrays.stream(strokes).flatMapToDouble(Arrays::stream).max().orElse(0)
                        - field.best().strokes();
        step = Arrays.stream(STEPS)
                .filter(s -> range / s <= MOST_LINES)
                .findFirst()
                .orElse(STEPS[STEPS.length - 1]);
    }

    List<Mark> marks(Extent sheet, LengthUnit lengths) {
        List<Mark> out = new ArrayList<>();
        Lettering lettering = new Lettering(sheet.grown(-3));
        out.add(Mark.drawn(
                Pen.of(Ink.SOFT, 0.55).dashed(7.0, 2.0, 1.0, 2.0),
                Trace.line(view.toSheet(field.ball()), point(strokes.length - 1, middle()))));
        for (int r = 0; r < strokes.length; r++) {
            rung(r, out, lettering, lengths);
        }
        mark(out, lettering);
        for (long i = (long) Math.ceil(field.best().strokes() / step);
                i * step < field.best().strokes() + MOST_LINES * step;
                i++) {
            // every fifth line is drawn heavier, as on a height map
            contour(i * step, i % 5 == 0 ? 1.5 : 0.8, out, lettering);
        }
        out.addAll(lettering.texts());
        return out;
    }

    private void contour(double level, double width, List<Mark> out, Lettering lettering) {
        List<Trace> traces = Isolines.of(strokes, level).stream()
                .map(t -> new Trace(
                        t.points().stream().map(p -> point(p.y(), p.x())).toList(), t.closed()))
                .toList();
        out.add(Mark.drawn(Pen.of(Ink.PAPER, width + 1.6), traces));
        out.add(Mark.drawn(Pen.of(Ink.LINE, width), traces));
        String words = String.format(Locale.ROOT, step < 0.1 ? "%.2f" : "%.1f", level);
        traces.stream()
                .filter(t -> t.length() > LETTERED)
                .forEach(t -> lettering.turnedOnLine(t, words, SIZE, Ink.LINE));
    }

    private void rung(int row, List<Mark> out, Lettering lettering, LengthUnit lengths) {
        List<Point> points = new ArrayList<>();
        for (int c = 0; c < field.asideMetres().size(); c++) {
            points.add(point(row, c));
        }
        out.add(Mark.drawn(Pen.of(Ink.SOFT, 0.7).dashed(0.7, 3.0), new Trace(points, false)));
        AimField.Row rung = field.rows().get(row);
        lettering.besideIfFree(
                rung.best().club() + " " + lengths.of(rung.metres()),
                points.get(points.size() - 1),
                3,
                FINE,
                Face.ITALIC,
                Ink.LINE);
    }

    /** A small lozenge where the fewest strokes are expected. */
    private void mark(List<Mark> out, Lettering lettering) {
        for (int r = 0; r < strokes.length; r++) {
            for (int c = 0; c < strokes[r].length; c++) {
                if (strokes[r][c] == field.best().strokes()) {
                    Point at = point(r, c);
                    Trace lozenge = Trace.closed(at.plus(0, -4), at.plus(4, 0), at.plus(0, 4), at.plus(-4, 0));
                    out.add(new Mark.Shape(List.of(lozenge), Ink.PAPER, Pen.of(Ink.DO_THIS, 1.6)));
                    lettering.keepFree(new Extent(at.x() - 5, at.y() - 5, at.x() + 5, at.y() + 5));
                    lettering.beside(
                            String.format(
                                    Locale.ROOT, "least %.2f", field.best().strokes()),
                            at,
                            BESIDE_HANDLE,
                            SIZE,
                            Face.BOLD,
                            Ink.DO_THIS);
                }
            }
        }
    }

    private double middle() {
        return (field.asideMetres().size() - 1) / 2.0;
    }

    private Point point(double row, double column) {
        return view.toSheet(field.place(row, column));
    }
}
