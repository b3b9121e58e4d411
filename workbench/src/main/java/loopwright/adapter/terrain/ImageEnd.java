package loopwright.adapter.terrain;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import loopwright.action.UserFault;

/**
 * Whether a PNG or JPEG is whole: the platform's readers make up what is missing and say nothing, or only warn. The chunks
 * of a PNG are walked to the last one (PNG specification, third edition, 5.3 and 11.2.5); the picture of a JPEG ends with a
 * marker (ITU-T T.81, table B.1), behind which cameras may put a little of their own.
 */
final class ImageEnd {
    private static final long PNG = 0x89504E470D0A1A0AL;
    private static final int IEND = 0x49454E44;
    /** Behind the length of a chunk and its kind. */
    private static final int CHECKSUM_BYTES = 4;

    /** The first three bytes of a JPEG, as the head of a long. */
    private static final long JPEG = 0xFFD8FFL;

    private static final int JPEG_TAIL_BYTES = 64 * 1024;
    private static final byte MARKER = (byte) 0xFF;
    private static final byte END_OF_IMAGE = (byte) 0xD9;

    private ImageEnd() {}

    /** Refuses an image that breaks off; says nothing of files of other kinds. */
    static void check(Path file, String label) throws IOException {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
            long head = in.readLong();
            boolean whole = head == PNG ? endsLikePng(in) : head >>> 40 != JPEG || endsLikeJpeg(file);
            if (!whole) {
                throw new UserFault(label + " breaks off before its end; save or send it again, whole.");
            }
        } catch (EOFException e) {
            throw new UserFault(label + " is no image that can be read; accepted are GeoTIFF, PNG and JPEG.", e);
        }
    }

    private static boolean endsLikePng(DataInputStream in) throws IOException {
        try {
            int kind = 0;
            while (kind != IEND) {
                int length = in.readInt();
                kind = in.readInt();
                if (length < 0) {
                    return true; // no chunk at all: the reader says what is wrong
                }
                in.skipNBytes((long) length + CHECKSUM_BYTES);
            }
            return true;
        } catch (EOFException e) {
            return false;
        }
    }

    private static boolean endsLikeJpeg(Path file) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            byte[] tail = new byte[(int) Math.min(JPEG_TAIL_BYTES, in.length())];
            in.seek(in.length() - tail.length);
            in.readFully(tail);
            for (int i = tail.length - 1; i > 0; i--) {
                if (tail[i - 1] == MARKER && tail[i] == END_OF_IMAGE) {
                    return true;
                }
            }
            return false;
        }
    }
}
