package loopwright.adapter.osm;

import java.util.List;
import loopwright.geo.Place;

/**
 * One place on one hole from which it may be started.
 *
 * @param id the element it was read from
 * @param colours names of the sets that start here, as mapped, lower case; often empty
 * @param lengthMetres of the hole from here along its line
 */
record TeeSpot(String id, Place place, List<String> colours, double lengthMetres) {
    TeeSpot {
        colours = List.copyOf(colours);
    }
}
