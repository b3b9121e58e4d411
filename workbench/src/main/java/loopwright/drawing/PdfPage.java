package loopwright.drawing;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * Draws drawings as pages of a PDF: vectors at exact size, letters as text with the typefaces embedded. No date and no
 * random number goes in, so the same drawings give the same bytes.
 */
public final class PdfPage {
    private static final long DOCUMENT_ID = 79;

    private final PDPageContentStream page;
    private final Map<Face, PDType0Font> fonts;

    private PdfPage(PDPageContentStream page, Map<Face, PDType0Font> fonts) {
        this.page = page;
        this.fonts = fonts;
    }

    public static byte[] of(List<Drawing> drawings) throws IOException {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.setDocumentId(DOCUMENT_ID);
            document.getDocumentInformation().setTitle(drawings.get(0).title());
            Map<Face, PDType0Font> fonts = fonts(document);
            for (Drawing drawing : drawings) {
                add(document, fonts, drawing);
            }
            document.save(out);
            return out.toByteArray();
        }
    }

    private static Map<Face, PDType0Font> fonts(PDDocument document) throws IOException {
        Map<Face, PDType0Font> fonts = new EnumMap<>(Face.class);
        for (Face face : Face.values()) {
            try (InputStream in = Typeface.file(face)) {
                fonts.put(face, PDType0Font.load(document, in, true));
            }
        }
        return fonts;
    }

    private static void add(PDDocument document, Map<Face, PDType0Font> fonts, Drawing drawing) throws IOException {
        PDPage sheet = new PDPage(new PDRectangle((float) drawing.width(), (float) drawing.height()));
        document.addPage(sheet);
        try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
            // Marks are measured from the top left corner, y down.
            stream.transform(new Matrix(1, 0, 0, -1, 0, (float) drawing.height()));
            PdfPage page = new PdfPage(stream, fonts);
            page.shape(Mark.filled(Ink.PAPER, Trace.rectangle(drawing.sheet())));
            page.marks(drawing.marks());
        }
    }

    private void marks(List<Mark> marks) throws IOException {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Shape shape) {
                shape(shape);
            } else if (mark instanceof Mark.Label label) {
                label(label);
            } else if (mark instanceof Mark.Window window) {
                page.saveGraphicsState();
                path(List.of(window.window()));
                page.clip();
                marks(window.inside());
                page.restoreGraphicsState();
            }
        }
    }

    private void shape(Mark.Shape shape) throws IOException {
        if (shape.traces().isEmpty()) {
            return;
        }
        Ink fill = shape.fill();
        Pen pen = shape.pen();
        if (fill != null) {
            page.setNonStrokingColor(new Color(fill.rgb()));
        }
        if (pen != null) {
            take(pen);
        }
        path(shape.traces());
        paint(fill, pen);
    }

    private void paint(@Nullable Ink fill, @Nullable Pen pen) throws IOException {
        if (fill != null && pen != null) {
            page.fillAndStrokeEvenOdd();
        } else if (fill != null) {
            page.fillEvenOdd();
        } else {
            page.stroke();
        }
    }

    private void take(Pen pen) throws IOException {
        float[] dashes = new float[pen.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = pen.dashes().get(i).floatValue();
        }
        page.setStrokingColor(new Color(pen.ink().rgb()));
        page.setLineWidth((float) pen.width());
        page.setLineJoinStyle(1);
        page.setLineCapStyle(dashes.length == 0 ? 1 : 0);
        page.setLineDashPattern(dashes, 0);
    }

    private void path(List<Trace> traces) throws IOException {
        for (Trace trace : traces) {
            Point first = trace.points().get(0);
            page.moveTo((float) first.x(), (float) first.y());
            for (Point p : trace.points().subList(1, trace.points().size())) {
                page.lineTo((float) p.x(), (float) p.y());
            }
            if (trace.closed()) {
                page.closePath();
            }
        }
    }

    private void label(Mark.Label l) throws IOException {
        String text = Typeface.of(l.face()).drawable(l.text());
        if (l.halo()) {
            take(Pen.of(Ink.PAPER, Halo.width(l.size())));
            show(l, text, RenderingMode.STROKE);
        }
        page.setNonStrokingColor(new Color(l.ink().rgb()));
        show(l, text, RenderingMode.FILL);
    }

    private void show(Mark.Label l, String text, RenderingMode mode) throws IOException {
        double cos = Math.cos(l.turnedRadians());
        double sin = Math.sin(l.turnedRadians());
        double back = l.width() * l.anchor().share();
        page.beginText();
        page.setFont(font(l.face()), (float) l.size());
        page.setRenderingMode(mode);
        // Upright letters in a frame whose y runs down: the second axis of the text is turned over again.
        page.setTextMatrix(new Matrix(
                (float) cos, (float) sin, (float) sin, (float) -cos, (float) (l.at().x() - cos * back), (float)
                        (l.at().y() - sin * back)));
        page.showText(text);
        page.endText();
    }

    private PDType0Font font(Face face) {
        PDType0Font font = fonts.get(face);
        if (font == null) {
            throw new IllegalStateException("a typeface was not loaded: " + face);
        }
        return font;
    }
}
