package loopwright.adapter.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.action.Book;
import loopwright.action.BookPrinter.Paper;
import loopwright.action.LengthUnit;
import loopwright.action.SyntheticBook;
import loopwright.demo.DemoCourse;
import loopwright.drawing.PdfFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.junit.jupiter.api.Test;

/** The printed book as a file: archivable, tagged, small and always the same. */
class BookPdfTest {
    private static final Book BOOK = SyntheticBook.of(DemoCourse.create(), LengthUnit.YARDS);
    private static final byte[] PDF = pdf();

    private static byte[] pdf() {
        return PdfFile.forPrinter(BOOK.title(), BookletSheets.of(PrintedBook.pages(BOOK), Paper.A4));
    }

    @Test
    void sameBookSameBytesAndSmall() {
        assertThat(pdf()).isEqualTo(PDF);
        assertThat(PDF.length).isLessThan(3_000_000);
    }

    @Test
    void everythingDrawnIsTaggedOrMarkedAsDecoration() throws Exception {
        try (PDDocument document = Loader.loadPDF(PDF)) {
            for (PDPage page : document.getPages()) {
                int depth = 0;
                for (Object token : new PDFStreamParser(page).parse()) {
                    if (token instanceof Operator o) {
                        depth +=
                                o.getName().matches("BDC|BMC") ? 1 : o.getName().equals("EMC") ? -1 : 0;
                        boolean paints = o.getName().matches("[fFSsBb]\\*?|Tj|TJ|Do");
                        assertThat(!paints || depth == 1)
                                .as("%s at depth %d", o.getName(), depth)
                                .isTrue();
                    }
                }
                assertThat(depth).isZero();
            }
        }
    }

    @Test
    void partsAreReadInTheOrderOfThePages() throws Exception {
        try (PDDocument document = Loader.loadPDF(PDF)) {
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo(BOOK.title());
            List<String> titles = new ArrayList<>();
            Set<String> types = new TreeSet<>();
            PDStructureElement whole = (PDStructureElement) document.getDocumentCatalog()
                    .getStructureTreeRoot()
                    .getKids()
                    .get(0);
            for (Object kid : whole.getKids()) {
                titles.add(((PDStructureElement) kid).getTitle());
                walk((PDStructureElement) kid, types);
            }
            assertThat(titles.subList(0, BOOK.pages().size()))
                    .isEqualTo(BOOK.pages().stream().map(Book.Page::title).toList());
            assertThat(types).containsExactlyInAnyOrder("Part", "H1", "P", "Figure", "Table", "TR", "TH", "TD");
        }
    }

    /** Figures say what they show, tables consist of rows and rows of cells, content is on a page. */
    private static void walk(PDStructureElement element, Set<String> types) {
        types.add(element.getStructureType());
        List<String> kids = new ArrayList<>();
        for (Object kid : element.getKids()) {
            if (kid instanceof PDStructureElement e) {
                kids.add(e.getStructureType());
                walk(e, types);
            } else {
                assertThat(element.getPage()).isNotNull();
            }
        }
        switch (element.getStructureType()) {
            case "Figure" -> assertThat(element.getAlternateDescription()).isNotBlank();
            case "Table" -> assertThat(kids).isNotEmpty().containsOnly("TR");
            case "TR" -> assertThat(kids).isNotEmpty().allMatch(k -> k.matches("T[HD]"));
            default -> {
                // headings and paragraphs have no rule of their own
            }
        }
    }

    @Test
    void everyMarkedContentBelongsToExactlyOneElement() throws Exception {
        try (PDDocument document = Loader.loadPDF(PDF)) {
            COSDictionary tree =
                    document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
            COSArray numbers = ((COSDictionary) tree.getDictionaryObject(COSName.getPDFName("ParentTree")))
                    .getCOSArray(COSName.getPDFName("Nums"));
            assertThat(numbers.size()).isEqualTo(2 * document.getNumberOfPages());
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                COSBase parents = numbers.getObject(2 * i + 1);
                assertThat(((COSArray) parents).size()).isEqualTo(marked(document.getPage(i)));
            }
        }
    }

    private static int marked(PDPage page) throws Exception {
        int count = 0;
        for (Object token : new PDFStreamParser(page).parse()) {
            count += token instanceof Operator o && o.getName().equals("BDC") ? 1 : 0;
        }
        return count;
    }

    @Test
    void itAsksForBothSidesAtFullSize() throws Exception {
        try (PDDocument document = Loader.loadPDF(PDF)) {
            var preferences = document.getDocumentCatalog().getViewerPreferences();
            assertThat(preferences.getDuplex()).isEqualTo("DuplexFlipShortEdge");
            assertThat(preferences.getPrintScaling()).isEqualTo("None");
        }
    }
}
