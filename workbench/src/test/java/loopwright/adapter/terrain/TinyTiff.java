package loopwright.adapter.terrain;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.zip.Deflater;

/** Writes small GeoTIFF files of every layout that the reader must take, straight from the TIFF 6.0 specification. */
final class TinyTiff {
    enum Sample {
        UINT8(8, 1),
        INT16(16, 2),
        FLOAT32(32, 3);

        final int bits;
        final int format;

        Sample(int bits, int format) {
            this.bits = bits;
            this.format = format;
        }
    }

    enum Packing {
        NONE(1),
        LZW(5),
        DEFLATE(8);

        final int code;

        Packing(int code) {
            this.code = code;
        }
    }

    private final ByteOrder order;
    private final TreeMap<Integer, Entry> entries = new TreeMap<>();
    private final List<byte[]> blocks = new ArrayList<>();

    private record Entry(int type, int count, ByteBuffer content) {
        byte[] value() {
            byte[] out = new byte[content.capacity()];
            content.duplicate().rewind().get(out);
            return out;
        }
    }

    TinyTiff(ByteOrder order) {
        this.order = order;
    }

    /** The heights in strips of {@code block} rows or, tiled, in squares of {@code block} cells. */
    TinyTiff heights(double[][] z, Sample sample, Packing packing, boolean tiled, int block) {
        int rows = z.length;
        int columns = z[0].length;
        shorts(256, columns)
                .shorts(257, rows)
                .shorts(258, sample.bits)
                .shorts(259, packing.code)
                .shorts(262, 1);
        shorts(277, 1).shorts(284, 1).shorts(339, sample.format);
        for (int r = 0; r < rows; r += block) {
            for (int c = 0; c < columns; c += tiled ? block : columns) {
                int wide = tiled ? block : columns;
                int high = tiled ? block : Math.min(block, rows - r);
                blocks.add(packed(raw(z, r, c, high, wide, sample), packing));
            }
        }
        if (tiled) {
            shorts(322, block).shorts(323, block);
        } else {
            shorts(278, block);
        }
        tileOrStrip = tiled ? 324 : 273;
        return this;
    }

    private int tileOrStrip = 273;

    /** Claims this size, in one strip, whatever the heights are. */
    TinyTiff size(int columns, int rows) {
        return shorts(256, columns).shorts(257, rows).shorts(278, rows);
    }

    /** Puts other bytes in the place of a packed strip or tile. */
    TinyTiff block(int number, byte[] content) {
        blocks.set(number, content);
        return this;
    }

    TinyTiff place(double west, double north, double dx, double dy) {
        return doubles(33550, dx, dy, 0).doubles(33922, 0, 0, 0, west, north, 0);
    }

    /** GeoKeys as pairs of key and value. */
    TinyTiff keys(int... pairs) {
        int[] out = new int[4 + pairs.length * 2];
        out[0] = 1;
        out[1] = 1;
        out[3] = pairs.length / 2;
        for (int i = 0; i < pairs.length; i += 2) {
            out[4 + 2 * i] = pairs[i];
            out[6 + 2 * i] = 1;
            out[7 + 2 * i] = pairs[i + 1];
        }
        return shorts(34735, out);
    }

    TinyTiff noData(String text) {
        byte[] value = (text + "\0").getBytes(StandardCharsets.US_ASCII);
        entries.put(42113, new Entry(2, value.length, ByteBuffer.wrap(value)));
        return this;
    }

