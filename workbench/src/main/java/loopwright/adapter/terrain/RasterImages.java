package loopwright.adapter.terrain;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import loopwright.action.CourseImage;
import loopwright.action.CourseImage.Corners;
import loopwright.action.GroundImages;
import loopwright.action.UserFault;
import loopwright.course.Course;
import loopwright.geo.LatLon;

/**
 * Images of the ground, cut to the course, thinned to what a screen shows and written afresh as PNG: nothing of the
 * file but its picture is kept. Pixels lie on a straight grid; a projection bends it by some 0.1 m over a course.
 */
public final class RasterImages implements GroundImages {
    private static final List<String> FORMATS = List.of("png", "jpeg", "tif");
    /** A course of 1.5 km at half a metre. */
    private static final int MOST_PIXELS_A_SIDE = 3000;
    /** Believable sizes; memory is only taken for the pixels that are kept. */
    private static final int LARGEST_SIDE = 60_000;

    private static final String ADVICE = "export the image again with three bands of 8 bits (red, green, blue)";

    private final Clock clock;

    public RasterImages(Clock clock) {
        this.clock = clock;
    }

    @Override
    public CourseImage read(Path file, String label, Optional<Corners> corners, Course course) {
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            boolean tiff = GeoTiff.looksLike(head(file));
            ImageEnd.check(file, label);
            ImageReader reader = reader(in, label);
            try {
                RasterFrame frame = tiff ? tiffFrame(file) : frame(reader, corners, label);
                return image(reader, frame, course, file, label);
            } finally {
                reader.dispose();
            }
        } catch (UserFault e) {
            throw new UserFault(String.valueOf(e.getMessage()).replace(file.toString(), label), e);
        } catch (IOException | RuntimeException e) {
            // the readers of the platform meet a damaged file with whatever comes first
            throw new UserFault(
                    label + " is damaged, or of a kind that cannot be read ("
                            + (e instanceof IIOException
                                    ? e.getMessage()
                                    : e.getClass().getSimpleName()) + "); "
                            + ADVICE + ".",
                    e);
        }
    }

    private static byte[] head(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(8);
        }
    }

    private static ImageReader reader(ImageInputStream in, String label) throws IOException {
        Iterator<ImageReader> fits = ImageIO.getImageReaders(in);
        while (fits.hasNext()) {
            ImageReader reader = fits.next();
            if (FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
                reader.setInput(in, true, true);
                return reader;
            }
        }
        throw new UserFault(label + " is no image that can be read; accepted are GeoTIFF, PNG and JPEG.");
    }

    private static RasterFrame tiffFrame(Path file) {
        GeoTiff tiff = GeoTiff.open(file, ADVICE);
        tiff.check();
        return tiff.frame();
    }

    /** Pixels are squares between the outer corners; the frame speaks of their centres. */
    private static RasterFrame frame(ImageReader reader, Optional<Corners> corners, String label) throws IOException {
        Corners c = corners.orElseThrow(() -> new UserFault(label
                + " does not say where it lies; state its upper left and lower right corner, or give a GeoTIFF."));
        int wide = reader.getWidth(0);
        int high = reader.getHeight(0);
        double lonColumn = (c.upperRight().longitudeDegrees() - c.upperLeft().longitudeDegrees()) / wide;
        double latColumn = (c.upperRight().latitudeDegrees() - c.upperLeft().latitudeDegrees()) / wide;
        double lonRow = (c.lowerLeft().longitudeDegrees() - c.upperLeft().longitudeDegrees()) / high;
        double latRow = (c.lowerLeft().latitudeDegrees() - c.upperLeft().latitudeDegrees()) / high;
        if (!(lonRow * latColumn - lonColumn * latRow > 0)) {
            throw new UserFault(
                    "The corners of " + label + " enclose nothing or show it from below; check which is which.");
        }
        return new RasterFrame(
                c.upperLeft().longitudeDegrees() + (lonColumn + lonRow) / 2,
                lonColumn,
                lonRow,
                c.upperLeft().latitudeDegrees() + (latColumn + latRow) / 2,
                latColumn,
                latRow,
                null);
    }

    private CourseImage image(ImageReader reader, RasterFrame frame, Course course, Path file, String label)
            throws IOException {
        int wide = reader.getWidth(0);
        int high = reader.getHeight(0);
        if (wide > LARGEST_SIDE || high > LARGEST_SIDE) {
            throw new UserFault(label + " measures " + wide + " by " + high + " pixels, more than " + LARGEST_SIDE
                    + " a side; cut out the region of the course first.");
        }
        Raster.Window w = CourseWindow.of(frame, wide, high, course, file);
        int step = (Math.max(w.columns(), w.rows()) + MOST_PIXELS_A_SIDE - 1) / MOST_PIXELS_A_SIDE;
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceRegion(new Rectangle(w.column(), w.row(), w.columns(), w.rows()));
        param.setSourceSubsampling(step, step, step / 2, step / 2);
        BufferedImage seen = reader.read(0, param);
        Corners corners = new Corners(
                corner(frame, w, 0, 0),
                corner(frame, w, seen.getWidth() * step, 0),
                corner(frame, w, 0, seen.getHeight() * step));
        return new CourseImage(
                label, corners, clock.instant().truncatedTo(java.time.temporal.ChronoUnit.MILLIS), png(seen));
    }

    private static LatLon corner(RasterFrame frame, Raster.Window w, int columns, int rows) {
        double[] at = frame.degrees(w.column() + columns - 0.5, w.row() + rows - 0.5);
        return new LatLon(at[1], at[0]);
    }

    private static byte[] png(BufferedImage seen) throws IOException {
        boolean clear = seen.getColorModel().hasAlpha();
        BufferedImage plain = new BufferedImage(
                seen.getWidth(), seen.getHeight(), clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        Graphics2D g = plain.createGraphics();
        g.drawImage(seen, 0, 0, null);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(plain, "png", out);
        return out.toByteArray();
    }
}
