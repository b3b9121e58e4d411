package loopwright.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Widths and outlines of letters, from font files carried in the program, so that a text is the same on every machine,
 * with or without installed fonts. A character the font lacks is drawn as the font's own empty box.
 */
public final class Typeface {
    private static final Map<Face, Typeface> LOADED = new ConcurrentHashMap<>();

    private final TrueTypeFont font;
    private final CmapLookup lookup;
    private final double unitsPerEm;

    private Typeface(TrueTypeFont font) throws IOException {
        this.font = font;
        lookup = font.getUnicodeCmapLookup();
        unitsPerEm = font.getUnitsPerEm();
    }

    public static Typeface of(Face face) {
        return LOADED.computeIfAbsent(face, Typeface::load);
    }

    private static Typeface load(Face face) {
        try (InputStream in = file(face)) {
            return new Typeface(new TTFParser().parse(new RandomAccessReadBuffer(in)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The font file; the caller closes it. */
    public static InputStream file(Face face) throws IOException {
        InputStream in = Typeface.class.getResourceAsStream("/loopwright/fonts/" + face.file());
        if (in == null) {
            throw new IOException("the typeface " + face.file() + " is missing from the program");
        }
        return in;
    }

    /** The text with a question mark for every character that the font lacks. */
    public synchronized String drawable(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.appendCodePoint(lookup.getGlyphId(c) == 0 ? '?' : c));
        return out.toString();
    }

    /** Width in points at a size in points. */
    public synchronized double width(String text, double size) {
        try {
            double units = 0;
            for (int c : text.codePoints().toArray()) {
                units += font.getAdvanceWidth(lookup.getGlyphId(c));
            }
            return units * size / unitsPerEm;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Outline of a text that starts at (0, 0) on its base line, y down, in points. */
    public synchronized Path2D outline(String text, double size) {
        try {
            double scale = size / unitsPerEm;
            GeneralPath out = new GeneralPath(Path2D.WIND_NON_ZERO);
            double x = 0;
            for (int c : text.codePoints().toArray()) {
                int glyph = lookup.getGlyphId(c);
                GlyphData data = font.getGlyph().getGlyph(glyph);
                if (data != null) {
                    out.append(data.getPath().getPathIterator(new AffineTransform(scale, 0, 0, -scale, x, 0)), false);
                }
                x += font.getAdvanceWidth(glyph) * scale;
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
