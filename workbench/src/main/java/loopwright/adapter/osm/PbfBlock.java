package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One block of OSM PBF data: its strings, then groups of nodes (dense or not), ways and relations. */
final class PbfBlock {
    private static final int NANODEGREES_PER_E7 = 100;
    private static final String[] MEMBER_TYPES = {"node", "way", "relation"};

    private final List<WireReader> groups = new ArrayList<>();
    private final List<String> strings = new ArrayList<>();
    private long granularity = 100;
    private long latitudeOffset;
    private long longitudeOffset;

    PbfBlock(byte[] data) {
        WireReader block = new WireReader(data);
        while (block.hasMore()) {
            switch (block.field()) {
                case 1 -> readStrings(block.message());
                case 2 -> groups.add(block.message());
                case 17 -> granularity = block.varint();
                case 19 -> latitudeOffset = block.varint();
                case 20 -> longitudeOffset = block.varint();
                default -> block.skip();
            }
        }
    }

    private void readStrings(WireReader table) {
        while (table.hasMore()) {
            if (table.field() == 1) {
                strings.add(table.text());
            } else {
                table.skip();
            }
        }
    }

    void visit(OsmVisitor visitor) {
        for (WireReader group : groups) {
            while (group.hasMore()) {
                switch (group.field()) {
                    case 1 -> node(group.message(), visitor);
                    case 2 -> dense(group.message(), visitor);
                    case 3 -> way(group.message(), visitor);
                    case 4 -> relation(group.message(), visitor);
                    default -> group.skip();
                }
            }
        }
    }

    private void node(WireReader node, OsmVisitor visitor) {
        long id = 0;
        long latitude = 0;
        long longitude = 0;
        long[] keys = {};
        long[] values = {};
        while (node.hasMore()) {
            switch (node.field()) {
                case 1 -> id = node.zigzag();
                case 2 -> keys = list(node.message(), false);
                case 3 -> values = list(node.message(), false);
                case 8 -> latitude = node.zigzag();
                case 9 -> longitude = node.zigzag();
                default -> node.skip();
            }
        }
        emit(visitor, id, latitude, longitude, tags(keys, values));
    }

    private void dense(WireReader dense, OsmVisitor visitor) {
        long[] ids = {};
        long[] latitudes = {};
        long[] longitudes = {};
        long[] keysAndValues = {};
        while (dense.hasMore()) {
            switch (dense.field()) {
                case 1 -> ids = list(dense.message(), true);
                case 8 -> latitudes = list(dense.message(), true);
                case 9 -> longitudes = list(dense.message(), true);
                case 10 -> keysAndValues = list(dense.message(), false);
                default -> dense.skip();
            }
        }
        if (latitudes.length != ids.length || longitudes.length != ids.length) {
            throw new WireReader.Malformed("a group of nodes has fewer places than nodes");
        }
        long id = 0;
        long latitude = 0;
        long longitude = 0;
        int next = 0;
        for (int i = 0; i < ids.length; i++) {
            id += ids[i];
            latitude += latitudes[i];
            longitude += longitudes[i];
            Map<String, String> tags = Map.of();
            // keys and values alternate, a zero ends each node; the whole list is absent where no node has tags
            while (next < keysAndValues.length && keysAndValues[next] != 0) {
                if (next + 1 >= keysAndValues.length) {
                    throw new WireReader.Malformed("a key has no value");
                }
                tags = tags.isEmpty() ? new TreeMap<>() : tags;
                tags.put(string(keysAndValues[next]), string(keysAndValues[next + 1]));
                next += 2;
            }
            next++;
            emit(visitor, id, latitude, longitude, tags);
        }
    }

    private void emit(OsmVisitor visitor, long id, long latitude, long longitude, Map<String, String> tags) {
        Integer lat = e7(latitudeOffset + granularity * latitude, 90);
        Integer lon = e7(longitudeOffset + granularity * longitude, 180);
        if (lat != null && lon != null) {
            visitor.node(id, lat, lon, tags);
        }
    }

    private static @org.jspecify.annotations.Nullable Integer e7(long nanodegrees, int limit) {
        long e7 = Math.round(nanodegrees / (double) NANODEGREES_PER_E7);
        return Math.abs(e7) <= limit * 10_000_000L ? (int) e7 : null;
    }

    private void way(WireReader way, OsmVisitor visitor) {
        long id = 0;
        long[] keys = {};
        long[] values = {};
        long[] refs = {};
        while (way.hasMore()) {
            switch (way.field()) {
                case 1 -> id = way.varint();
                case 2 -> keys = list(way.message(), false);
                case 3 -> values = list(way.message(), false);
                case 8 -> refs = list(way.message(), true);
                default -> way.skip();
            }
        }
        visitor.way(id, summed(refs), tags(keys, values));
    }

    private void relation(WireReader relation, OsmVisitor visitor) {
        long id = 0;
        long[] keys = {};
        long[] values = {};
        long[] roles = {};
        long[] members = {};
        long[] types = {};
        while (relation.hasMore()) {
            switch (relation.field()) {
                case 1 -> id = relation.varint();
                case 2 -> keys = list(relation.message(), false);
                case 3 -> values = list(relation.message(), false);
                case 8 -> roles = list(relation.message(), false);
                case 9 -> members = list(relation.message(), true);
                case 10 -> types = list(relation.message(), false);
                default -> relation.skip();
            }
        }
        if (roles.length != members.length || types.length != members.length) {
            throw new WireReader.Malformed("a relation has fewer roles than members");
        }
        long[] ids = summed(members);
        List<OsmVisitor.Member> out = new ArrayList<>();
        for (int i = 0; i < ids.length; i++) {
            if (types[i] < 0 || types[i] > 2) {
                throw new WireReader.Malformed("a member of type " + types[i]);
            }
            out.add(new OsmVisitor.Member(MEMBER_TYPES[(int) types[i]], ids[i], string(roles[i])));
        }
        visitor.relation(id, out, tags(keys, values));
    }

    private Map<String, String> tags(long[] keys, long[] values) {
        if (keys.length != values.length) {
            throw new WireReader.Malformed("there are " + keys.length + " keys but " + values.length + " values");
        }
        if (keys.length == 0) {
            return Map.of();
        }
        Map<String, String> out = new TreeMap<>();
        for (int i = 0; i < keys.length; i++) {
            out.put(string(keys[i]), string(values[i]));
        }
        return out;
    }

    private String string(long index) {
        if (index < 0 || index >= strings.size()) {
            throw new WireReader.Malformed("a text of number " + index + " is not in the table");
        }
        return strings.get((int) index);
    }

    private static long[] summed(long[] steps) {
        long[] out = steps.clone();
        for (int i = 1; i < out.length; i++) {
            out[i] += out[i - 1];
        }
        return out;
    }

    private static long[] list(WireReader packed, boolean zigzag) {
        long[] out = new long[16];
        int n = 0;
        while (packed.hasMore()) {
            if (n == out.length) {
                out = Arrays.copyOf(out, 2 * n);
            }
            out[n++] = zigzag ? packed.zigzag() : packed.varint();
        }
        return Arrays.copyOf(out, n);
    }
}
