package loopwright.drawing;

import java.util.List;

/**
 * A picture, independent of where it is drawn: a sheet of paper with marks on it, in points of 1/72 inch from the top
 * left corner, y down.
 *
 * @param title said to readers who cannot see the picture
 */
public record Drawing(String title, double width, double height, List<Mark> marks) {
    public Drawing {
        marks = List.copyOf(marks);
        if (!(width > 0 && height > 0 && width < 20_000 && height < 20_000)) {
            throw new IllegalArgumentException("a sheet needs a size, not " + width + " x " + height);
        }
    }

    public Extent sheet() {
        return new Extent(0, 0, width, height);
    }
}
