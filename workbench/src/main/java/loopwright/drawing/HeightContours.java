package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.HeightField;
import loopwright.units.Distance;

/**
 * Height contours in feet, long dashes with their number on the line. On greens contours half a foot apart, only where the
 * heights are known finely enough to show a green's slope.
 */
public final class HeightContours {
    private static final double SIZE = 8.5;
    private static final double GREEN_STEP_FEET = 0.5;
    private static final int MOST_LINES = 14;
    private static final double[] STEPS_FEET = {2, 5, 10, 20, 50, 100, 200};

    private final HeightField field;
    private final SheetView view;
    private final List<Level> levels = new ArrayList<>();

    /** One contour and its height. */
    private record Level(double feet, List<Trace> traces) {}

    public HeightContours(HeightField field, SheetView view, Extent window) {
        this.field = field;
        this.view = view;
        double spacing = Math.max(3, field.resolutionMetres() / 2 * view.pointsPerMetre());
        levels.addAll(trace(window.grown(spacing), Math.min(12, spacing), 0));
    }

    public List<Mark> lines() {
        List<Mark> out = new ArrayList<>();
        levels.forEach(l -> out.add(Mark.drawn(Pen.of(Ink.CONTOUR, 0.6).dashed(9.0, 2.5), l.traces())));
        return out;
    }

    public void letter(Lettering lettering) {
        for (Level level : levels) {
            for (Trace trace : level.traces()) {
                if (trace.length() > 90) {
                    lettering.turnedOnLine(trace, Math.round(level.feet()) + " ft", SIZE, Ink.CONTOUR);
                }
            }
        }
    }

    /** Contours inside a green, or nothing where the heights are too coarse. */
    public List<Mark> onGreen(Region green) {
        if (!field.showsGreens()) {
            return List.of();
        }
        List<Trace> rings = view.toSheet(green);
        Extent extent =
                Extent.around(rings.stream().flatMap(r -> r.points().stream()).toList());
        double spacing = Math.max(1, field.resolutionMetres() / 2 * view.pointsPerMetre());
        List<Trace> lines = trace(extent.grown(spacing), spacing, GREEN_STEP_FEET).stream()
                .flatMap(l -> l.traces().stream())
                .toList();
        return rings.size() == 1
                ? List.of(new Mark.Window(rings.get(0), List.of(Mark.drawn(Pen.of(Ink.GREEN_LINE, 0.5), lines))))
                : List.of();
    }

    /** @param stepFeet between contours; 0: a step that gives at most {@link #MOST_LINES} of them */
    private List<Level> trace(Extent extent, double spacing, double stepFeet) {
        int columns = (int) Math.ceil(extent.width() / spacing) + 1;
        int rows = (int) Math.ceil(extent.height() / spacing) + 1;
        double[][] feet = new double[rows][columns];
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                Place place = view.toGround(new Point(extent.left() + c * spacing, extent.top() + r * spacing));
                boolean known = field.covers(place);
                feet[r][c] =
                        known ? Distance.ofMetres(field.heightMetres(place)).feet() : Double.NaN;
                if (known) {
                    least = Math.min(least, feet[r][c]);
                    most = Math.max(most, feet[r][c]);
                }
            }
        }
        double step = stepFeet > 0 ? stepFeet : step(most - least);
        List<Level> out = new ArrayList<>();
        for (long i = (long) Math.floor(least / step) + 1; i * step < most; i++) {
            List<Trace> traces = Isolines.of(feet, i * step).stream()
                    .map(t -> onSheet(t, extent, spacing))
                    .filter(t -> t.length() > (stepFeet > 0 ? 0 : 20))
                    .toList();
            out.add(new Level(i * step, traces));
        }
        return out;
    }

    private static Trace onSheet(Trace t, Extent extent, double spacing) {
        return new Trace(
                t.points().stream()
                        .map(p -> new Point(extent.left() + p.x() * spacing, extent.top() + p.y() * spacing))
                        .toList(),
                t.closed());
    }

    private static double step(double rangeFeet) {
        for (double step : STEPS_FEET) {
            if (rangeFeet / step <= MOST_LINES) {
                return step;
            }
        }
        return STEPS_FEET[STEPS_FEET.length - 1];
    }
}
