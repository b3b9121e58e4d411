package loopwright.adapter.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loopwright.action.Book;
import loopwright.action.BookPrinter.Paper;
import loopwright.action.LengthUnit;
import loopwright.action.SyntheticBook;
import loopwright.demo.DemoCourse;
import org.apache.pdfbox.preflight.ValidationResult;
import org.apache.pdfbox.preflight.parser.PreflightParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The printed book under a checker of archivable PDF (ISO 19005-1) that is not ours. */
class ArchivablePdfTest {
    @TempDir
    Path folder;

    @Test
    void theCheckerFindsNothing() throws Exception {
        Book book = SyntheticBook.of(DemoCourse.create(), LengthUnit.METRES);
        Path pdf = folder.resolve("book.pdf");
        new PrintedBook().print(book, Paper.LETTER, pdf);
        ValidationResult result = PreflightParser.validate(pdf.toFile());
        List<String> findings = result.getErrorsList().stream()
                .map(e -> e.getErrorCode() + " " + e.getDetails())
                .distinct()
                .limit(20)
                .toList();
        assertThat(Files.size(pdf)).isPositive();
        assertThat(findings).isEmpty();
        assertThat(result.isValid()).isTrue();
    }
}
