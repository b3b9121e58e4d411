package loopwright.adapter.osm;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import loopwright.action.UserFault;

/**
 * OSM PBF: blobs one after the other, each unpacked, read and forgotten. A blob may pack at most 32 MiB and unpacks to
 * exactly the size it states, as the format's own limits demand; what lies about its size is refused.
 */
final class OsmPbfSource implements OsmSource {
    static final int MOST_HEADER_BYTES = 64 << 10;
    static final int MOST_BLOB_BYTES = 32 << 20;
    private static final Set<String> KNOWN = Set.of("OsmSchema-V0.6", "DenseNodes");

    private final Path file;

    OsmPbfSource(Path file) {
        this.file = file;
    }

    static boolean looksLike(byte[] head) {
        return head.length > 15
                && head[0] == 0
                && head[1] == 0
                && new String(head, 4, 12, java.nio.charset.StandardCharsets.ISO_8859_1).contains("OSMHeader");
    }

    @Override
    public void visit(OsmVisitor visitor) {
        long at = 0;
        try (InputStream raw = Files.newInputStream(file);
                DataInputStream in = new DataInputStream(new BufferedInputStream(raw, 1 << 16))) {
            while (true) {
                int headerSize = firstInt(in);
                if (headerSize < 0) {
                    return;
                }
                at += 4L + headerSize + blob(in, headerSize, visitor);
            }
        } catch (WireReader.Malformed | EOFException | DataFormatException e) {
            String why = e instanceof EOFException ? "it breaks off" : String.valueOf(e.getMessage());
            throw new UserFault(
                    file + ", blob at byte " + at + ": the PBF file is damaged (" + why + "); download it again.", e);
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read: " + e.getMessage() + ".", e);
        }
    }

    /** The size of the next header, or -1 at the end of the file. */
    private static int firstInt(DataInputStream in) throws IOException {
        int first = in.read();
        if (first < 0) {
            return -1;
        }
        int size = first << 24 | in.readUnsignedByte() << 16 | in.readUnsignedShort();
        if (size <= 0 || size > MOST_HEADER_BYTES) {
            throw new WireReader.Malformed("a header of " + size + " bytes");
        }
        return size;
    }

    private int blob(DataInputStream in, int headerSize, OsmVisitor visitor) throws IOException, DataFormatException {
        WireReader header = new WireReader(readExactly(in, headerSize));
        String type = "";
        long size = -1;
        while (header.hasMore()) {
            switch (header.field()) {
                case 1 -> type = header.text();
                case 3 -> size = header.varint();
                default -> header.skip();
            }
        }
        if (size < 0 || size > MOST_BLOB_BYTES) {
            throw new WireReader.Malformed("a blob of " + size + " bytes");
        }
        byte[] packed = readExactly(in, (int) size);
        if (type.equals("OSMData")) {
            new PbfBlock(unpacked(packed)).visit(visitor);
        } else if (type.equals("OSMHeader")) {
            checkFeatures(new WireReader(unpacked(packed)));
        }
        return (int) size;
    }

    private static byte[] readExactly(DataInputStream in, int size) throws IOException {
        byte[] out = in.readNBytes(size);
        if (out.length < size) {
            throw new EOFException();
        }
        return out;
    }

    private static byte[] unpacked(byte[] blob) throws DataFormatException {
        WireReader reader = new WireReader(blob);
        long size = 0;
        byte[] zlib = new byte[0];
        while (reader.hasMore()) {
            switch (reader.field()) {
                case 1 -> {
                    return reader.bytes();
                }
                case 2 -> size = reader.varint();
                case 3 -> zlib = reader.bytes();
                case 4, 5, 6, 7 -> throw new WireReader.Malformed("it is packed otherwise than by zlib");
                default -> reader.skip();
            }
        }
        if (size < 0 || size > MOST_BLOB_BYTES) {
            throw new WireReader.Malformed("it would unpack to " + size + " bytes");
        }
        return inflate(zlib, (int) size);
    }

    private static byte[] inflate(byte[] zlib, int size) throws DataFormatException {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(zlib);
            byte[] out = new byte[size];
            int done = 0;
            while (done < size) {
                int more = inflater.inflate(out, done, size - done);
                if (more == 0 && (inflater.finished() || inflater.needsInput() || inflater.needsDictionary())) {
                    throw new WireReader.Malformed("it unpacks to less than it states");
                }
                done += more;
            }
            if (inflater.inflate(new byte[1]) != 0) {
                throw new WireReader.Malformed("it unpacks to more than it states");
            }
            return out;
        } finally {
            inflater.end();
        }
    }

    private void checkFeatures(WireReader header) {
        while (header.hasMore()) {
            if (header.field() == 4) {
                String feature = header.text();
                if (!KNOWN.contains(feature)) {
                    throw new UserFault(file + " needs the PBF feature \"" + feature
                            + "\", which cannot be read; export" + " an ordinary extract without history.");
                }
            } else {
                header.skip();
            }
        }
    }
}
