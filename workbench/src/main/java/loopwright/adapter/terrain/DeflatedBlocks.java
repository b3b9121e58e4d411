package loopwright.adapter.terrain;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import loopwright.action.UserFault;
import mil.nga.tiff.FileDirectory;

/**
 * Refuses a deflated strip or tile that unpacks to more than it states or that breaks off: the TIFF library unpacks
 * whatever comes, and waits for ever for what does not. Each block is unpacked once into nothing, and counted.
 */
final class DeflatedBlocks {
    private static final List<Integer> DEFLATE = List.of(8, 32946);

    private DeflatedBlocks() {}

    /** {@code mostBytes}: what a block may unpack to. */
    static void check(Path file, FileDirectory directory, long mostBytes) throws IOException {
        Integer compression = directory.getCompression();
        if (compression == null || !DEFLATE.contains(compression)) {
            return;
        }
        List<? extends Number> offsets = directory.isTiled() ? directory.getTileOffsets() : directory.getStripOffsets();
        List<? extends Number> sizes =
                directory.isTiled() ? directory.getTileByteCounts() : directory.getStripByteCounts();
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            for (int i = 0; i < offsets.size(); i++) {
                byte[] packed = new byte
                        [Math.toIntExact(Math.min(in.length(), sizes.get(i).longValue()))];
                in.seek(offsets.get(i).longValue());
                in.readFully(packed);
                check(file, packed, mostBytes);
            }
        }
    }

    private static void check(Path file, byte[] packed, long mostBytes) {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(packed);
            byte[] buffer = new byte[1 << 16];
            while (!inflater.finished()) {
                if (inflater.inflate(buffer) == 0 && !inflater.finished()) {
                    throw new UserFault(file + " holds a block that breaks off; export it again.");
                }
                if (inflater.getBytesWritten() > mostBytes) {
                    throw new UserFault(file + " holds a block that unpacks to more than it states; export it again.");
                }
            }
        } catch (DataFormatException e) {
            throw new UserFault(file + " holds a damaged block; export it again.", e);
        } finally {
            inflater.end();
        }
    }
}
