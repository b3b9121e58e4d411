package loopwright.action;

import java.util.Optional;
import loopwright.geo.LatLon;

/**
 * One oddity of a map file.
 *
 * @param kind short name of the kind of oddity, the same for all of its kind ("double green")
 * @param warning true if the assumption may change a plan and should be looked at; false for a harmless reading
 * @param element the element's id in the file ("way/440119300")
 * @param where its place on the map, where it has one
 * @param found what the file says, a sentence
 * @param assumed what was taken instead, a sentence
 * @param mend what to change in the map so that the assumption is not needed, a sentence
 */
public record ImportRecord(
        String kind,
        boolean warning,
        String element,
        Optional<LatLon> where,
        String found,
        String assumed,
        String mend) {}
