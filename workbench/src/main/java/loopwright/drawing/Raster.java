package loopwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;

/** Renders a drawing into pixels. Letters are filled outlines, so no font of the machine is asked. */
public final class Raster {
    /** Fine enough for 0.3 pt lines on paper; a page of 11 x 8.5 in is then 1,760 x 1,360 pixels. */
    public static final double DOTS_PER_INCH = 160;

    private final Graphics2D graphics;

    private Raster(Graphics2D graphics) {
        this.graphics = graphics;
    }

    public static BufferedImage of(Drawing drawing, double dotsPerInch) {
        double scale = dotsPerInch / 72;
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(drawing.width() * scale),
                (int) Math.ceil(drawing.height() * scale),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(colour(Ink.PAPER));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(scale, scale);
        new Raster(g).marks(drawing.marks());
        g.dispose();
        return image;
    }

    /** The drawing as a PNG. */
    public static byte[] png(Drawing drawing, double dotsPerInch) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.setUseCache(false);
            ImageIO.write(of(drawing, dotsPerInch), "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException("a picture could not be encoded in memory", e);
        }
    }

    private void marks(List<Mark> marks) {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Shape shape) {
                shape(shape);
            } else if (mark instanceof Mark.Label label) {
                label(label);
            } else if (mark instanceof Mark.Window window) {
                Shape before = graphics.getClip();
                graphics.clip(path(List.of(window.window())));
                marks(window.inside());
                graphics.setClip(before);
            } else if (mark instanceof Mark.Moved moved) {
                graphics.translate(moved.right(), moved.down());
                marks(moved.inside());
                graphics.translate(-moved.right(), -moved.down());
            } else if (mark instanceof Mark.Tagged tagged) {
                marks(tagged.inside());
            }
        }
    }

    private void shape(Mark.Shape shape) {
        Path2D path = path(shape.traces());
        if (shape.fill() != null) {
            graphics.setColor(colour(shape.fill()));
            graphics.fill(path);
        }
        Pen pen = shape.pen();
        if (pen != null) {
            graphics.setColor(colour(pen.ink()));
            graphics.setStroke(stroke(pen));
            graphics.draw(path);
        }
    }

    private void label(Mark.Label l) {
        Path2D outline = Typeface.of(l.face()).outline(l.text(), l.size());
        AffineTransform place = AffineTransform.getTranslateInstance(l.at().x(), l.at().y());
        place.rotate(l.turnedRadians());
        place.translate(-l.width() * l.anchor().share(), 0);
        outline.transform(place);
        if (l.halo()) {
            graphics.setColor(colour(Ink.PAPER));
            graphics.setStroke(stroke(Pen.of(Ink.PAPER, Halo.width(l.size()))));
            graphics.draw(outline);
        }
        graphics.setColor(colour(l.ink()));
        graphics.fill(outline);
    }

    private static BasicStroke stroke(Pen pen) {
        if (pen.dashes().isEmpty()) {
            return new BasicStroke((float) pen.width(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        float[] dashes = new float[pen.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = pen.dashes().get(i).floatValue();
        }
        return new BasicStroke((float) pen.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0);
    }

    /** One area or line of several traces; areas are filled even-odd. */
    static Path2D path(List<Trace> traces) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (Trace trace : traces) {
            Point first = trace.points().get(0);
            path.moveTo(first.x(), first.y());
            for (Point p : trace.points().subList(1, trace.points().size())) {
                path.lineTo(p.x(), p.y());
            }
            if (trace.closed()) {
                path.closePath();
            }
        }
        return path;
    }

    private static Color colour(Ink ink) {
        return new Color(ink.rgb());
    }
}
