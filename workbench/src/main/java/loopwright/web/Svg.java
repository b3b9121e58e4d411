package loopwright.web;

import static j2html.TagCreator.rawHtml;

import j2html.tags.DomContent;
import java.util.Locale;

/** A small drawing for a page, element by element; {@code bench.css} says by class how each looks. */
final class Svg {
    private final StringBuilder out;

    private Svg(String head) {
        out = new StringBuilder(head);
    }

    /** A picture with words for those who cannot see it. */
    static Svg picture(String style, double width, double height, String words) {
        return new Svg(String.format(
                Locale.ROOT,
                "<svg class=\"%s\" width=\"%.0f\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                style,
                width,
                width,
                height,
                HoleSvg.escaped(words)));
    }

    /** A drawing that says no more than the words beside it. */
    static Svg beside(String style, double width, double height) {
        return new Svg(String.format(
                Locale.ROOT,
                "<svg class=\"%s\" viewBox=\"0 0 %.0f %.0f\" aria-hidden=\"true\">",
                style,
                width,
                height));
    }

    Svg rectangle(String style, double x, double y, double width, double height) {
        out.append(String.format(
                Locale.ROOT,
                "<rect class=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
                style,
                x,
                y,
                Math.max(0, width),
                height));
        return this;
    }

    Svg line(String style, double x1, double y1, double x2, double y2) {
        return path(style, String.format(Locale.ROOT, "M%.1f %.1fL%.1f %.1f", x1, y1, x2, y2));
    }

    Svg path(String style, String d) {
        out.append("<path class=\"").append(style).append("\" d=\"").append(d).append("\"/>");
        return this;
    }

    Svg dot(String style, double x, double y, double radius) {
        out.append(String.format(
                Locale.ROOT, "<circle class=\"%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\"/>", style, x, y, radius));
        return this;
    }

    /** {@code style} begins with at-start, at-middle or at-end: which part of the words stands at x. */
    Svg words(String style, double x, double y, String words) {
        out.append(String.format(
                Locale.ROOT,
                "<text class=\"%s\" x=\"%.1f\" y=\"%.1f\">%s</text>",
                style,
                x,
                y,
                HoleSvg.escaped(words)));
        return this;
    }

    DomContent drawn() {
        return rawHtml(out + "</svg>");
    }

    /** A share of one as a bar beside its number. */
    static DomContent share(double share) {
        return beside("share", 100, 12)
                .rectangle("all", 0.5, 0.5, 99, 11)
                .rectangle("part", 0.5, 0.5, 99 * share, 11)
                .drawn();
    }
}
