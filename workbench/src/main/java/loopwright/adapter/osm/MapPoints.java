package loopwright.adapter.osm;

import java.util.List;
import java.util.stream.Stream;
import loopwright.geo.LatLon;

/** All points of a shape. */
final class MapPoints {
    private MapPoints() {}

    static List<LatLon> of(MapShape shape) {
        if (shape instanceof MapShape.Path path) {
            return path.points();
        }
        if (shape instanceof MapShape.Polygons polygons) {
            return polygons.parts().stream()
                    .flatMap(r -> Stream.concat(Stream.of(r.outer()), r.holes().stream()))
                    .flatMap(List::stream)
                    .toList();
        }
        return List.of(shape.anchor());
    }
}
