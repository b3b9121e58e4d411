package loopwright.drawing;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/** Draws one drawing as a page of a PDF. */
final class PdfPage {
    private final PDPageContentStream page;
    private final Map<Face, PDType0Font> fonts;
    private final PdfTags tags;
    private final boolean barePaper;
    /** What the page draws with already; asked for again it would only make the file larger. */
    private @Nullable Pen pen;

    private @Nullable Ink fill;

    private PdfPage(PDPageContentStream page, Map<Face, PDType0Font> fonts, PdfTags tags, boolean barePaper) {
        this.page = page;
        this.fonts = fonts;
        this.tags = tags;
        this.barePaper = barePaper;
    }

    /** A drawing without any tag is one figure, and its title says what it shows. */
    static void add(PDDocument document, Map<Face, PDType0Font> fonts, PdfTags tags, Drawing drawing, boolean barePaper)
            throws IOException {
        PDPage sheet = new PDPage(new PDRectangle((float) drawing.width(), (float) drawing.height()));
        document.addPage(sheet);
        tags.on(sheet);
        try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
            // Marks are measured from the top left corner, y down.
            stream.transform(new Matrix(1, 0, 0, -1, 0, (float) drawing.height()));
            PdfPage page = new PdfPage(stream, fonts, tags, barePaper);
            if (!barePaper) {
                page.marks(List.of(Mark.filled(Ink.PAPER, Trace.rectangle(drawing.sheet()))), null, false);
            }
            boolean tagged = drawing.marks().stream().anyMatch(PdfPage::isTagged);
            page.marks(
                    tagged
                            ? drawing.marks()
                            : List.of(new Mark.Tagged(Mark.Tag.FIGURE, drawing.title(), 0, drawing.marks())),
                    null,
                    false);
        }
    }

    private static boolean isTagged(Mark mark) {
        if (mark instanceof Mark.Moved moved) {
            return moved.inside().stream().anyMatch(PdfPage::isTagged);
        }
        if (mark instanceof Mark.Window window) {
            return window.inside().stream().anyMatch(PdfPage::isTagged);
        }
        return mark instanceof Mark.Tagged;
    }

    /**
     * @param parent what tagged marks belong to; null: the document
     * @param isContent true inside a tagged mark that holds what is drawn
     */
    private void marks(List<Mark> marks, @Nullable PDStructureElement parent, boolean isContent) throws IOException {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Tagged tagged) {
                tagged(tagged, parent, isContent);
            } else if (mark instanceof Mark.Window window) {
                page.saveGraphicsState();
                path(List.of(window.window()));
                page.clip();
                marks(window.inside(), parent, isContent);
                restore();
            } else if (mark instanceof Mark.Moved moved) {
                page.saveGraphicsState();
                page.transform(new Matrix(1, 0, 0, 1, (float) moved.right(), (float) moved.down()));
                marks(moved.inside(), parent, isContent);
                restore();
            } else if (isContent) {
                draw(mark);
            } else {
                page.beginMarkedContent(COSName.ARTIFACT);
                draw(mark);
                page.endMarkedContent();
            }
        }
    }

    private void restore() throws IOException {
        page.restoreGraphicsState();
        pen = null;
        fill = null;
    }

    private void tagged(Mark.Tagged mark, @Nullable PDStructureElement parent, boolean isContent) throws IOException {
        if (isContent) {
            marks(mark.inside(), parent, true);
            return;
        }
        PDStructureElement element = tags.open(mark, parent);
        if (!mark.tag().isContent()) {
            marks(mark.inside(), element, false);
            return;
        }
        page.beginMarkedContent(COSName.getPDFName(mark.tag().pdf()), tags.number(element));
        marks(mark.inside(), element, true);
        page.endMarkedContent();
    }

    private void draw(Mark mark) throws IOException {
        if (mark instanceof Mark.Shape shape) {
            shape(shape);
        } else if (mark instanceof Mark.Label label) {
            label(label);
        }
    }

    private Color colour(Ink ink) {
        return barePaper && ink == Ink.PAPER ? Color.WHITE : new Color(ink.rgb());
    }

    private void shape(Mark.Shape shape) throws IOException {
        if (shape.traces().isEmpty()) {
            return;
        }
        Ink fill = shape.fill();
        Pen pen = shape.pen();
        if (fill != null) {
            take(fill);
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

    private void take(Ink ink) throws IOException {
        if (ink != fill) {
            page.setNonStrokingColor(colour(ink));
            fill = ink;
        }
    }

    private void take(Pen pen) throws IOException {
        if (pen.equals(this.pen)) {
            return;
        }
        this.pen = pen;
        float[] dashes = new float[pen.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = pen.dashes().get(i).floatValue();
        }
        page.setStrokingColor(colour(pen.ink()));
        page.setLineWidth((float) pen.width());
        page.setLineJoinStyle(1);
        page.setLineCapStyle(dashes.length == 0 ? 1 : 0);
        page.setLineDashPattern(dashes, 0);
    }

    private void path(List<Trace> traces) throws IOException {
        for (Trace trace : traces) {
            Point first = trace.points().get(0);
            page.moveTo(hundredth(first.x()), hundredth(first.y()));
            for (Point p : trace.points().subList(1, trace.points().size())) {
                page.lineTo(hundredth(p.x()), hundredth(p.y()));
            }
            if (trace.closed()) {
                page.closePath();
            }
        }
    }

    /** 0.01 point is 3.5 micrometres; more digits only make the file larger. */
    private static float hundredth(double value) {
        return Math.round(value * 100) / 100f;
    }

    private void label(Mark.Label l) throws IOException {
        String text = Typeface.of(l.face()).drawable(l.text());
        if (l.halo()) {
            take(Pen.of(Ink.PAPER, Halo.width(l.size())));
            show(l, text, RenderingMode.STROKE);
        }
        take(l.ink());
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
