package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.List;
import loopwright.action.LengthUnit;
import loopwright.demo.DemoCourse;
import loopwright.drawing.Drawing;
import loopwright.drawing.Mark;
import loopwright.drawing.PdfFile;
import loopwright.drawing.Point;
import loopwright.drawing.Raster;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PdfPageTest {
    @Test
    void pagesHaveTheSizeOfTheSheetAndTheirTextCanBeReadOut() throws Exception {
        Drawing chart = HoleChart.of(SyntheticPlan.of(DemoCourse.create(), 4, true));
        byte[] bytes = PdfFile.of("a chart", List.of(chart, chart));
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat((double) document.getPage(1).getMediaBox().getWidth()).isEqualTo(chart.width());
            assertThat((double) document.getPage(1).getMediaBox().getHeight()).isEqualTo(chart.height());
            assertThat(new PDFTextStripper().getText(document))
                    .contains("par 5, 507 yd from the white tees", "the same for you", "penalty area 9 %");
        }
    }

    @Test
    void everyTypefaceIsEmbedded() throws Exception {
        try (PDDocument document = Loader.loadPDF(
                PdfFile.of("a chart", List.of(CourseChart.of(SyntheticCourse.twoHoles(), LengthUnit.YARDS))))) {
            var resources = document.getPage(0).getResources();
            int fonts = 0;
            for (var name : resources.getFontNames()) {
                PDFont font = resources.getFont(name);
                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                fonts++;
            }
            assertThat(fonts).isEqualTo(3);
        }
    }

    @Test
    void looksLikeThePixelPicture() throws Exception {
        Drawing chart = CourseChart.of(SyntheticCourse.twoHoles(), LengthUnit.YARDS);
        BufferedImage pixels = Raster.of(chart, 72);
        try (PDDocument document = Loader.loadPDF(PdfFile.of("a chart", List.of(chart)))) {
            BufferedImage rendered = new PDFRenderer(document).renderImageWithDPI(0, 72);
            double same = difference(pixels, rendered, 0);
            // Two renderers smooth edges differently, which costs some grey levels near lines and letters and none on
            // the
            // open paper (2.1 of 255 on average when this was written); shifting the page by two points costs much
            // more.
            assertThat(same).isLessThan(3);
            assertThat(difference(pixels, rendered, 2)).isGreaterThan(2 * same);
        }
    }

    /** Mean difference of the blue channel, 0 to 255, with the second picture moved right by some pixels. */
    private static double difference(BufferedImage a, BufferedImage b, int moved) {
        double sum = 0;
        int width = Math.min(a.getWidth(), b.getWidth()) - moved;
        int height = Math.min(a.getHeight(), b.getHeight());
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                sum += Math.abs((a.getRGB(x, y) & 255) - (b.getRGB(x + moved, y) & 255));
            }
        }
        return sum / width / height;
    }

    @Test
    void aCharacterTheTypefaceLacksBecomesAQuestionMark() throws Exception {
        Drawing drawing =
                new Drawing("t", 200, 40, List.of(Mark.text("hole \u6c34 1", new Point(5, 20), Mark.Anchor.START, 10)));
        try (PDDocument document = Loader.loadPDF(PdfFile.of("a chart", List.of(drawing)))) {
            assertThat(new PDFTextStripper().getText(document)).contains("hole ? 1");
        }
    }
}
