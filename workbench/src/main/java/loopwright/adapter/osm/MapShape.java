package loopwright.adapter.osm;

import java.util.List;
import loopwright.geo.LatLon;

/** The geometry of a map element before anything is known about what it means. */
sealed interface MapShape {
    /** Some point of the shape, to say where it is. */
    LatLon anchor();

    record Point(LatLon at) implements MapShape {
        @Override
        public LatLon anchor() {
            return at;
        }
    }

    /** A way or line string; a closed one repeats its first point at the end. */
    record Path(List<LatLon> points) implements MapShape {
        public Path {
            points = List.copyOf(points);
        }

        boolean closed() {
            return points.size() >= 4 && points.get(0).equals(points.get(points.size() - 1));
        }

        @Override
        public LatLon anchor() {
            return points.get(0);
        }
    }

    /** One or more polygons. */
    record Polygons(List<Rings> parts) implements MapShape {
        public Polygons {
            parts = List.copyOf(parts);
        }

        @Override
        public LatLon anchor() {
            return parts.get(0).outer().get(0);
        }
    }

    /** An outer ring and the rings cut out of it. */
    record Rings(List<LatLon> outer, List<List<LatLon>> holes) {
        public Rings {
            outer = List.copyOf(outer);
            holes = List.copyOf(holes);
        }
    }
}
