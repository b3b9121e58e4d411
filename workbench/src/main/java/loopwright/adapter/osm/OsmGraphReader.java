package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import loopwright.action.ImportRecord;
import loopwright.action.UserFault;

/**
 * Turns nodes, ways and relations into elements with shapes. Goes through the source several times: first the golf in
 * it, then everything within about a kilometre of golf, so that memory grows with the golf and not with the file.
 */
final class OsmGraphReader {
    /** Stored nodes, 16 bytes each: 128 MB at most. */
    private static final int MOST_NODES = 8_000_000;

    private final OsmSource source;
    private final String label;
    private final Set<Long> relationMembers = new HashSet<>();
    private final Set<Long> golfNodes = new HashSet<>();
    private final Set<Long> tiles = new HashSet<>();
    private final NodeStore nodes = new NodeStore();
    private final Map<Long, long[]> ways = new TreeMap<>();
    private final Map<Long, Map<String, String>> wayTags = new TreeMap<>();
    private final Map<Long, List<OsmVisitor.Member>> relations = new TreeMap<>();
    private final Map<Long, Map<String, String>> relationTags = new TreeMap<>();
    private final Map<Long, Map<String, String>> nodeTags = new TreeMap<>();

    private OsmGraphReader(OsmSource source, String label) {
        this.source = source;
        this.label = label;
    }

    static MapData read(OsmSource source, String label) {
        OsmGraphReader reader = new OsmGraphReader(source, label);
        reader.findGolf();
        reader.locateGolf();
        if (reader.tiles.isEmpty()) {
            throw new UserFault(label + " holds nothing tagged golf=* or leisure=golf_course; choose a file that"
                    + " contains the course.");
        }
        reader.keepNearGolf();
        return reader.assemble();
    }

    private void findGolf() {
        source.visit(new OsmVisitor() {
            @Override
            public void relation(long id, List<Member> members, Map<String, String> tags) {
                if (MapTags.isArea(tags) || MapTags.isGolf(tags)) {
                    relations.put(id, List.copyOf(members));
                    relationTags.put(id, tags);
                    if (MapTags.isGolf(tags)) {
                        members.forEach(m -> relationMembers.add(m.id()));
                    }
                }
            }
        });
        source.visit(new OsmVisitor() {
            @Override
            public void way(long id, long[] refs, Map<String, String> tags) {
                if (MapTags.isGolf(tags) || relationMembers.contains(id)) {
                    for (long ref : refs) {
                        golfNodes.add(ref);
                    }
                    refuseIfTooLarge(golfNodes.size());
                }
            }
        });
        relations.values().forEach(members -> members.forEach(m -> relationMembers.add(m.id())));
    }

    private void locateGolf() {
        source.visit(new OsmVisitor() {
            @Override
            public void node(long id, int latitude, int longitude, Map<String, String> tags) {
                if (golfNodes.contains(id) || MapTags.isGolf(tags)) {
                    for (int dy = -1; dy <= 1; dy++) {
                        for (int dx = -1; dx <= 1; dx++) {
                            tiles.add(tile(latitude, longitude, dx, dy));
                        }
                    }
                }
            }
        });
    }

    /** Tiles of a hundredth of a degree, about a kilometre. */
    private static long tile(int latitudeE7, int longitudeE7, int dx, int dy) {
        long row = (long) Math.floorDiv(latitudeE7, 100_000) + dy;
        long column = (long) Math.floorDiv(longitudeE7, 100_000) + dx;
        return row * 1_000_000 + column;
    }

    private void keepNearGolf() {
        source.visit(new OsmVisitor() {
            @Override
            public void node(long id, int latitude, int longitude, Map<String, String> tags) {
                if (tiles.contains(tile(latitude, longitude, 0, 0))) {
                    nodes.put(id, latitude, longitude);
                    refuseIfTooLarge(nodes.size());
                    if (MapTags.isOfInterest(tags)) {
                        nodeTags.put(id, tags);
                    }
                }
            }
        });
        Set<Long> missing = new HashSet<>();
        source.visit(new OsmVisitor() {
            @Override
            public void way(long id, long[] refs, Map<String, String> tags) {
                boolean wanted = MapTags.isOfInterest(tags) || relationMembers.contains(id);
                boolean untaggedTwin = ways.containsKey(id) && tags.isEmpty();
                if (!wanted || untaggedTwin || !touchesKept(refs)) {
                    return;
                }
                ways.put(id, refs);
                wayTags.put(id, tags);
                for (long ref : refs) {
                    if (!nodes.contains(ref)) {
                        missing.add(ref);
                    }
                }
                refuseIfTooLarge(nodes.size() + missing.size());
            }
        });
        if (!missing.isEmpty()) {
            source.visit(new OsmVisitor() {
                @Override
                public void node(long id, int latitude, int longitude, Map<String, String> tags) {
                    if (missing.contains(id)) {
                        nodes.put(id, latitude, longitude);
                    }
                }
            });
        }
    }

    private boolean touchesKept(long[] refs) {
        for (long ref : refs) {
            if (nodes.contains(ref)) {
                return true;
            }
        }
        return false;
    }

    private void refuseIfTooLarge(int count) {
        if (count > MOST_NODES) {
            throw new UserFault(label + " has more than " + MOST_NODES + " points near golf; cut out the region of the"
                    + " course first.");
        }
    }

    private MapData assemble() {
        List<ImportRecord> records = new ArrayList<>();
        List<MapElement> out = new ArrayList<>();
        nodeTags.forEach((id, tags) -> out.add(new MapElement("node/" + id, tags, new MapShape.Point(nodes.get(id)))));
        RelationShapes shapes = new RelationShapes(nodes, ways, records);
        wayTags.forEach((id, tags) -> {
            if (MapTags.isOfInterest(tags)) {
                shapes.path("way/" + id, ways.getOrDefault(id, new long[0]), MapTags.isGolf(tags))
                        .ifPresent(path -> out.add(new MapElement("way/" + id, tags, path)));
            }
        });
        relationTags.forEach((id, tags) -> shapes.polygons(
                        "relation/" + id, relations.getOrDefault(id, List.of()), MapTags.isGolf(tags))
                .ifPresent(area -> out.add(new MapElement("relation/" + id, tags, area))));
        return new MapData(out, records);
    }
}
