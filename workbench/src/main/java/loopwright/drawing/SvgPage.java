package loopwright.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Writes a drawing as SVG 1.1 with presentation attributes only (no style sheet, no script). Texts stay text; each
 * states its width, so that a reader with another typeface still gets the layout that was measured.
 */
public final class SvgPage {
    private static final String FAMILY = "'Open Sans', 'Noto Sans', 'DejaVu Sans', sans-serif";

    /** Paths are written to a hundredth of a point (3.5 micrometres) for paper, to a tenth of a pixel for the screen. */
    private static final int ON_PAPER = 100;

    private static final int ON_SCREEN = 10;

    private final StringBuilder out = new StringBuilder();
    private final int perPoint;
    private int windows;

    private SvgPage(int perPoint) {
        this.perPoint = perPoint;
    }

    public static String of(Drawing drawing) {
        SvgPage page = new SvgPage(ON_PAPER);
        page.open(drawing);
        page.marks(drawing.marks());
        page.out.append("</svg>\n");
        return page.out.toString();
    }

    /** The marks alone, to be put into an SVG of the caller's on a screen; of those with windows there may be one. */
    public static String marksOf(List<Mark> marks) {
        SvgPage page = new SvgPage(ON_SCREEN);
        page.marks(marks);
        return page.out.toString();
    }

    private void open(Drawing d) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" width=\"")
                .append(number(d.width()))
                .append("pt\" height=\"")
                .append(number(d.height()))
                .append("pt\" viewBox=\"0 0 ")
                .append(number(d.width()))
                .append(' ')
                .append(number(d.height()))
                .append("\" font-family=\"")
                .append(FAMILY)
                .append("\" stroke-linejoin=\"round\" stroke-linecap=\"round\">\n<title>")
                .append(escaped(d.title()))
                .append("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"")
                .append(Ink.PAPER.hex())
                .append("\"/>\n");
    }

    private void marks(List<Mark> marks) {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Shape shape) {
                shape(shape);
            } else if (mark instanceof Mark.Label label) {
                label(label);
            } else if (mark instanceof Mark.Window window) {
                window(window);
            } else if (mark instanceof Mark.Moved moved) {
                out.append("<g transform=\"translate(")
                        .append(number(moved.right()))
                        .append(' ')
                        .append(number(moved.down()))
                        .append(")\">\n");
                marks(moved.inside());
                out.append("</g>\n");
            } else if (mark instanceof Mark.Tagged tagged) {
                marks(tagged.inside());
            }
        }
    }

    private void window(Mark.Window window) {
        String id = "w" + ++windows;
        out.append("<clipPath id=\"").append(id).append("\"><path d=\"");
        trace(window.window());
        out.append("\"/></clipPath>\n<g clip-path=\"url(#").append(id).append(")\">\n");
        marks(window.inside());
        out.append("</g>\n");
    }

    private void shape(Mark.Shape shape) {
        if (shape.traces().isEmpty()) {
            return;
        }
        out.append("<path d=\"");
        shape.traces().forEach(this::trace);
        out.append("\" fill=\"")
                .append(shape.fill() == null ? "none" : shape.fill().hex());
        if (shape.fill() != null) {
            out.append("\" fill-rule=\"evenodd");
        }
        pen(shape.pen());
        out.append("\"/>\n");
    }

    private void pen(@Nullable Pen pen) {
        if (pen == null) {
            return;
        }
        out.append("\" stroke=\"")
                .append(pen.ink().hex())
                .append("\" stroke-width=\"")
                .append(number(pen.width()));
        if (!pen.dashes().isEmpty()) {
            out.append("\" stroke-linecap=\"butt\" stroke-dasharray=\"");
            pen.dashes().forEach(d -> out.append(number(d)).append(' '));
            out.setLength(out.length() - 1);
        }
    }

    /** Every point as a step from the one before, which takes half the letters; rounding does not add up. */
    private void trace(Trace trace) {
        long x = grains(trace.points().get(0).x());
        long y = grains(trace.points().get(0).y());
        out.append('M').append(inPoints(x)).append(' ').append(inPoints(y));
        boolean moved = false;
        for (Point p : trace.points()) {
            long right = grains(p.x()) - x;
            long down = grains(p.y()) - y;
            if (right != 0 || down != 0) {
                out.append(moved ? (right < 0 ? "" : " ") : "l").append(inPoints(right));
                out.append(down < 0 ? "" : " ").append(inPoints(down));
                moved = true;
                x += right;
                y += down;
            }
        }
        out.append(trace.closed() ? "z" : moved ? "" : "h0");
    }

    private long grains(double points) {
        return Math.round(points * perPoint);
    }

    /** A whole number of grains in points, as short as SVG allows. */
    private String inPoints(long grains) {
        String text = number((double) grains / perPoint);
        return text.startsWith("0.") ? text.substring(1) : text.startsWith("-0.") ? "-" + text.substring(2) : text;
    }

    private void label(Mark.Label l) {
        out.append("<text x=\"")
                .append(number(l.at().x()))
                .append("\" y=\"")
                .append(number(l.at().y()))
                .append("\" font-size=\"")
                .append(number(l.size()))
                .append("\" textLength=\"")
                .append(number(l.width()))
                .append("\" lengthAdjust=\"spacingAndGlyphs\" fill=\"")
                .append(l.ink().hex());
        switch (l.anchor()) {
            case START -> {}
            case MIDDLE -> out.append("\" text-anchor=\"middle");
            case END -> out.append("\" text-anchor=\"end");
        }
        switch (l.face()) {
            case REGULAR -> {}
            case BOLD -> out.append("\" font-weight=\"bold");
            case ITALIC -> out.append("\" font-style=\"italic");
        }
        if (l.turnedRadians() != 0) {
            out.append("\" transform=\"rotate(")
                    .append(number(Math.toDegrees(l.turnedRadians())))
                    .append(' ')
                    .append(number(l.at().x()))
                    .append(' ')
                    .append(number(l.at().y()))
                    .append(')');
        }
        if (l.halo()) {
            out.append("\" paint-order=\"stroke\" stroke=\"")
                    .append(Ink.PAPER.hex())
                    .append("\" stroke-width=\"")
                    .append(number(Halo.width(l.size())));
        }
        out.append("\">").append(escaped(l.text())).append("</text>\n");
    }

    /** Two decimals (0.01 point is 3.5 micrometres), without trailing zeros. */
    public static String number(double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths % 100 == 0) {
            return Long.toString(hundredths / 100);
        }
        String sign = hundredths < 0 ? "-" : "";
        long size = Math.abs(hundredths);
        String decimals = size % 10 == 0 ? Long.toString(size % 100 / 10) : (size % 100 < 10 ? "0" : "") + size % 100;
        return sign + size / 100 + "." + decimals;
    }

    /** Text as XML content: markup characters escaped, characters XML forbids dropped. */
    public static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().filter(SvgPage::allowed).forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }

    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || c == '\r' || (c >= 0x20 && c < 0xD800) || (c > 0xDFFF && c < 0xFFFE);
    }
}
