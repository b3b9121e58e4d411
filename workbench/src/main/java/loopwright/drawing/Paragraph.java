package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines that fit a width, and where it breaks itself; a single word too long for the line stands alone. */
public record Paragraph(List<String> lines, double size, Face face) {
    private static final double LEADING = 1.32;

    public static Paragraph of(String text, double width, double size, Face face) {
        List<String> lines = new ArrayList<>();
        for (String part : List.of(text.strip().split("\n", -1))) {
            addTo(lines, part.strip(), width, size, face);
        }
        return new Paragraph(List.copyOf(lines), size, face);
    }

    private static void addTo(List<String> lines, String text, double width, double size, Face face) {
        StringBuilder line = new StringBuilder();
        for (String word : List.of(text.split("\\s+", -1))) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && face.width(longer, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
    }

    public double height() {
        return lines.size() * size * LEADING;
    }

    /** Marks with the top left corner of the paragraph at {@code at}. */
    public List<Mark> marks(Point at, Ink ink) {
        List<Mark> out = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            double base = at.y() + size + i * size * LEADING;
            out.add(Mark.text(lines.get(i), new Point(at.x(), base), Mark.Anchor.START, size, face, ink));
        }
        return out;
    }
}
