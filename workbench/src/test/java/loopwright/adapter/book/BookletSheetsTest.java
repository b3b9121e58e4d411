package loopwright.adapter.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.BookPrinter.Paper;
import loopwright.drawing.Drawing;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import loopwright.drawing.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BookletSheetsTest {
    private static Drawing page(int number) {
        Mark text = Mark.text("p" + number, new Point(50, 50), Mark.Anchor.START, 12);
        return new Drawing("p" + number, BookPage.WIDTH, BookPage.HEIGHT, List.of(text));
    }

    private static List<Drawing> pages(int count) {
        List<Drawing> out = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            out.add(page(i));
        }
        return out;
    }

    /** Numbers on one side of a sheet, from left to right. */
    private static List<String> side(Drawing side) {
        return Labels.of(side.marks()).stream()
                .filter(l -> l.text().matches("p\\d+|Notes"))
                .sorted((a, b) -> Double.compare(a.at().x(), b.at().x()))
                .map(Mark.Label::text)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"4", "8", "40", "37", "1"})
    void foldedSheetsReadFromFrontToBack(int count) {
        List<Drawing> sheets = BookletSheets.of(pages(count), Paper.A4);
        int leaves = sheets.size() / 2;
        List<String> read = new ArrayList<>();
        // Laid on each other and folded, one turns the right halves from the outermost sheet inwards (the front first,
        // its
        // back being the left half of the other side), then the left halves from the innermost outwards.
        for (int i = 0; i < leaves; i++) {
            read.add(side(sheets.get(2 * i)).get(1));
            read.add(side(sheets.get(2 * i + 1)).get(0));
        }
        for (int i = leaves - 1; i >= 0; i--) {
            read.add(side(sheets.get(2 * i + 1)).get(1));
            read.add(side(sheets.get(2 * i)).get(0));
        }
        for (int i = 0; i < read.size(); i++) {
            assertThat(read.get(i)).isEqualTo(i < count ? "p" + (i + 1) : "Notes");
        }
        assertThat(read).hasSize((count + 3) / 4 * 4);
    }

    @Test
    void aHoleAndItsGreenFaceEachOther() {
        List<Drawing> sheets = BookletSheets.of(pages(40), Paper.A4);
        // Pages 2k and 2k + 1 are seen together: the left half of a back and the right half of the next front.
        for (int i = 0; i + 1 < sheets.size() / 2; i++) {
            int left = Integer.parseInt(side(sheets.get(2 * i + 1)).get(0).substring(1));
            int right = Integer.parseInt(side(sheets.get(2 * i + 2)).get(1).substring(1));
            assertThat(right).isEqualTo(left + 1);
            assertThat(left % 2).isZero();
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void bothPagesAndTheirMarksFitOnTheSheet(Paper paper) {
        for (Drawing side : BookletSheets.of(pages(8), paper)) {
            assertThat(side.width()).isGreaterThan(side.height());
            assertThat(side.width()).isGreaterThan(2 * BookPage.WIDTH + 40);
            assertThat(side.height()).isGreaterThan(BookPage.HEIGHT + 40);
            assertThat(Labels.of(side.marks()))
                    .allMatch(l -> side.sheet().grown(-12).contains(l.extent()));
        }
    }
}
