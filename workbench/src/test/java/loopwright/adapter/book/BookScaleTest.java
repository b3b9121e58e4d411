package loopwright.adapter.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.List;
import loopwright.action.Book;
import loopwright.action.BookPrinter.Paper;
import loopwright.action.LengthUnit;
import loopwright.action.SyntheticBook;
import loopwright.drawing.Drawing;
import loopwright.drawing.Ink;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import loopwright.drawing.PdfFile;
import loopwright.drawing.Raster;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** Sizes and scales, measured on pictures of the pages, pixel by pixel. */
class BookScaleTest {
    private static final double DOTS = 600;
    /** The issue's own: sizes within 0.5 %. */
    private static final double ALLOWED = 0.005;

    /** Pixels: a line 2.5 points wide, with room. */
    private static final int ACROSS = 30;

    private static final Book BOOK = SyntheticBook.of(OddCourses.measured(), LengthUnit.YARDS);

    @Test
    void aGreenIsDrawnAtTheLargestScaleTheRulesAllow() {
        Drawing green = page(Book.Kind.GREEN);
        BufferedImage image = Raster.of(green, DOTS);
        // 30 yards at 3/8 inch to 5 yards are 2.25 inches.
        // Half of the edge's line, 0.9 points wide, is drawn over the green at either end.
        assertThat(longestRun(image, Ink.GREEN) + 0.9 / 72).isEqualTo(2.25, within(2.25 * ALLOWED));
        assertThat(scaleOf(green)).isEqualTo(480);
    }

    @Test
    void aHoleIsDrawnAtTheScaleItStates() {
        Drawing hole = page(Book.Kind.HOLE);
        BufferedImage image = Raster.of(hole, DOTS);
        double inches = 150 * 36.0 / scaleOf(hole);
        assertThat(longestRun(image, Ink.FAIRWAY) + 0.5 / 72).isEqualTo(inches, within(inches * ALLOWED));
    }

    @Test
    void thePrintedPageIsAsLargeAsTheRulesAllowAtMost() throws Exception {
        byte[] pdf = PdfFile.forPrinter("b", BookletSheets.of(PrintedBook.pages(BOOK), Paper.LETTER));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage side = new PDFRenderer(document).renderImageWithDPI(0, 300);
            assertThat(side.getWidth() / 300.0).isEqualTo(11, within(11 * ALLOWED));
            assertThat(side.getHeight() / 300.0).isEqualTo(8.5, within(8.5 * ALLOWED));
            // The cut marks stand at 4.2 and 6.9 inches; the first stroke from the left on the row of the upper ones.
            int row = (int) Math.round(300 * ((8.5 - 6.9) / 2 - 12 / 72.0));
            int first = darkAlong(side, row, 0, 1);
            int last = darkAlong(side, row, side.getWidth() - 1, -1);
            assertThat((last - first) / 300.0).isEqualTo(8.4, within(8.4 * ALLOWED));
        }
    }

    private static Drawing page(Book.Kind kind) {
        List<Drawing> pages = PrintedBook.pages(BOOK);
        for (int i = 0; i < pages.size(); i++) {
            if (BOOK.pages().get(i).kind() == kind) {
                return pages.get(i);
            }
        }
        throw new IllegalStateException("no page " + kind);
    }

    private static int scaleOf(Drawing page) {
        return Labels.of(page.marks()).stream()
                .map(Mark.Label::text)
                .filter(t -> t.startsWith("1:"))
                .mapToInt(t -> Integer.parseInt(t.substring(2).replaceAll("\\D.*", "")))
                .findFirst()
                .orElseThrow();
    }

    /** Inches of the longest run of an ink down the page; what is drawn across it (a line of play, a cross) is no end. */
    private static double longestRun(BufferedImage image, Ink ink) {
        int best = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            int first = -1;
            int last = -1;
            for (int y = 0; y < image.getHeight(); y++) {
                if ((image.getRGB(x, y) & 0xFFFFFF) == ink.rgb()) {
                    first = first < 0 || y - last > ACROSS ? y : first;
                    last = y;
                    best = Math.max(best, last - first + 1);
                }
            }
        }
        return best / DOTS;
    }

    private static int darkAlong(BufferedImage image, int row, int from, int step) {
        for (int x = from; x >= 0 && x < image.getWidth(); x += step) {
            if ((image.getRGB(x, row) & 255) < 140) {
                return x;
            }
        }
        throw new IllegalStateException("no mark on row " + row);
    }
}
