package loopwright.adapter.chart;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import loopwright.action.UserFault;

/** Writes drawings to files, PNG, SVG or PDF by the ending of the name; a file appears whole or not at all. */
final class PictureFile {
    /** Fine enough for 0.3 pt lines on paper; a page of 11 x 8.5 in is then 1,760 x 1,360 pixels. */
    static final double DOTS_PER_INCH = 160;

    private PictureFile() {}

    static void write(Drawing drawing, Path target) {
        byte[] bytes = bytes(drawing, target);
        Path absolute = target.toAbsolutePath();
        Path folder = absolute.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new UserFault("The picture " + target + " cannot be written because the folder " + folder
                    + " does not exist; create it or name another place.");
        }
        Path unfinished = folder.resolve("." + absolute.getFileName() + ".part");
        try {
            Files.write(unfinished, bytes);
            Files.move(unfinished, absolute, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            discard(unfinished);
            throw new UserFault(
                    "The picture " + target + " cannot be written (" + e.getMessage()
                            + "); check the folder's rights and the room on the disk.",
                    e);
        }
    }

    private static byte[] bytes(Drawing drawing, Path target) {
        String name = target.getFileName() == null ? "" : target.getFileName().toString();
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".svg")) {
            return SvgPage.of(drawing).getBytes(StandardCharsets.UTF_8);
        }
        if (lower.endsWith(".png")) {
            return png(drawing);
        }
        if (lower.endsWith(".pdf")) {
            return pdf(drawing);
        }
        throw new UserFault(
                "The picture's name \"" + name + "\" must end in .png, .svg or .pdf, which says how to draw it.");
    }

    private static byte[] pdf(Drawing drawing) {
        try {
            return PdfPage.of(List.of(drawing));
        } catch (IOException e) {
            throw new IllegalStateException("a picture could not be encoded in memory", e);
        }
    }

    private static byte[] png(Drawing drawing) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.setUseCache(false);
            ImageIO.write(Raster.of(drawing, DOTS_PER_INCH), "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException("a picture could not be encoded in memory", e);
        }
    }

    private static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // The first failure is the one worth telling; a leftover .part file harms nothing.
            return;
        }
    }
}
