package loopwright.adapter.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.Book;
import loopwright.action.BookPrinter;
import loopwright.action.UserFault;
import loopwright.action.WholeFile;
import loopwright.drawing.Drawing;
import loopwright.drawing.PdfFile;
import loopwright.drawing.Raster;
import loopwright.drawing.SvgPage;

/** Prints books: every page set, then two on each side of a sheet. */
public final class PrintedBook implements BookPrinter {
    @Override
    public void print(Book book, Paper paper, Path target) {
        WholeFile.write(target, PdfFile.forPrinter(book.title(), BookletSheets.of(pages(book), paper)));
    }

    @Override
    public void printSheets(Book sheets, Paper paper, Path target) {
        List<Drawing> out = new ArrayList<>();
        for (Book.Page page : sheets.pages()) {
            out.add(new WholeSheet(page, paper, out.size() + 1).drawing());
        }
        WholeFile.write(target, PdfFile.forPrinter(sheets.title(), out));
    }

    @Override
    public void printReport(Book report, Paper paper, Path target) {
        WholeFile.write(target, PdfFile.forPrinter(report.title(), ReportPages.of(report, paper)));
    }

    @Override
    public String svg(Book book, int page) {
        return SvgPage.of(BookPage.of(book.pages().get(page), page + 1, book.unit()));
    }

    @Override
    public void draw(Book book, Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UserFault("The folder " + folder + " for the pages cannot be made: " + e.getMessage() + ".", e);
        }
        List<Drawing> pages = pages(book);
        for (int i = 0; i < pages.size(); i++) {
            String name = String.format(Locale.ROOT, "page-%02d", i + 1);
            WholeFile.write(
                    folder.resolve(name + ".svg"), SvgPage.of(pages.get(i)).getBytes(StandardCharsets.UTF_8));
            WholeFile.write(folder.resolve(name + ".png"), Raster.png(pages.get(i), Raster.DOTS_PER_INCH));
        }
    }

    static List<Drawing> pages(Book book) {
        List<Drawing> out = new ArrayList<>();
        for (Book.Page page : book.pages()) {
            out.add(BookPage.of(page, out.size() + 1, book.unit()));
        }
        return out;
    }
}
