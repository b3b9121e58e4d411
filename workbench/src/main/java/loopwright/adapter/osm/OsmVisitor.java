package loopwright.adapter.osm;

import java.util.List;
import java.util.Map;

/** Receives the raw objects of an OSM file; a source calls only the methods of the kinds asked for. */
interface OsmVisitor {
    /** Coordinates in units of 1e-7 degrees, OSM's own precision. */
    default void node(long id, int latitudeE7, int longitudeE7, Map<String, String> tags) {}

    default void way(long id, long[] nodes, Map<String, String> tags) {}

    default void relation(long id, List<Member> members, Map<String, String> tags) {}

    /** A member of a relation: "way" or another type, its id, and its role. */
    record Member(String type, long id, String role) {}
}
