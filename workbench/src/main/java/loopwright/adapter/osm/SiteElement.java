package loopwright.adapter.osm;

import java.util.Optional;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** A map element in the local frame: an area, a line or a point, whichever the map drew (after mending). */
record SiteElement(MapElement map, Optional<Region> region, Optional<Line> line, Place anchor) {
    String id() {
        return map.id();
    }

    LatLon where() {
        return map.shape().anchor();
    }

    Region getRegion() {
        return region.orElseThrow(() -> new IllegalStateException(id() + " has no area"));
    }

    boolean isPoint() {
        return region.isEmpty() && line.isEmpty();
    }

    double distanceTo(Place place) {
        if (region.isPresent()) {
            return region.get().distanceTo(place);
        }
        return line.isPresent() ? line.get().distanceTo(place) : anchor.distanceTo(place);
    }
}
