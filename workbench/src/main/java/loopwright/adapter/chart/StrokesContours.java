package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import loopwright.action.HolePicture.StrokesField;
import loopwright.drawing.Extent;
import loopwright.drawing.Ink;
import loopwright.drawing.Isolines;
import loopwright.drawing.Lettering;
import loopwright.drawing.Mark;
import loopwright.drawing.Pen;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;
import loopwright.geo.Box;
import loopwright.geo.Place;

/** Lines of equal strokes to hole out, with their number on the line, like pressure on a weather chart. */
final class StrokesContours {
    private static final double SIZE = 8.5;
    private static final double STEP = 0.2;

    private final StrokesField field;
    private final SheetView view;
    private final Extent window;
    private final List<Level> levels = new ArrayList<>();

    /** One contour: so many steps, and where it runs. */
    private record Level(long steps, List<Trace> traces) {}

    StrokesContours(StrokesField field, SheetView view, Extent window) {
        this.field = field;
        this.view = view;
        this.window = window;
        double[][] values = values();
        DoubleSummaryStatistics range = Arrays.stream(values)
                .flatMapToDouble(Arrays::stream)
                .filter(v -> !Double.isNaN(v))
                .summaryStatistics();
        for (long i = (long) Math.ceil(range.getMin() / STEP); i * STEP < range.getMax(); i++) {
            levels.add(new Level(i, contour(values, i * STEP)));
        }
    }

    List<Mark> lines() {
        List<Mark> out = new ArrayList<>();
        for (Level level : levels) {
            // Whole strokes are drawn heavier, as hundreds of metres are on a height map.
            boolean whole = level.steps() % Math.round(1 / STEP) == 0;
            out.add(Mark.drawn(Pen.of(Ink.SOFT, whole ? 0.9 : 0.45), level.traces()));
        }
        return out;
    }

    void letter(Lettering lettering) {
        for (Level level : levels) {
            String words = String.format(Locale.ROOT, "%.1f", level.steps() * STEP);
            level.traces().stream()
                    .filter(t -> t.length() > 70)
                    .forEach(t -> lettering.turnedOnLine(t, words, SIZE, Ink.SOFT));
        }
    }

    private double[][] values() {
        Box box = field.box();
        int columns = (int) Math.max(2, Math.floor(box.width() / field.cellMetres()) + 1);
        int rows = (int) Math.max(2, Math.floor(box.height() / field.cellMetres()) + 1);
        double[][] values = new double[rows][columns];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                values[r][c] = field.strokes().applyAsDouble(place(c, r));
            }
        }
        return values;
    }

    private Place place(double column, double row) {
        return new Place(
                field.box().minX() + column * field.cellMetres(), field.box().minY() + row * field.cellMetres());
    }

    private List<Trace> contour(double[][] values, double level) {
        List<Trace> out = new ArrayList<>();
        for (Trace t : Isolines.of(values, level)) {
            Trace onSheet = new Trace(
                    t.points().stream()
                            .map(p -> view.toSheet(place(p.x(), p.y())))
                            .toList(),
                    t.closed());
            if (onSheet.length() > 24 && onSheet.extent().overlaps(window)) {
                out.add(onSheet);
            }
        }
        return out;
    }
}
