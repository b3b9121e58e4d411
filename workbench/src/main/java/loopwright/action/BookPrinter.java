package loopwright.action;

import java.nio.file.Path;

/** Port: sets and draws a book. */
public interface BookPrinter {
    /** A sheet of paper, portrait, millimetres. */
    enum Paper {
        A4(210, 297),
        LETTER(215.9, 279.4);

        private final double width;
        private final double height;

        Paper(double width, double height) {
            this.width = width;
            this.height = height;
        }

        /** "a4" or "letter", as it is typed. */
        public static Paper named(String text) {
            for (Paper paper : values()) {
                if (paper.name().equalsIgnoreCase(text)) {
                    return paper;
                }
            }
            throw new UserFault("--paper " + text + " is not known; it is a4 or letter.");
        }

        public double widthMillimetres() {
            return width;
        }

        public double heightMillimetres() {
            return height;
        }
    }

    /**
     * Writes the book as a PDF, two pages on each side of a sheet in the order of a folded booklet; the file appears whole or
     * not at all.
     */
    void print(Book book, Paper paper, Path target);

    /** Writes pages that are used as whole sheets, one page a sheet, portrait. */
    void printSheets(Book sheets, Paper paper, Path target);

    /** Writes the parts of a report below each other on whole sheets, portrait. */
    void printReport(Book report, Paper paper, Path target);

    /** One page by itself as SVG, counted from 0. */
    String svg(Book book, int page);

    /** Draws every page by itself into a folder, as SVG and PNG. */
    void draw(Book book, Path folder);
}
