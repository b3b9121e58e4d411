package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/** An OSM map in memory that a test can change and write as XML again. */
final class MapSketch implements OsmVisitor {
    /** A node, way or relation; only its own lists are filled. */
    static final class Thing {
        final Map<String, String> tags;
        List<Long> nodes = new ArrayList<>();
        List<Member> members = List.of();
        int latitudeE7;
        int longitudeE7;

        Thing(Map<String, String> tags) {
            this.tags = new TreeMap<>(tags);
        }
    }

    final Map<Long, Thing> nodes = new LinkedHashMap<>();
    final Map<Long, Thing> ways = new LinkedHashMap<>();
    final Map<Long, Thing> relations = new LinkedHashMap<>();
    private long nextId = 9_000_000_000L;

    static MapSketch of(OsmSource source) {
        MapSketch out = new MapSketch();
        source.visit(out);
        return out;
    }

    @Override
    public void node(long id, int latitudeE7, int longitudeE7, Map<String, String> tags) {
        Thing thing = new Thing(tags);
        thing.latitudeE7 = latitudeE7;
        thing.longitudeE7 = longitudeE7;
        nodes.put(id, thing);
    }

    @Override
    public void way(long id, long[] refs, Map<String, String> tags) {
        Thing thing = new Thing(tags);
        LongStream.of(refs).forEach(thing.nodes::add);
        ways.put(id, thing);
    }

    @Override
    public void relation(long id, List<Member> members, Map<String, String> tags) {
        Thing thing = new Thing(tags);
        thing.members = List.copyOf(members);
        relations.put(id, thing);
    }

    Thing way(long id) {
        Thing way = ways.get(id);
        if (way == null) {
            throw new IllegalArgumentException("no way " + id);
        }
        return way;
    }

    Thing node(long id) {
        Thing node = nodes.get(id);
        if (node == null) {
            throw new IllegalArgumentException("no node " + id);
        }
        return node;
    }

    /** The golf=hole line with a number. */
    Thing hole(int number) {
        return ways.values().stream()
                .filter(w -> "hole".equals(w.tags.get("golf"))
                        && String.valueOf(number).equals(w.tags.get("ref")))
                .findFirst()
                .orElseThrow();
    }

    List<Thing> golf(String kind) {
        return ways.values().stream()
                .filter(w -> kind.equals(w.tags.get("golf")))
                .toList();
    }

    /** Adds a way through new nodes at an offset (units of 1e-7 degrees) from a node. */
    long addWay(long from, int[][] offsetsE7, Map<String, String> tags) {
        long[] refs = Arrays.stream(offsetsE7)
                .mapToLong(o -> addNode(node(from).latitudeE7 + o[0], node(from).longitudeE7 + o[1], Map.of()))
                .toArray();
        long id = nextId++;
        way(id, refs, tags);
        return id;
    }

    /** Adds a ring: as {@link #addWay}, its last node the first. */
    long closedWay(long from, int[][] offsetsE7, Map<String, String> tags) {
        long id = addWay(from, offsetsE7, tags);
        List<Long> refs = way(id).nodes;
        refs.set(refs.size() - 1, refs.get(0));
        return id;
    }

    long addNode(int latitudeE7, int longitudeE7, Map<String, String> tags) {
        long id = nextId++;
        node(id, latitudeE7, longitudeE7, tags);
        return id;
    }

    long addRelation(List<Member> members, Map<String, String> tags) {
        long id = nextId++;
        relation(id, members, tags);
        return id;
    }

    /** Everything once more, moved to the east, with ids of its own. */
    void addCopy(int eastE7, long idShift) {
        Map<Long, Thing> oldNodes = new LinkedHashMap<>(nodes);
        Map<Long, Thing> oldWays = new LinkedHashMap<>(ways);
        oldNodes.forEach((id, n) -> node(id + idShift, n.latitudeE7, n.longitudeE7 + eastE7, n.tags));
        oldWays.forEach((id, w) ->
                way(id + idShift, w.nodes.stream().mapToLong(r -> r + idShift).toArray(), w.tags));
    }

    String toXml(boolean nodesLast) {
        StringBuilder out = new StringBuilder("<osm version=\"0.6\">\n");
        if (!nodesLast) {
            nodes(out);
        }
        ways.forEach((id, w) -> out.append("<way id=\"")
                .append(id)
                .append("\">")
                .append(w.nodes.stream().map(r -> "<nd ref=\"" + r + "\"/>").collect(Collectors.joining()))
                .append(tags(w))
                .append("</way>\n"));
        relations.forEach((id, r) -> out.append("<relation id=\"")
                .append(id)
                .append("\">")
                .append(r.members.stream()
                        .map(m ->
                                "<member type=\"" + m.type() + "\" ref=\"" + m.id() + "\" role=\"" + m.role() + "\"/>")
                        .collect(Collectors.joining()))
                .append(tags(r))
                .append("</relation>\n"));
        if (nodesLast) {
            nodes(out);
        }
        return out.append("</osm>\n").toString();
    }

    private void nodes(StringBuilder out) {
        nodes.forEach((id, n) -> out.append("<node id=\"")
                .append(id)
                .append("\" lat=\"")
                .append(java.math.BigDecimal.valueOf(n.latitudeE7, 7).toPlainString())
                .append("\" lon=\"")
                .append(java.math.BigDecimal.valueOf(n.longitudeE7, 7).toPlainString())
                .append("\">")
                .append(tags(n))
                .append("</node>\n"));
    }

    private static String tags(Thing thing) {
        return thing.tags.entrySet().stream()
                .map(t -> "<tag k=\"" + escaped(t.getKey()) + "\" v=\"" + escaped(t.getValue()) + "\"/>")
                .collect(Collectors.joining());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
