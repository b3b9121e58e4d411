package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.action.ImportRecord;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** Brings map shapes into the local frame and mends what is not sound, with a record for each mending. */
final class ShapeMender {
    /** A golf area is never this large; it is a sign of a broken file, and would hide the whole course. */
    private static final double LARGEST_GOLF_AREA_SQUARE_METRES = 3e6;

    private final LocalFrame frame;
    private final List<ImportRecord> records;

    ShapeMender(LocalFrame frame, List<ImportRecord> records) {
        this.frame = frame;
        this.records = records;
    }

    /** The element as an area if its tags speak of one, else as what was drawn; empty if nothing can be made of it. */
    Optional<SiteElement> toSite(MapElement element, AreaReading reading) {
        Place anchor = frame.toPlace(element.shape().anchor());
        try {
            if (element.shape() instanceof MapShape.Polygons polygons) {
                return area(element, polygons, anchor, reading);
            }
            if (element.shape() instanceof MapShape.Path path) {
                return path(element, path, anchor, reading);
            }
            return Optional.of(point(element, anchor, reading));
        } catch (IllegalArgumentException e) {
            if (MapTags.isGolf(element.tags())) {
                records.add(ShapeOddities.noArea(element));
            }
            return Optional.empty();
        }
    }

    private Optional<SiteElement> area(
            MapElement element, MapShape.Polygons polygons, Place anchor, AreaReading reading) {
        List<List<List<Place>>> parts = new ArrayList<>();
        boolean sound = true;
        for (MapShape.Rings rings : polygons.parts()) {
            List<List<Place>> part = new ArrayList<>();
            part.add(places(rings.outer()));
            rings.holes().forEach(h -> part.add(places(h)));
            sound &= Region.isSound(part.get(0), part.subList(1, part.size()));
            parts.add(part);
        }
        if (!sound && reading.isGolf()) {
            records.add(ShapeOddities.crossingRing(element));
        }
        return checked(element, Region.ofPolygons(parts), anchor);
    }

    private Optional<SiteElement> checked(MapElement element, Region region, Place anchor) {
        if (element.golf() && region.areaSquareMetres() > LARGEST_GOLF_AREA_SQUARE_METRES) {
            records.add(ShapeOddities.tooLarge(element, region.areaSquareMetres()));
            return Optional.empty();
        }
        return Optional.of(new SiteElement(element, Optional.of(region), Optional.empty(), anchor));
    }

    private Optional<SiteElement> path(MapElement element, MapShape.Path path, Place anchor, AreaReading reading) {
        List<Place> places = places(path.points());
        boolean filled = reading.fills(element, path.closed());
        if (!filled) {
            return Optional.of(line(element, places, anchor, reading));
        }
        if (!path.closed()) {
            records.add(ShapeOddities.openRing(element));
        } else if (reading.isGolf() && !Region.isSound(places, List.of())) {
            records.add(ShapeOddities.crossingRing(element));
        }
        return checked(element, Region.of(places), anchor);
    }

    private SiteElement line(MapElement element, List<Place> places, Place anchor, AreaReading reading) {
        Line line = new Line(places);
        OptionalDouble width = reading.lineWidthMetres(element);
        if (width.isEmpty() || !(line.lengthMetres() > 0)) {
            return new SiteElement(element, Optional.empty(), Optional.of(line), anchor);
        }
        if (reading.isGolf() && reading.isArea()) {
            records.add(ShapeOddities.lineForArea(element, width.getAsDouble()));
        }
        Region strip = Region.strip(line, width.getAsDouble() / 2);
        return new SiteElement(element, Optional.of(strip), Optional.of(line), anchor);
    }

    private SiteElement point(MapElement element, Place anchor, AreaReading reading) {
        OptionalDouble radius = reading.pointRadiusMetres();
        if (radius.isEmpty()) {
            return new SiteElement(element, Optional.empty(), Optional.empty(), anchor);
        }
        records.add(ShapeOddities.pointForArea(element, radius.getAsDouble()));
        Region circle = Region.circle(anchor, radius.getAsDouble());
        return new SiteElement(element, Optional.of(circle), Optional.empty(), anchor);
    }

    /** A point that is given twice in a row counts once. */
    private List<Place> places(List<LatLon> points) {
        List<Place> out = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            if (i == 0 || !points.get(i).equals(points.get(i - 1))) {
                out.add(frame.toPlace(points.get(i)));
            }
        }
        return out;
    }
}
