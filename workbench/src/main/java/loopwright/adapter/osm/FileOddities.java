package loopwright.adapter.osm;

import java.util.List;
import java.util.Optional;
import loopwright.action.ImportRecord;
import loopwright.geo.LatLon;

/** Records of what is odd about a file before golf comes into it. */
final class FileOddities {
    private FileOddities() {}

    static ImportRecord missingNodes(String id, List<LatLon> rest, int lost) {
        return new ImportRecord(
                "missing points",
                true,
                id,
                rest.stream().findFirst(),
                lost + " of its points are not in the file.",
                "The shape is drawn through the points that are there.",
                "Export the whole area of the course, with all points of its ways.");
    }

    static ImportRecord missingMembers(String id, LatLon where, int lost) {
        return new ImportRecord(
                "incomplete multipolygon",
                true,
                id,
                Optional.of(where),
                lost + " of its member ways are not in the file.",
                "The area is closed by straight lines between the members that are there.",
                "Export the whole area of the course, with all members of its relations.");
    }

    static ImportRecord unreadableShape(String id, String why) {
        return new ImportRecord(
                "unreadable shape",
                true,
                id,
                Optional.empty(),
                "Its coordinates cannot be read: " + why + ".",
                "The element is left out.",
                "Write coordinates as degrees, longitude before latitude, inside -180 to 180 and -90 to 90.");
    }
}
