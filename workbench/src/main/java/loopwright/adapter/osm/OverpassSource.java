package loopwright.adapter.osm;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * JSON of the Overpass interface in both shapes: nodes as objects of their own ("body" and "skel"), or the coordinates
 * inside ways and relation members ("geom"), whose points then become nodes named by their position.
 */
final class OverpassSource implements OsmSource {
    private final Path file;

    OverpassSource(Path file) {
        this.file = file;
    }

    @Override
    public void visit(OsmVisitor visitor) {
        JsonObjects.forEach(file, "elements", e -> element(e, visitor));
    }

    private static void element(JsonNode e, OsmVisitor visitor) {
        long id = e.path("id").asLong();
        switch (e.path("type").asText()) {
            case "node" -> node(id, e, tags(e), visitor);
            case "way" -> visitor.way(id, wayNodes(e, visitor), tags(e));
            case "relation" -> {
                List<OsmVisitor.Member> members = new ArrayList<>();
                for (JsonNode m : e.path("members")) {
                    long ref = m.path("ref").asLong();
                    String type = m.path("type").asText();
                    members.add(new OsmVisitor.Member(type, ref, m.path("role").asText()));
                    if (type.equals("way") && m.path("geometry").isArray()) {
                        visitor.way(ref, wayNodes(m, visitor), Map.of());
                    }
                }
                visitor.relation(id, members, tags(e));
            }
            default -> {}
        }
    }

    private static void node(long id, JsonNode at, Map<String, String> tags, OsmVisitor visitor) {
        Integer lat = OsmNumbers.degreesE7(at.path("lat").asDouble(Double.NaN), 90);
        Integer lon = OsmNumbers.degreesE7(at.path("lon").asDouble(Double.NaN), 180);
        if (lat != null && lon != null) {
            visitor.node(id, lat, lon, tags);
        }
    }

    private static long[] wayNodes(JsonNode way, OsmVisitor visitor) {
        JsonNode geometry = way.path("geometry");
        JsonNode ids = way.path("nodes");
        if (!geometry.isArray()) {
            long[] out = new long[ids.size()];
            for (int i = 0; i < out.length; i++) {
                out[i] = ids.path(i).asLong();
            }
            return out;
        }
        List<Long> out = new ArrayList<>();
        for (int i = 0; i < geometry.size(); i++) {
            JsonNode at = geometry.path(i);
            Integer lat = OsmNumbers.degreesE7(at.path("lat").asDouble(Double.NaN), 90);
            Integer lon = OsmNumbers.degreesE7(at.path("lon").asDouble(Double.NaN), 180);
            if (lat != null && lon != null) {
                long id = ids.size() == geometry.size() ? ids.path(i).asLong() : positionId(lat, lon);
                visitor.node(id, lat, lon, Map.of());
                out.add(id);
            }
        }
        return out.stream().mapToLong(Long::longValue).toArray();
    }

    /** A negative id that two points share exactly when they lie on the same 1e-7 degree. */
    private static long positionId(int latitudeE7, int longitudeE7) {
        long row = latitudeE7 + 900_000_000L;
        long column = longitudeE7 + 1_800_000_000L;
        return -1 - (row * 4_000_000_000L + column);
    }

    private static Map<String, String> tags(JsonNode e) {
        Map<String, String> tags = new TreeMap<>();
        e.path("tags")
                .properties()
                .forEach(t -> tags.put(t.getKey(), t.getValue().asText()));
        return tags;
    }
}
