package loopwright.adapter.osm;

import java.util.Map;
import java.util.Set;

/** Which tags can matter on a golf course; everything else is never kept. */
final class MapTags {
    private static final Set<String> CONTEXT = Set.of(
            "natural",
            "landuse",
            "landcover",
            "waterway",
            "water",
            "building",
            "highway",
            "railway",
            "leisure",
            "barrier",
            "sport");

    private MapTags() {}

    /** Golf itself; miniature and disc golf are other games. */
    static boolean isGolf(Map<String, String> tags) {
        return tags.containsKey("golf")
                || "golf_course".equals(tags.get("leisure"))
                || "golf".equals(tags.get("route"));
    }

    static boolean isOfInterest(Map<String, String> tags) {
        return isGolf(tags) || tags.keySet().stream().anyMatch(CONTEXT::contains);
    }

    /** Relations that describe one area. */
    static boolean isArea(Map<String, String> tags) {
        String type = tags.getOrDefault("type", "");
        return isOfInterest(tags) && (type.equals("multipolygon") || type.equals("boundary"));
    }
}