    byte[] toBytes() {
        int n = blocks.size();
        int directory =
                8 + blocks.stream().mapToInt(b -> b.length + (b.length & 1)).sum();
        longs(tileOrStrip, new int[n]).longs(tileOrStrip == 273 ? 279 : 325, new int[n]);
        int at = 8;
        int[] offsets = new int[n];
        int[] sizes = new int[n];
        for (int i = 0; i < n; i++) {
            offsets[i] = at;
            sizes[i] = blocks.get(i).length;
            at += sizes[i] + (sizes[i] & 1);
        }
        longs(tileOrStrip, offsets).longs(tileOrStrip == 273 ? 279 : 325, sizes);
        int extra = directory + 2 + 12 * entries.size() + 4;
        int length = extra
                + entries.values().stream().mapToInt(e -> e.value().length + 1).sum()
                + 8;
        ByteBuffer out = ByteBuffer.allocate(length).order(order);
        out.put((byte) (order == ByteOrder.LITTLE_ENDIAN ? 'I' : 'M'));
        out.put((byte) (order == ByteOrder.LITTLE_ENDIAN ? 'I' : 'M'));
        out.putShort((short) 42).putInt(directory);
        for (int i = 0; i < n; i++) {
            out.position(offsets[i]);
            out.put(blocks.get(i));
        }
        out.position(directory);
        out.putShort((short) entries.size());
        for (var e : entries.entrySet()) {
            out.putShort(e.getKey().shortValue())
                    .putShort((short) e.getValue().type())
                    .putInt(e.getValue().count());
            byte[] value = e.getValue().value();
            if (value.length <= 4) {
                out.put(value).put(new byte[4 - value.length]);
            } else {
                out.putInt(extra);
                int back = out.position();
                out.position(extra);
                out.put(value);
                extra += value.length + (value.length & 1);
                out.position(back);
            }
        }
        return out.array();
    }

    private TinyTiff shorts(int tag, int... values) {
        ByteBuffer b = ByteBuffer.allocate(2 * values.length).order(order);
        for (int v : values) {
            b.putShort((short) v);
        }
        entries.put(tag, new Entry(3, values.length, b));
        return this;
    }

    private TinyTiff longs(int tag, int... values) {
        ByteBuffer b = ByteBuffer.allocate(4 * values.length).order(order);
        for (int v : values) {
            b.putInt(v);
        }
        entries.put(tag, new Entry(4, values.length, b));
        return this;
    }

    private TinyTiff doubles(int tag, double... values) {
        ByteBuffer b = ByteBuffer.allocate(8 * values.length).order(order);
        for (double v : values) {
            b.putDouble(v);
        }
        entries.put(tag, new Entry(12, values.length, b));
        return this;
    }

    private byte[] raw(double[][] z, int row, int column, int high, int wide, Sample sample) {
        ByteBuffer b = ByteBuffer.allocate(high * wide * sample.bits / 8).order(order);
        for (int r = row; r < row + high; r++) {
            for (int c = column; c < column + wide; c++) {
                double v = r < z.length && c < z[0].length ? z[r][c] : 0;
                switch (sample) {
                    case UINT8 -> b.put((byte) Math.round(v));
                    case INT16 -> b.putShort((short) Math.round(v));
                    case FLOAT32 -> b.putFloat((float) v);
                }
            }
        }
        return b.array();
    }

    private static byte[] packed(byte[] raw, Packing packing) {
        return switch (packing) {
            case NONE -> raw;
            case DEFLATE -> deflated(raw);
            case LZW -> lzw(raw);
        };
    }

    private static byte[] deflated(byte[] raw) {
        Deflater d = new Deflater();
        d.setInput(raw);
        d.finish();
        byte[] buffer = new byte[raw.length * 2 + 64];
        int n = d.deflate(buffer);
        d.end();
        return java.util.Arrays.copyOf(buffer, n);
    }

    /** LZW that never leaves nine-bit codes: every byte as its own code, the table cleared in time. */
    private static byte[] lzw(byte[] raw) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        long bits = 0;
        int held = 0;
        for (int i = -1; i <= raw.length; i++) {
            int[] codes = i == raw.length
                    ? new int[] {257}
                    : i < 0
                            ? new int[] {256}
                            : i % 200 == 199 ? new int[] {raw[i] & 0xFF, 256} : new int[] {raw[i] & 0xFF};
            for (int code : codes) {
                bits = (bits << 9) | code;
                held += 9;
                while (held >= 8) {
                    out.write((int) (bits >>> (held - 8)));
                    held -= 8;
                }
            }
        }
        out.write((int) (bits << (8 - held)));
        return out.toByteArray();
    }
}
