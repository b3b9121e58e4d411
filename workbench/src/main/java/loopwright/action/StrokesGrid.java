package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import loopwright.course.Hole;
import loopwright.geo.Box;
import loopwright.geo.Place;
import loopwright.strategy.PolicyEvaluation;

/** Strokes to hole out over the ground of a hole, read off a solution once, so that the solution need not be kept. */
final class StrokesGrid {
    private static final double MARGIN_METRES = 45;
    private static final double CELL_METRES = 4;

    private final Box box;
    private final int columns;
    private final double[] strokes;

    private StrokesGrid(Box box, PolicyEvaluation values) {
        this.box = box;
        columns = (int) Math.ceil(box.width() / CELL_METRES) + 1;
        strokes = new double[columns * ((int) Math.ceil(box.height() / CELL_METRES) + 1)];
        for (int i = 0; i < strokes.length; i++) {
            int row = i / columns;
            int column = i % columns;
            strokes[i] =
                    values.expectedFrom(new Place(box.minX() + column * CELL_METRES, box.minY() + row * CELL_METRES));
        }
    }

    static HolePicture.StrokesField of(Hole hole, Place tee, PolicyEvaluation values) {
        List<Place> places = new ArrayList<>(hole.lineFrom(tee).places());
        hole.green().polygons().forEach(p -> places.addAll(p.get(0)));
        StrokesGrid grid = new StrokesGrid(Box.around(places).grown(MARGIN_METRES), values);
        return new HolePicture.StrokesField(grid.box, CELL_METRES, grid::nearest);
    }

    private double nearest(Place place) {
        long column = Math.round((place.x() - box.minX()) / CELL_METRES);
        long cell = Math.round((place.y() - box.minY()) / CELL_METRES) * columns + column;
        boolean inside = column >= 0 && column < columns && cell >= 0 && cell < strokes.length;
        return inside ? strokes[(int) cell] : Double.NaN;
    }
}
