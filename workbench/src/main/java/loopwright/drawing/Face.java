package loopwright.drawing;

/** The typefaces of the chart. */
public enum Face {
    REGULAR("OpenSans-Regular.ttf"),
    BOLD("OpenSans-Bold.ttf"),
    ITALIC("OpenSans-Italic.ttf");

    private final String file;

    Face(String file) {
        this.file = file;
    }

    public String file() {
        return file;
    }

    /** Width of a text in points at a size in points. */
    public double width(String text, double size) {
        return Typeface.of(this).width(text, size);
    }
}
