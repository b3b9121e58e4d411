package loopwright.adapter.osm;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import loopwright.ground.HeightField;

/**
 * Heights inside a course file: whole centimetres row by row, each as its difference from the one before as four bytes
 * (low byte first), the bytes sorted by significance so that they pack well, deflated, in base 64.
 */
final class PackedHeights {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int MOST_NODES = 16_000_000;
    private static final int CENTIMETRES = 100;

    private PackedHeights() {}

    static Map<String, Object> pack(HeightField field) {
        HeightField.Grid g = field.grid();
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("columns", field.columns());
        out.put("rows", field.rows());
        out.put("column_of", List.of(g.a0(), g.ax(), g.ay()));
        out.put("row_of", List.of(g.b0(), g.bx(), g.by()));
        out.put("centimetres", Base64.getEncoder().encodeToString(deflate(bytes(field.heights()))));
        return out;
    }

    private static byte[] bytes(float[] heights) {
        int n = heights.length;
        byte[] out = new byte[4 * n];
        int before = 0;
        for (int i = 0; i < n; i++) {
            int height = Math.round(heights[i] * CENTIMETRES);
            int step = height - before;
            before = height;
            for (int b = 0; b < 4; b++) {
                out[b * n + i] = (byte) (step >>> (8 * b));
            }
        }
        return out;
    }

    private static byte[] deflate(byte[] raw) {
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
        deflater.setInput(raw);
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] buffer = new byte[8192];
        while (!deflater.finished()) {
            out.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return out.toByteArray();
    }

    static HeightField unpack(String json) {
        try {
            JsonNode node = MAPPER.readTree(json);
            int columns = node.path("columns").asInt();
            int rows = node.path("rows").asInt();
            if (columns < 2 || rows < 2 || (long) columns * rows > MOST_NODES) {
                throw new IllegalArgumentException("its size is " + columns + " by " + rows);
            }
            byte[] packed = Base64.getDecoder().decode(node.path("centimetres").asText());
            return new HeightField(columns, rows, heights(inflate(packed, 4 * columns * rows)), grid(node));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("not an object", e);
        }
    }

    private static HeightField.Grid grid(JsonNode node) {
        JsonNode a = node.path("column_of");
        JsonNode b = node.path("row_of");
        return new HeightField.Grid(
                a.path(0).asDouble(Double.NaN),
                a.path(1).asDouble(),
                a.path(2).asDouble(),
                b.path(0).asDouble(),
                b.path(1).asDouble(),
                b.path(2).asDouble());
    }

    /** Exactly as many bytes as the size promises: neither a bomb nor a stump is unpacked further. */
    private static byte[] inflate(byte[] packed, int size) {
        Inflater inflater = new Inflater();
        inflater.setInput(packed);
        byte[] out = new byte[size];
        try {
            int done = 0;
            while (done < size) {
                int more = inflater.inflate(out, done, size - done);
                if (more == 0 && (inflater.finished() || inflater.needsInput())) {
                    throw new IllegalArgumentException("too few heights");
                }
                done += more;
            }
            return out;
        } catch (DataFormatException e) {
            throw new IllegalArgumentException("they do not unpack", e);
        } finally {
            inflater.end();
        }
    }

    private static float[] heights(byte[] bytes) {
        int n = bytes.length / 4;
        float[] out = new float[n];
        int height = 0;
        for (int i = 0; i < n; i++) {
            int step = 0;
            for (int b = 0; b < 4; b++) {
                step |= (bytes[b * n + i] & 0xFF) << (8 * b);
            }
            height += step;
            out[i] = height / (float) CENTIMETRES;
        }
        return out;
    }
}
