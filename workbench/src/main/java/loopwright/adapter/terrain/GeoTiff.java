package loopwright.adapter.terrain;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import loopwright.action.UserFault;
import loopwright.units.Distance;
import mil.nga.tiff.FieldTagType;
import mil.nga.tiff.FieldType;
import mil.nga.tiff.FileDirectory;
import mil.nga.tiff.ImageWindow;
import mil.nga.tiff.Rasters;
import mil.nga.tiff.TiffReader;
import org.jspecify.annotations.Nullable;

/**
 * GeoTIFF with one band of heights: OGC 19-008 keys 1024 (model), 1025 (1: a cell's corner is its place, 2: its
 * centre), 2048, 3072 (EPSG codes), 4099 (vertical unit); tags 33550 and 33922, or 34264, for the place.
 */
final class GeoTiff implements Raster {
    /** Elevation files of a region are larger than this; a course needs a cut of a few megabytes. */
    private static final long MOST_BYTES = 256L << 20;

    private static final int WIDEST_SAMPLE_BYTES = 8;
    /** The TIFF library tells the terminal of damaged blocks; the user is told by one sentence of ours. */
    private static final Logger LIBRARY = Logger.getLogger("mil.nga.tiff");

    static {
        LIBRARY.setLevel(Level.OFF);
    }

    private static final int AREA_OR_POINT = 1025;
    private static final int PROJECTED = 3072;
    private static final int VERTICAL_UNIT = 4099;
    private static final double METRES_PER_SURVEY_FOOT = 1200.0 / 3937;

    private final Path file;
    private final String advice;
    private final FileDirectory directory;
    private final int columns;
    private final int rows;
    private final RasterFrame frame;
    private final double noData;
    private final double unitMetres;

    private GeoTiff(Path file, FileDirectory directory, String advice) {
        this.file = file;
        this.advice = advice;
        this.directory = directory;
        this.columns = directory.getImageWidth().intValue();
        this.rows = directory.getImageHeight().intValue();
        Map<Integer, Integer> keys = geoKeys(directory);
        this.frame = frame(keys);
        this.noData = noData(directory);
        int unit = keys.getOrDefault(VERTICAL_UNIT, 9001);
        this.unitMetres = unit == 9002 ? Distance.METRES_PER_FOOT : unit == 9003 ? METRES_PER_SURVEY_FOOT : 1;
    }

    static GeoTiff open(Path file) {
        return open(file, "export the heights again as GeoTIFF, one band, uncompressed, LZW or deflate");
    }

