package loopwright.adapter.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import loopwright.action.Book;
import loopwright.action.BookPrinter.Paper;
import loopwright.action.LengthUnit;
import loopwright.action.ReadLengths;
import loopwright.action.ReportSheets;
import loopwright.action.SyntheticReport;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import org.apache.pdfbox.preflight.parser.PreflightParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A report on paper: all of it there, nothing over anything else, the player's on one page. */
class ReportPagesTest {
    /** Printers leave this much of a sheet bare, points. */
    private static final double BARE = 24;

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everythingFitsAndNoTextCoversAnother(Paper paper) {
        for (Book book : List.of(
                ReportSheets.full(SyntheticReport.create(), ReadLengths.USUAL),
                ReportSheets.page(SyntheticReport.create(), ReadLengths.USUAL))) {
            for (Drawing sheet : ReportPages.of(book, paper)) {
                Extent clear = sheet.sheet().grown(-BARE);
                List<Mark.Label> labels = Labels.of(sheet.marks());
                assertThat(labels).allMatch(l -> clear.contains(l.extent()));
                assertThat(Labels.listOverlaps(labels)).isEmpty();
            }
        }
    }

    @Test
    void thePlayersPageIsOnePage() {
        assertThat(ReportPages.of(ReportSheets.page(SyntheticReport.create(), ReadLengths.USUAL), Paper.LETTER))
                .hasSize(1);
    }

    @Test
    void everyLineAndCellOfTheReportIsOnItsSheetsInOrder() {
        Book book = ReportSheets.full(SyntheticReport.create(), ReadLengths.USUAL);
        String printed =
                Labels.of(ReportPages.of(book, Paper.A4).stream()
                                .flatMap(d -> d.marks().stream())
                                .toList())
                        .stream()
                        .map(Mark.Label::text)
                        .reduce("", (a, b) -> a + " " + b);
        int at = 0;
        for (Book.Page page : book.pages()) {
            at = printed.indexOf(page.title(), at);
            assertThat(at).as(page.title()).isNotNegative();
            String rest = printed.substring(at);
            Stream<String> cells = page.table().stream()
                    .flatMap(t -> t.rows().stream())
                    .flatMap(List::stream)
                    .filter(c -> !c.isBlank());
            assertThat(cells).allMatch(rest::contains);
        }
        assertThat(book.pages())
                .anyMatch(p -> p.picture().orElse(null) instanceof Book.PlayedGround g
                        && g.holes().get(0).spots().stream().anyMatch(s -> !s.noted())
                        && g.holes().get(0).spots().stream().anyMatch(Book.Spot::noted));
    }

    @Test
    void barsOfATableShareTheirAxisAndScale() {
        Book.Table table = new Book.Table(
                "t",
                List.of("", ""),
                List.of(0.5, 0.5),
                List.of(List.of("a", ""), List.of("b", "")),
                List.of(new Book.Bar(2, 1, 3), new Book.Bar(-1, -1, -1)));
        BarColumn column = new BarColumn(table, new Extent(0, 0, 200, 100));
        Extent up = bar(column.marks(0, 0, 20));
        Extent down = bar(column.marks(1, 20, 40));
        // 90 points from -1 to +3: the axis 22.5 from the left edge of the bars
        assertThat(up.left()).isEqualTo(down.right());
        assertThat(up.width()).isCloseTo(2 * down.width(), org.assertj.core.api.Assertions.within(1e-9));
        assertThat(up.left()).isCloseTo(127.5, org.assertj.core.api.Assertions.within(1e-9));
    }

    private static Extent bar(List<Mark> marks) {
        return ((Mark.Shape) marks.get(0)).traces().get(0).extent();
    }

    @Test
    void theFileIsArchivable() throws Exception {
        Path pdf = folder.resolve("report.pdf");
        new PrintedBook().printReport(ReportSheets.full(SyntheticReport.create(), ReadLengths.USUAL), Paper.A4, pdf);
        assertThat(PreflightParser.validate(pdf.toFile()).getErrorsList()).isEmpty();
    }

    @Test
    void aReaderOfMetresReadsNoYards() {
        ReadLengths metres = new ReadLengths(LengthUnit.METRES, true);
        for (Book book : List.of(
                ReportSheets.full(SyntheticReport.create(), metres),
                ReportSheets.page(SyntheticReport.create(), metres))) {
            assertThat(book.unit()).isEqualTo(LengthUnit.METRES);
            // homework stays in the coach's own words
            String words = book.pages().toString().replace("50 putts from 4 ft", "");
            assertThat(words).doesNotContainPattern("\\d (yd|ft)\\b");
        }
        assertThat(ReportSheets.full(SyntheticReport.create(), ReadLengths.USUAL)
                        .pages()
                        .toString())
                .containsPattern("\\d yd\\b");
    }
}
