package loopwright.adapter.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import loopwright.action.Book;
import loopwright.action.BookPrinter.Paper;
import loopwright.action.CourseWalk;
import loopwright.action.LengthUnit;
import loopwright.action.MeasuringSheet;
import loopwright.action.ReadLengths;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sheets to carry on a clipboard: everything on the paper, nothing over anything else. */
class WholeSheetTest {
    private static final Path DEMO = Path.of("..", "demo", "course.geojson");
    /** Printers leave this much of a sheet bare, points: a quarter of an inch and more. */
    private static final double BARE = 24;

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everythingFitsOnItsSheet(Paper paper) {
        List<Book> books = List.of(
                new MeasuringSheet((file, text) -> {}).sheets(ReadLengths.USUAL),
                new CourseWalk(new OsmCourseFiles()).sheets(DEMO, "middle", LengthUnit.METRES));
        for (Book book : books) {
            for (Book.Page page : book.pages()) {
                Drawing sheet = new WholeSheet(page, paper, 1).drawing();
                Extent clear = sheet.sheet().grown(-BARE);
                List<Mark.Label> labels = Labels.of(sheet.marks());
                assertThat(labels).allMatch(l -> clear.contains(l.extent()));
                assertThat(Labels.listOverlaps(labels)).as(page.title()).isEmpty();
                assertThat(labels).allMatch(l -> l.size() >= 9);
            }
        }
    }

    @Test
    void everyBallOfTheMeasuringSessionHasItsRow() {
        List<String> cells = new MeasuringSheet((file, text) -> {})
                .sheets(ReadLengths.USUAL).pages().stream()
                        .flatMap(p -> Labels.of(
                                new WholeSheet(p, Paper.A4, 1).drawing().marks())
                                .stream())
                        .map(Mark.Label::text)
                        .toList();
        assertThat(cells)
                .contains("7-iron 15", "driver 12", "pitching wedge half 6")
                .contains("12 yd chip 6", "12 yd bunker 6", "6 ft putt 6", "30 ft putt 6");
    }
}
