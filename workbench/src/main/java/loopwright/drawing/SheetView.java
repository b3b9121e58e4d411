package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;
import loopwright.geo.Box;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/**
 * How ground is laid on the sheet: the place shown at a point, the bearing that points up, and the scale.
 *
 * @param up bearing that points to the top of the sheet, radians clockwise from north
 * @param pointsPerMetre sheet points for one metre of ground; 2834.65 / N at a scale of 1:N
 */
public record SheetView(Place centre, Point at, double up, double pointsPerMetre) {
    public static final double POINTS_PER_METRE_OF_PAPER = 72 / 0.0254;

    public Point toSheet(Place place) {
        double dx = place.x() - centre.x();
        double dy = place.y() - centre.y();
        double forward = dx * Math.sin(up) + dy * Math.cos(up);
        double right = dx * Math.cos(up) - dy * Math.sin(up);
        return new Point(at.x() + right * pointsPerMetre, at.y() - forward * pointsPerMetre);
    }

    public Place toGround(Point point) {
        double right = (point.x() - at.x()) / pointsPerMetre;
        double forward = (at.y() - point.y()) / pointsPerMetre;
        return centre.offset(up, forward, right);
    }

    public Trace toSheet(Line line) {
        return new Trace(line.places().stream().map(this::toSheet).toList(), false);
    }

    /** Every ring of a region, closed. */
    public List<Trace> toSheet(Region region) {
        List<Trace> out = new ArrayList<>();
        for (List<List<Place>> polygon : region.polygons()) {
            for (List<Place> ring : polygon) {
                out.add(ring(ring));
            }
        }
        return out;
    }

    /** The smallest box of ground that holds what an extent of the sheet shows. */
    public Box groundOf(Extent extent) {
        return Box.around(
                Trace.rectangle(extent).points().stream().map(this::toGround).toList());
    }

    private Trace ring(List<Place> ring) {
        List<Point> points = new ArrayList<>();
        for (Place place : ring.subList(0, ring.size() - 1)) {
            points.add(toSheet(place));
        }
        return new Trace(points, true);
    }
}
