package loopwright.geo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * An exact area: one or more polygons, each an outer ring and its holes. Immutable; JTS does the geometry and is
 * never shown. A place on the edge belongs to the region.
 */
public final class Region {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Geometry geometry;
    private final IndexedPointInAreaLocator locator;
    private final IndexedFacetDistance edge;
    private final Box box;

    private Region(Geometry polygonal) {
        geometry = polygonal;
        locator = new IndexedPointInAreaLocator(polygonal);
        edge = new IndexedFacetDistance(polygonal.getBoundary());
        Envelope e = polygonal.getEnvelopeInternal();
        box = new Box(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
    }

    /** One polygon: its outer ring and the rings cut out of it; rings may be closed or not. */
    public static Region of(List<Place> outer, List<List<Place>> holes) {
        LinearRing shell = ring(outer);
        LinearRing[] cuts = holes.stream().map(Region::ring).toArray(LinearRing[]::new);
        return ofGeometry(FACTORY.createPolygon(shell, cuts));
    }

    /** A simple polygon. */
    public static Region of(List<Place> outer) {
        return of(outer, List.of());
    }

    /** Several polygons, each an outer ring and then its holes, as {@link #polygons()} gives them. */
    public static Region ofPolygons(List<List<List<Place>>> polygons) {
        Polygon[] parts = polygons.stream()
                .map(rings -> FACTORY.createPolygon(
                        ring(rings.get(0)),
                        rings.subList(1, rings.size()).stream()
                                .map(Region::ring)
                                .toArray(LinearRing[]::new)))
                .toArray(Polygon[]::new);
        return ofGeometry(parts.length == 1 ? parts[0] : FACTORY.createMultiPolygon(parts));
    }

    /** A regular polygon of 32 corners whose corners lie on the circle. */
    public static Region circle(Place centre, double radiusMetres) {
        return ofGeometry(
                FACTORY.createPoint(new Coordinate(centre.x(), centre.y())).buffer(radiusMetres, 8));
    }

    /** A strip of the given half width around a line, with flat ends. */
    public static Region strip(Line line, double halfWidthMetres) {
        Coordinate[] c =
                line.places().stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
        return ofGeometry(FACTORY.createLineString(c)
                .buffer(halfWidthMetres, 8, org.locationtech.jts.operation.buffer.BufferParameters.CAP_FLAT));
    }

    /** The union of several regions. */
    public static Region union(List<Region> regions) {
        return ofGeometry(FACTORY.createGeometryCollection(
                        regions.stream().map(r -> r.geometry).toArray(Geometry[]::new))
                .union());
    }

    /** What is left when another region is cut out; empty where nothing is left. */
    public Optional<Region> without(Region other) {
        Geometry left = geometry.difference(other.geometry);
        return left.getArea() > 0 ? Optional.of(ofGeometry(left)) : Optional.empty();
    }

    /**
     * True if the polygon of these rings obeys the rules of simple features: closed, not crossing itself, holes
     * inside. What does not can still be given to {@link #of}, which mends it.
     */
    public static boolean isSound(List<Place> outer, List<List<Place>> holes) {
        return outer.size() >= 3
                && FACTORY.createPolygon(
                                ring(outer), holes.stream().map(Region::ring).toArray(LinearRing[]::new))
                        .isValid();
    }

    private static Region ofGeometry(Geometry raw) {
        Geometry sound = raw.isValid() ? raw : GeometryFixer.fix(raw);
        if (sound.isEmpty() || !(sound.getArea() > 0)) {
            throw new IllegalArgumentException("the rings enclose no area");
        }
        return new Region(sound);
    }

    private static LinearRing ring(List<Place> places) {
        List<Coordinate> out = new ArrayList<>();
        for (Place p : places) {
            out.add(new Coordinate(p.x(), p.y()));
        }
        if (out.size() < 3) {
            throw new IllegalArgumentException("a ring needs three places or more, not " + out.size());
        }
        if (!out.get(0).equals2D(out.get(out.size() - 1))) {
            out.add(new Coordinate(out.get(0)));
        }
        if (out.size() < 4) {
            throw new IllegalArgumentException("a ring needs three different places or more");
        }
        return FACTORY.createLinearRing(out.toArray(Coordinate[]::new));
    }

    public boolean contains(double x, double y) {
        return box.contains(x, y) && locator.locate(new Coordinate(x, y)) != Location.EXTERIOR;
    }

    public boolean contains(Place place) {
        return contains(place.x(), place.y());
    }

    /** Distance to the nearest edge, metres, zero or more, inside as well as outside. */
    public double distanceToEdge(Place place) {
        return edge.distance(FACTORY.createPoint(new Coordinate(place.x(), place.y())));
    }

    /** Distance to the region, metres; zero inside. */
    public double distanceTo(Place place) {
        return contains(place) ? 0 : distanceToEdge(place);
    }

    public boolean intersects(Region other) {
        return box.intersects(other.box) && geometry.intersects(other.geometry);
    }

    /** Area shared with another region, square metres. */
    public double sharedAreaSquareMetres(Region other) {
        return box.intersects(other.box) ? geometry.intersection(other.geometry).getArea() : 0;
    }

    public double areaSquareMetres() {
        return geometry.getArea();
    }

    public Place centre() {
        Point p = geometry.getCentroid();
        return new Place(p.getX(), p.getY());
    }

    /** A place inside the region, also when the centre is not. */
    public Place insidePlace() {
        Point p = geometry.getInteriorPoint();
        return new Place(p.getX(), p.getY());
    }

    public Box box() {
        return box;
    }

    /** The region grown (or, with a negative width, shrunk) by a width in metres; shrinking to nothing fails. */
    public Region grown(double metres) {
        return ofGeometry(geometry.buffer(metres));
    }

    /** Polygons of the region: for each, the outer ring first and then its holes; every ring closed. */
    public List<List<List<Place>>> polygons() {
        List<List<List<Place>>> out = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon p) {
                List<List<Place>> rings = new ArrayList<>();
                rings.add(places(p.getExteriorRing()));
                for (int h = 0; h < p.getNumInteriorRing(); h++) {
                    rings.add(places(p.getInteriorRingN(h)));
                }
                out.add(List.copyOf(rings));
            }
        }
        return List.copyOf(out);
    }

    private static List<Place> places(LinearRing ring) {
        List<Place> out = new ArrayList<>();
        for (Coordinate c : ring.getCoordinates()) {
            out.add(new Place(c.x, c.y));
        }
        return List.copyOf(out);
    }

    /** The region under a map of the plane onto itself (mirror, turn, shift). */
    public Region mapped(java.util.function.UnaryOperator<Place> map) {
        List<Region> parts = new ArrayList<>();
        for (List<List<Place>> polygon : polygons()) {
            List<List<Place>> rings = new ArrayList<>();
            for (List<Place> r : polygon) {
                rings.add(r.stream().map(map).toList());
            }
            parts.add(of(rings.get(0), rings.subList(1, rings.size())));
        }
        return parts.size() == 1 ? parts.get(0) : union(parts);
    }
}
