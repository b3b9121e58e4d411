package loopwright.adapter.osm;

import java.nio.charset.StandardCharsets;

/**
 * Reads one message of the protocol buffer wire format: fields of a number and a value, told apart by the value's
 * wire type (0 varint, 1 eight bytes, 2 length and bytes, 5 four bytes). Every length is checked against what is left.
 */
final class WireReader {
    private final byte[] data;
    private final int end;
    private int at;
    private int wireType;

    WireReader(byte[] data) {
        this(data, 0, data.length);
    }

    private WireReader(byte[] data, int from, int end) {
        this.data = data;
        this.at = from;
        this.end = end;
    }

    /** A message that does not follow the wire format. */
    static final class Malformed extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Malformed(String what) {
            super(what);
        }
    }

    boolean hasMore() {
        return at < end;
    }

    /** The number of the next field; its value must then be read or skipped. */
    int field() {
        long tag = varint();
        wireType = (int) (tag & 7);
        return (int) (tag >>> 3);
    }

    long varint() {
        long value = 0;
        for (int shift = 0; shift < 64; shift += 7) {
            if (at >= end) {
                throw new Malformed("a number breaks off");
            }
            byte b = data[at++];
            value |= (long) (b & 0x7F) << shift;
            if (b >= 0) {
                return value;
            }
        }
        throw new Malformed("a number has more than ten bytes");
    }

    /** A number whose sign is kept in its lowest bit. */
    long zigzag() {
        long v = varint();
        return v >>> 1 ^ -(v & 1);
    }

    /** The bytes of a field of length and bytes, as a message or a packed list of their own. */
    WireReader message() {
        if (wireType != 2) {
            throw new Malformed("a list or message is expected");
        }
        int length = length();
        WireReader out = new WireReader(data, at, at + length);
        at += length;
        return out;
    }

    byte[] bytes() {
        WireReader m = message();
        return java.util.Arrays.copyOfRange(data, m.at, m.end);
    }

    String text() {
        WireReader m = message();
        return new String(data, m.at, m.end - m.at, StandardCharsets.UTF_8);
    }

    private int length() {
        long length = varint();
        if (length < 0 || length > end - at) {
            throw new Malformed("a length of " + length + " reaches beyond its message");
        }
        return (int) length;
    }

    void skip() {
        switch (wireType) {
            case 0 -> varint();
            case 1 -> jump(8);
            case 2 -> jump(length());
            case 5 -> jump(4);
            default -> throw new Malformed("an unknown wire type " + wireType);
        }
    }

    private void jump(int bytes) {
        if (bytes > end - at) {
            throw new Malformed("a value breaks off");
        }
        at += bytes;
    }
}