    /** {@code advice} is what to do about a damaged file. */
    static GeoTiff open(Path file, String advice) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new UserFault(file + " is larger than 256 MB; cut out the region of the course first.");
            }
            return guarded(file, advice, () -> {
                FileDirectory first =
                        TiffReader.readTiff(file.toFile()).getFileDirectories().get(0);
                return new GeoTiff(file, first, advice);
            });
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read: " + e.getMessage() + ".", e);
        }
    }

    static boolean looksLike(byte[] head) {
        return head.length > 4
                && ((head[0] == 'I' && head[1] == 'I' && (head[2] == 42 || head[2] == 43))
                        || (head[0] == 'M' && head[1] == 'M' && (head[3] == 42 || head[3] == 43)));
    }

    private interface Step<T> {
        T run() throws IOException;
    }

    /** The TIFF library meets a damaged file with whatever exception comes first; all mean the same to the user. */
    private static <T> T guarded(Path file, String advice, Step<T> step) {
        try {
            return step.run();
        } catch (UserFault e) {
            throw e;
        } catch (IOException | RuntimeException | OutOfMemoryError e) {
            throw new UserFault(
                    file + " is damaged, or of a kind of TIFF that cannot be read ("
                            + e.getClass().getSimpleName()
                            + "); " + advice + ".",
                    e);
        }
    }

    private static Map<Integer, Integer> geoKeys(FileDirectory directory) {
        List<Integer> raw = directory.getIntegerListEntryValue(FieldTagType.GeoKeyDirectory);
        Map<Integer, Integer> out = new HashMap<>();
        for (int i = 4; raw != null && i + 3 < raw.size(); i += 4) {
            if (raw.get(i + 1) == 0) {
                out.put(raw.get(i), raw.get(i + 3));
            }
        }
        return out;
    }

    private RasterFrame frame(Map<Integer, Integer> keys) {
        double half = keys.getOrDefault(AREA_OR_POINT, 1) == 1 ? 0.5 : 0;
        double[] m = transformation();
        int code = keys.getOrDefault(PROJECTED, 0);
        boolean projected = keys.getOrDefault(1024, 2) == 1;
        @Nullable
        String projection = projected
                ? Projections.ofEpsg(code)
                        .orElseThrow(() -> new UserFault(file + " is in the projection EPSG:" + code
                                + ", which is not known here; reproject it to WGS 84 degrees or a UTM zone."))
                : null;
        return new RasterFrame(
                m[2] + half * (m[0] + m[1]), m[0], m[1], m[5] + half * (m[3] + m[4]), m[3], m[4], projection);
    }

    /** x = m0 column + m1 row + m2, y = m3 column + m4 row + m5, of a cell's upper left corner. */
    private double[] transformation() {
        List<Double> matrix = directory.getDoubleListEntryValue(FieldTagType.ModelTransformation);
        if (matrix != null && matrix.size() >= 8) {
            return new double[] {
                matrix.get(0), matrix.get(1), matrix.get(3), matrix.get(4), matrix.get(5), matrix.get(7)
            };
        }
        List<Double> scale = directory.getModelPixelScale();
        List<Double> tie = directory.getModelTiepoint();
        if (scale == null || tie == null || scale.size() < 2 || tie.size() < 6) {
            throw new UserFault(
                    file + " does not say where it lies (no pixel scale and tie point); export it as GeoTIFF.");
        }
        double dx = scale.get(0);
        double dy = scale.get(1);
        return new double[] {dx, 0, tie.get(3) - tie.get(0) * dx, 0, -dy, tie.get(4) + tie.get(1) * dy};
    }

    private static double noData(FileDirectory directory) {
        String text = directory.getStringEntryValue(FieldTagType.GDAL_NODATA);
        try {
            return text == null
                    ? Double.NaN
                    : Double.parseDouble(text.replace("\0", "").strip());
        } catch (NumberFormatException e) {
            return Double.NaN;
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

    @Override
    public float[] read(Window w) {
        return guarded(file, advice, () -> {
            refuseHugeBlocks();
            Rasters rasters = directory.readRasters(
                    new ImageWindow(w.column(), w.row(), w.column() + w.columns(), w.row() + w.rows()), new int[] {0});
            FieldType type = directory.getFieldTypeForSample(0);
            float[] out = new float[w.columns() * w.rows()];
            for (int r = 0; r < w.rows(); r++) {
                for (int c = 0; c < w.columns(); c++) {
                    double value = rasters.getPixelSample(0, c, r).doubleValue();
                    boolean missing = value == noData || !Double.isFinite(value) || (float) value == (float) noData;
                    out[r * w.columns() + c] = missing ? Float.NaN : (float) (value * unitMetres);
                }
            }
            return type == null ? new float[0] : out;
        });
    }

    /** Refuses a file whose blocks are not what its header says, before anybody unpacks them. */
    void check() {
        guarded(file, advice, () -> {
            refuseHugeBlocks();
            return true;
        });
    }

    /** A header may lie about its strips and tiles: each is unpacked whole, so each must be of a believable size. */
    private void refuseHugeBlocks() throws IOException {
        long wide = Optional.ofNullable(directory.getTileWidth())
                .map(Number::longValue)
                .orElse((long) columns);
        long high = directory.isTiled()
                ? Optional.ofNullable(directory.getTileHeight())
                        .map(Number::longValue)
                        .orElse(0L)
                : Optional.ofNullable(directory.getRowsPerStrip())
                        .map(Number::longValue)
                        .orElse((long) rows);
        if (wide * Math.min(high, rows) > 32_000_000L || wide <= 0 || high <= 0) {
            throw new UserFault(file + " keeps its cells in blocks too large to unpack; export it in tiles.");
        }
        long cells = wide * (directory.isTiled() ? high : Math.min(high, rows));
        DeflatedBlocks.check(file, directory, cells * WIDEST_SAMPLE_BYTES);
    }
}
