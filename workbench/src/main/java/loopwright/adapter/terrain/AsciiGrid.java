package loopwright.adapter.terrain;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.StringTokenizer;
import java.util.TreeMap;
import loopwright.action.UserFault;
import loopwright.geo.LatLon;
import org.jspecify.annotations.Nullable;

/** ESRI ASCII grid: a header of five or six named numbers, then rows of heights from the north. */
final class AsciiGrid implements Raster {
    private static final int MOST_HEADER_LINES = 7;

    private final Path file;
    private final int headerLines;
    private final int columns;
    private final int rows;
    private final double noData;
    private final RasterFrame frame;
    private final boolean zoneAssumed;

    private AsciiGrid(Path file, Map<String, Double> header, int headerLines, LatLon near) {
        this.file = file;
        this.headerLines = headerLines;
        this.columns = count(header, "ncols");
        this.rows = count(header, "nrows");
        this.noData = header.getOrDefault("nodata_value", -9999.0);
        double dx = number(header, header.containsKey("dx") ? "dx" : "cellsize");
        double dy = number(header, header.containsKey("dy") ? "dy" : "cellsize");
        boolean centre = header.containsKey("xllcenter");
        double west = number(header, centre ? "xllcenter" : "xllcorner") + (centre ? 0 : dx / 2);
        double south = number(header, centre ? "yllcenter" : "yllcorner") + (centre ? 0 : dy / 2);
        boolean degrees = Math.abs(west) <= 180 && Math.abs(south) <= 90 && dx < 0.1;
        String projection = degrees ? null : beside(file);
        this.zoneAssumed = !degrees && projection == null;
        this.frame = frame(west, dx, south + (rows - 1) * dy, dy, zoneAssumed ? Projections.utmOf(near) : projection);
    }

    private RasterFrame frame(double west, double dx, double north, double dy, @Nullable String projection) {
        try {
            return new RasterFrame(west, dx, 0, north, 0, -dy, projection);
        } catch (IllegalArgumentException e) {
            throw new UserFault(file + ", header: " + e.getMessage() + "; give cellsize as a number above zero.", e);
        }
    }

    /** Reads the header; {@code near} tells the UTM zone of a grid in metres that names none. */
    static AsciiGrid open(Path file, LatLon near) {
        Map<String, Double> header = new TreeMap<>();
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
            for (int line = 0; line <= MOST_HEADER_LINES; line++) {
                String text = in.readLine();
                if (text == null || !text.strip().matches("(?i)[a-z_]{2,14}\\s+\\S{1,40}")) {
                    return new AsciiGrid(file, header, line, near);
                }
                String[] pair = text.strip().split("\\s+", 2);
                header.put(pair[0].toLowerCase(Locale.ROOT), parse(file, line + 1, pair[1]));
            }
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read: " + e.getMessage() + ".", e);
        }
        throw new UserFault(file + " has too long a header for an ESRI ASCII grid; export the heights again.");
    }

    static boolean looksLike(String head) {
        return head.stripLeading().toLowerCase(Locale.ROOT).startsWith("ncols");
    }

    private int count(Map<String, Double> header, String key) {
        double value = number(header, key);
        if (!(value >= 2 && value <= 1_000_000) || value != Math.rint(value)) {
            throw new UserFault(file + ", header: " + key + " must be a whole number from 2 to 1,000,000.");
        }
        return (int) value;
    }

    private double number(Map<String, Double> header, String key) {
        Double value = header.get(key);
        if (value == null) {
            throw new UserFault(file + ", header: " + key
                    + " is missing; an ESRI ASCII grid needs ncols, nrows, xllcorner," + " yllcorner and cellsize.");
        }
        return value;
    }

    private static double parse(Path file, int line, String text) {
        try {
            return Double.parseDouble(text.strip().replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new UserFault(file + ", line " + line + ": \"" + text.strip() + "\" is not a number.", e);
        }
    }

    /** The projection named by a .prj file beside the grid, if there is one. */
    private static @Nullable String beside(Path file) {
        Path prj = file.resolveSibling(file.getFileName().toString().replaceAll("\\.[^.]*$", "") + ".prj");
        if (!Files.isRegularFile(prj)) {
            return null;
        }
        try {
            String text = Files.readString(prj, StandardCharsets.ISO_8859_1);
            return Projections.ofText(text)
                    .orElseThrow(
                            () -> new UserFault(prj + " names a projection that cannot be read; reproject the grid to"
                                    + " WGS 84 degrees or a UTM zone."));
        } catch (IOException e) {
            throw new UserFault(prj + " cannot be read: " + e.getMessage() + ".", e);
        }
    }

    @Override
    public int columns() {
        return columns;
    }

    @Override
    public int rows() {
        return rows;
    }

    @Override
    public RasterFrame frame() {
        return frame;
    }

    /** True if the grid is in metres and nothing says of which projection. */
    boolean zoneAssumed() {
        return zoneAssumed;
    }

    @Override
    public float[] read(Window w) {
        float[] out = new float[w.columns() * w.rows()];
        Arrays.fill(out, Float.NaN);
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
            int line = 0;
            for (; line < headerLines; line++) {
                in.readLine();
            }
            long cell = 0;
            long last = (long) (w.row() + w.rows()) * columns;
            while (cell < last) {
                String text = in.readLine();
                line++;
                if (text == null) {
                    throw new UserFault(file + " breaks off in row " + (cell / columns + 1) + " of " + rows
                            + "; export the heights again.");
                }
                StringTokenizer words = new StringTokenizer(text);
                while (words.hasMoreTokens() && cell < last) {
                    put(out, w, cell++, words.nextToken(), line);
                }
            }
            return out;
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read: " + e.getMessage() + ".", e);
        }
    }

    private void put(float[] out, Window w, long cell, String word, int line) {
        int row = (int) (cell / columns) - w.row();
        int column = (int) (cell % columns) - w.column();
        if (row < 0 || row >= w.rows() || column < 0 || column >= w.columns()) {
            return;
        }
        double value = parse(file, line, word);
        out[row * w.columns() + column] = value == noData ? Float.NaN : (float) value;
    }
}
