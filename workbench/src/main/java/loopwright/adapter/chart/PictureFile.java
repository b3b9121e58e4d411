package loopwright.adapter.chart;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import loopwright.action.UserFault;
import loopwright.action.WholeFile;
import loopwright.drawing.Drawing;
import loopwright.drawing.PdfFile;
import loopwright.drawing.Raster;
import loopwright.drawing.SvgPage;

/** Writes drawings to files, PNG, SVG or PDF by the ending of the name; a file appears whole or not at all. */
final class PictureFile {
    private PictureFile() {}

    static void write(Drawing drawing, Path target) {
        WholeFile.write(target, bytes(drawing, target));
    }

    private static byte[] bytes(Drawing drawing, Path target) {
        String name = target.getFileName() == null ? "" : target.getFileName().toString();
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".svg")) {
            return SvgPage.of(drawing).getBytes(StandardCharsets.UTF_8);
        }
        if (lower.endsWith(".png")) {
            return Raster.png(drawing, Raster.DOTS_PER_INCH);
        }
        if (lower.endsWith(".pdf")) {
            return PdfFile.of(drawing.title(), List.of(drawing));
        }
        throw new UserFault(
                "The picture's name \"" + name + "\" must end in .png, .svg or .pdf, which says how to draw it.");
    }
}
