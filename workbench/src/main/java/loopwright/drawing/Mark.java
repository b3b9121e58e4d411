package loopwright.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** One mark on the sheet. Back ends draw marks in their order, later over earlier. */
public sealed interface Mark {

    /** Traces filled together (even-odd, so that inner rings are holes), drawn with a pen, or both. */
    record Shape(
            List<Trace> traces,
            @Nullable Ink fill,
            @Nullable Pen pen) implements Mark {
        public Shape {
            traces = List.copyOf(traces);
            if (fill == null && pen == null) {
                throw new IllegalArgumentException("a shape needs a fill or a pen");
            }
        }
    }

    /** A line of text; {@code halo} leaves a rim of paper around the letters. Turned clockwise around {@code at}. */
    record Label(
            String text, Point at, Anchor anchor, double size, Face face, Ink ink, double turnedRadians, boolean halo)
            implements Mark {

        public double width() {
            return face.width(text, size);
        }

        public Label moved(double right, double down) {
            return new Label(text, at.plus(right, down), anchor, size, face, ink, turnedRadians, halo);
        }

        /** Rectangle of the text (cap height plus descent), with its turn taken into account. */
        public Extent extent() {
            double w = width();
            double left = at.x() - w * anchor.share();
            Extent flat = new Extent(left, at.y() - 0.75 * size, left + w, at.y() + 0.24 * size);
            return turnedRadians == 0 ? flat : turned(flat);
        }

        private Extent turned(Extent flat) {
            double cos = Math.cos(turnedRadians);
            double sin = Math.sin(turnedRadians);
            List<Point> corners = Trace.rectangle(flat).points().stream()
                    .map(p -> new Point(
                            at.x() + cos * (p.x() - at.x()) - sin * (p.y() - at.y()),
                            at.y() + sin * (p.x() - at.x()) + cos * (p.y() - at.y())))
                    .toList();
            return Extent.around(corners);
        }
    }

    /** Marks of which only what lies inside a window is shown. */
    record Window(Trace window, List<Mark> inside) implements Mark {
        public Window {
            inside = List.copyOf(inside);
        }
    }

    /** Marks moved together. */
    record Moved(double right, double down, List<Mark> inside) implements Mark {
        public Moved {
            inside = List.copyOf(inside);
        }
    }

    /**
     * Marks that are one thing to those who have the page read out; what carries no tag is decoration to them.
     *
     * @param words what a figure shows, or the title of a part; else empty
     * @param order in which parts are read, whatever the order in which they are drawn
     */
    record Tagged(Tag tag, String words, int order, List<Mark> inside) implements Mark {
        public Tagged {
            inside = List.copyOf(inside);
        }
    }

    /** What tagged marks are (the standard structure types of ISO 32000-1, 14.8.4). */
    enum Tag {
        PART("Part", false),
        HEADING("H1", true),
        PARAGRAPH("P", true),
        FIGURE("Figure", true),
        TABLE("Table", false),
        ROW("TR", false),
        HEAD_CELL("TH", true),
        CELL("TD", true);

        private final String pdf;
        private final boolean content;

        Tag(String pdf, boolean content) {
            this.pdf = pdf;
            this.content = content;
        }

        public String pdf() {
            return pdf;
        }

        /** True if it holds what is drawn, false if it holds other tagged marks. */
        public boolean isContent() {
            return content;
        }
    }

    /** Which end of a text its point fixes. */
    enum Anchor {
        START(0),
        MIDDLE(0.5),
        END(1);

        private final double share;

        Anchor(double share) {
            this.share = share;
        }

        public double share() {
            return share;
        }
    }

    static Shape drawn(Pen pen, Trace... traces) {
        return new Shape(List.of(traces), null, pen);
    }

    static Shape drawn(Pen pen, List<Trace> traces) {
        return new Shape(traces, null, pen);
    }

    static Shape filled(Ink ink, List<Trace> traces) {
        return new Shape(traces, ink, null);
    }

    static Shape filled(Ink ink, Trace... traces) {
        return new Shape(List.of(traces), ink, null);
    }

    static Label text(String text, Point at, Anchor anchor, double size) {
        return new Label(text, at, anchor, size, Face.REGULAR, Ink.LINE, 0, false);
    }

    static Label text(String text, Point at, Anchor anchor, double size, Face face, Ink ink) {
        return new Label(text, at, anchor, size, face, ink, 0, false);
    }
}
