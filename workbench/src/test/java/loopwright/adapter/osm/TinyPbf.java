package loopwright.adapter.osm;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;

/** Writes OSM PBF from any source: one block each of dense nodes, ways and relations, packed by zlib. */
final class TinyPbf implements OsmVisitor {
    private final Map<String, Integer> strings = new LinkedHashMap<>(Map.of("", 0));
    private final Wire ids = new Wire();
    private final Wire latitudes = new Wire();
    private final Wire longitudes = new Wire();
    private final Wire nodeTags = new Wire();
    private final Wire ways = new Wire();
    private final Wire relations = new Wire();
    private long lastId;
    private long lastLatitude;
    private long lastLongitude;
    private boolean anyNodeTags;

    static byte[] of(OsmSource source) throws IOException {
        TinyPbf out = new TinyPbf();
        source.visit(out);
        return out.file();
    }

    @Override
    public void node(long id, int latitudeE7, int longitudeE7, Map<String, String> tags) {
        ids.zigzag(id - lastId);
        latitudes.zigzag(latitudeE7 - lastLatitude);
        longitudes.zigzag(longitudeE7 - lastLongitude);
        lastId = id;
        lastLatitude = latitudeE7;
        lastLongitude = longitudeE7;
        tags.forEach((k, v) -> nodeTags.varint(index(k)).varint(index(v)));
        nodeTags.varint(0);
        anyNodeTags |= !tags.isEmpty();
    }

    @Override
    public void way(long id, long[] nodes, Map<String, String> tags) {
        Wire refs = new Wire();
        long last = 0;
        for (long node : nodes) {
            refs.zigzag(node - last);
            last = node;
        }
        Wire way = new Wire().number(1, id);
        tags(way, tags);
        ways.bytes(3, way.bytes(8, refs.toBytes()).toBytes());
    }

    @Override
    public void relation(long id, List<Member> members, Map<String, String> tags) {
        Wire roles = new Wire();
        Wire refs = new Wire();
        Wire types = new Wire();
        long last = 0;
        for (Member m : members) {
            roles.varint(index(m.role()));
            refs.zigzag(m.id() - last);
            last = m.id();
            types.varint(List.of("node", "way", "relation").indexOf(m.type()));
        }
        Wire relation = new Wire().number(1, id);
        tags(relation, tags);
        relation.bytes(8, roles.toBytes()).bytes(9, refs.toBytes()).bytes(10, types.toBytes());
        relations.bytes(4, relation.toBytes());
    }

    private void tags(Wire out, Map<String, String> tags) {
        Wire keys = new Wire();
        Wire values = new Wire();
        tags.forEach((k, v) -> {
            keys.varint(index(k));
            values.varint(index(v));
        });
        out.bytes(2, keys.toBytes()).bytes(3, values.toBytes());
    }

    private int index(String text) {
        return strings.computeIfAbsent(text, t -> strings.size());
    }

    private byte[] file() throws IOException {
        Wire table = new Wire();
        strings.keySet().forEach(s -> table.bytes(1, s.getBytes(StandardCharsets.UTF_8)));
        Wire dense =
                new Wire().bytes(1, ids.toBytes()).bytes(8, latitudes.toBytes()).bytes(9, longitudes.toBytes());
        if (anyNodeTags) {
            dense.bytes(10, nodeTags.toBytes());
        }
        Wire block = new Wire().bytes(1, table.toBytes());
        List<Wire> groups = new ArrayList<>(List.of(new Wire().bytes(2, dense.toBytes()), ways, relations));
        groups.forEach(g -> block.bytes(2, g.toBytes()));
        Wire header = new Wire().text(4, "OsmSchema-V0.6").text(4, "DenseNodes");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        blob(out, "OSMHeader", header.toBytes(), header.toBytes().length);
        blob(out, "OSMData", block.toBytes(), block.toBytes().length);
        return out.toByteArray();
    }

    /** A blob that states a size, true or not. */
    static void blob(ByteArrayOutputStream out, String type, byte[] raw, long statedSize) throws IOException {
        Deflater deflater = new Deflater();
        deflater.setInput(raw);
        deflater.finish();
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        byte[] buffer = new byte[1 << 16];
        while (!deflater.finished()) {
            packed.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        byte[] blob =
                new Wire().number(2, statedSize).bytes(3, packed.toByteArray()).toBytes();
        byte[] header = new Wire().text(1, type).number(3, blob.length).toBytes();
        DataOutputStream data = new DataOutputStream(out);
        data.writeInt(header.length);
        data.write(header);
        data.write(blob);
    }

    /** Fields of the protocol buffer wire format. */
    static final class Wire {
        private final ByteArrayOutputStream out = new ByteArrayOutputStream();

        Wire varint(long value) {
            long left = value;
            while ((left & ~0x7FL) != 0) {
                out.write((int) ((left & 0x7F) | 0x80));
                left >>>= 7;
            }
            out.write((int) left);
            return this;
        }

        Wire zigzag(long value) {
            return varint((value << 1) ^ (value >> 63));
        }

        Wire number(int field, long value) {
            return varint((long) field << 3).varint(value);
        }

        Wire bytes(int field, byte[] value) {
            varint(((long) field << 3) | 2).varint(value.length);
            out.writeBytes(value);
            return this;
        }

        Wire text(int field, String value) {
            return bytes(field, value.getBytes(StandardCharsets.UTF_8));
        }

        byte[] toBytes() {
            return out.toByteArray();
        }
    }
}
