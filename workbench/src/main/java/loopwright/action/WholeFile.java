package loopwright.action;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** How every adapter writes a file: it appears whole or not at all. */
public final class WholeFile {
    private WholeFile() {}

    public static void write(Path target, String text) {
        write(target, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Refuses a place that cannot be written, before long work is begun for it. */
    public static void checkPlace(Path target) {
        Path absolute = target.toAbsolutePath();
        Path folder = absolute.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new UserFault(target + ": its folder does not exist; make it first or choose another place.");
        }
        if (Files.isDirectory(absolute)) {
            throw new UserFault(target + " is a folder; name a file to write.");
        }
    }

    public static void write(Path target, byte[] bytes) {
        checkPlace(target);
        Path absolute = target.toAbsolutePath();
        try {
            Path beside = absolute.resolveSibling("." + absolute.getFileName() + ".part");
            try {
                Files.write(beside, bytes);
                Files.move(beside, absolute, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new UserFault(target + " cannot be written (" + e.getMessage() + "); choose another place.", e);
        }
    }
}
