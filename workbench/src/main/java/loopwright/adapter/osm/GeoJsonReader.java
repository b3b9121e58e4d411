package loopwright.adapter.osm;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.action.ImportRecord;
import loopwright.action.UserFault;
import loopwright.geo.LatLon;

/** GeoJSON (RFC 7946) whose feature properties are OSM tags. */
final class GeoJsonReader {
    private final List<MapElement> elements = new ArrayList<>();
    private final List<ImportRecord> records = new ArrayList<>();
    private int count;

    private GeoJsonReader() {}

    static MapData read(Path file) {
        GeoJsonReader reader = new GeoJsonReader();
        JsonObjects.forEach(file, "features", reader::feature);
        if (reader.elements.stream().noneMatch(e -> MapTags.isGolf(e.tags()))) {
            throw new UserFault(
                    file + " holds no feature with a golf or leisure=golf_course property; choose a file that"
                            + " contains the course.");
        }
        return new MapData(reader.elements, reader.records);
    }

    private void feature(JsonNode feature) {
        count++;
        Map<String, String> tags = tags(feature.path("properties"));
        if (!MapTags.isOfInterest(tags)) {
            return;
        }
        String id = id(feature);
        try {
            shapes(feature.path("geometry"), id, tags);
        } catch (IllegalArgumentException e) {
            records.add(FileOddities.unreadableShape(id, String.valueOf(e.getMessage())));
        }
    }

    /** Properties are tags; some exports nest them under "tags". Keys that start with @ are the exporter's own. */
    private static Map<String, String> tags(JsonNode properties) {
        Map<String, String> tags = new TreeMap<>();
        JsonNode nested = properties.path("tags");
        for (JsonNode source : List.of(properties, nested)) {
            source.properties().forEach(p -> {
                if (!p.getKey().startsWith("@")
                        && p.getValue().isValueNode()
                        && !p.getValue().isNull()) {
                    tags.put(p.getKey(), p.getValue().asText());
                } else if (p.getKey().startsWith("loopwright:")) {
                    tags.put(p.getKey(), p.getValue().toString());
                }
            });
        }
        return tags;
    }

    private String id(JsonNode feature) {
        for (JsonNode candidate : List.of(
                feature.path("properties").path("@id"),
                feature.path("id"),
                feature.path("properties").path("id"))) {
            if (candidate.isTextual() && !candidate.asText().isBlank()) {
                return candidate.asText();
            }
        }
        return "feature/" + count;
    }

    private void shapes(JsonNode geometry, String id, Map<String, String> tags) {
        JsonNode at = geometry.path("coordinates");
        switch (geometry.path("type").asText()) {
            case "Point" -> add(id, tags, new MapShape.Point(point(at)));
            case "LineString" -> add(id, tags, path(at));
            case "Polygon" -> add(id, tags, new MapShape.Polygons(List.of(rings(at))));
            case "MultiPolygon" -> {
                List<MapShape.Rings> parts = new ArrayList<>();
                at.forEach(p -> parts.add(rings(p)));
                if (parts.isEmpty()) {
                    throw new IllegalArgumentException("a MultiPolygon without polygons");
                }
                add(id, tags, new MapShape.Polygons(parts));
            }
            case "MultiLineString" -> parts(at, id, tags, this::path);
            case "MultiPoint" -> parts(at, id, tags, p -> new MapShape.Point(point(p)));
            case "GeometryCollection" -> {
                int n = 0;
                for (JsonNode part : geometry.path("geometries")) {
                    shapes(part, id + "#" + ++n, tags);
                }
            }
            default -> throw new IllegalArgumentException("no geometry type that RFC 7946 knows");
        }
    }

    private void parts(
            JsonNode list, String id, Map<String, String> tags, java.util.function.Function<JsonNode, MapShape> read) {
        int n = 0;
        for (JsonNode part : list) {
            add(id + "#" + ++n, tags, read.apply(part));
        }
    }

    private void add(String id, Map<String, String> tags, MapShape shape) {
        elements.add(new MapElement(id, tags, shape));
    }

    private MapShape.Path path(JsonNode list) {
        List<LatLon> points = points(list);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a line of " + points.size() + " points");
        }
        return new MapShape.Path(points);
    }

    private static MapShape.Rings rings(JsonNode list) {
        List<List<LatLon>> rings = new ArrayList<>();
        for (JsonNode ring : list) {
            List<LatLon> points = points(ring);
            if (points.size() >= 3) {
                rings.add(points);
            }
        }
        if (rings.isEmpty()) {
            throw new IllegalArgumentException("a polygon without a ring of three points");
        }
        return new MapShape.Rings(rings.get(0), rings.subList(1, rings.size()));
    }

    private static List<LatLon> points(JsonNode list) {
        List<LatLon> out = new ArrayList<>();
        list.forEach(p -> out.add(point(p)));
        return out;
    }

    private static LatLon point(JsonNode pair) {
        JsonNode lon = pair.path(0);
        JsonNode lat = pair.path(1);
        if (!lon.isNumber() || !lat.isNumber()) {
            throw new IllegalArgumentException("a position that is not a pair of numbers");
        }
        return new LatLon(lat.asDouble(), lon.asDouble());
    }
}
