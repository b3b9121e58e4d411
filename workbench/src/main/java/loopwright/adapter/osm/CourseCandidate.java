package loopwright.adapter.osm;

import java.util.List;
import java.util.Optional;
import loopwright.geo.LatLon;

/**
 * One course that a file seems to hold, before it is assembled.
 *
 * @param element where it was found: the border's id or the id of its first golf element
 * @param golf its golf elements, without the border
 */
record CourseCandidate(String name, String element, Optional<MapElement> boundary, List<MapElement> golf) {
    CourseCandidate {
        golf = List.copyOf(golf);
    }

    long holeLines() {
        return golf.stream().filter(e -> e.golf("hole")).count();
    }

    long greens() {
        return golf.stream().filter(e -> e.golf("green")).count();
    }

    /** The middle of all its points, rounded to 1e-7 degrees so that it can be written and read exactly. */
    LatLon centre() {
        List<LatLon> points = boundary.map(b -> MapPoints.of(b.shape()))
                .orElseGet(() -> golf.stream()
                        .flatMap(e -> MapPoints.of(e.shape()).stream())
                        .toList());
        double minLat =
                points.stream().mapToDouble(LatLon::latitudeDegrees).min().orElseThrow();
        double maxLat =
                points.stream().mapToDouble(LatLon::latitudeDegrees).max().orElseThrow();
        double minLon =
                points.stream().mapToDouble(LatLon::longitudeDegrees).min().orElseThrow();
        double maxLon =
                points.stream().mapToDouble(LatLon::longitudeDegrees).max().orElseThrow();
        return new LatLon(rounded((minLat + maxLat) / 2), rounded((minLon + maxLon) / 2));
    }

    private static double rounded(double degrees) {
        return Math.round(degrees * 1e7) / 1e7;
    }
}
