package loopwright.adapter.osm;

import java.util.OptionalInt;
import loopwright.geo.LatLon;
import loopwright.geo.Line;

/**
 * A hole on its way from map to course.
 *
 * @param element the hole line in the map, or the green it was made from
 * @param number its number, once it has one
 * @param line from tee to green
 */
record HoleDraft(MapElement element, OptionalInt number, Line line) {
    String id() {
        return element.id();
    }

    LatLon where() {
        return element.shape().anchor();
    }

    int getNumber() {
        return number.orElseThrow(() -> new IllegalStateException(id() + " has no number yet"));
    }

    HoleDraft withNumber(int newNumber) {
        return new HoleDraft(element, OptionalInt.of(newNumber), line);
    }

    HoleDraft withLine(Line newLine) {
        return new HoleDraft(element, number, newLine);
    }
}
