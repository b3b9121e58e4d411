package loopwright.adapter.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import loopwright.action.ImportRecord;
import loopwright.action.TerrainFiles.Terrain;
import loopwright.action.UserFault;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.ground.HeightField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Rasters of a plane, so that every height has a closed form. */
class RasterTerrainTest {
    private static final LatLon ORIGIN = new LatLon(40, 10);
    private static final double STEP = 0.0005;
    private static final int SIZE = 40;

    @TempDir
    Path folder;

    /** Rises 100 m a degree to the east of 9.9 E and 200 m a degree to the north of 39.9 N. */
    private static double plane(double lat, double lon) {
        return 100 * (lon - 9.9) + 200 * (lat - 39.9);
    }

    private static double[][] planeAtCentres(double west, double north, double half) {
        double[][] z = new double[SIZE][SIZE];
        for (int r = 0; r < SIZE; r++) {
            for (int c = 0; c < SIZE; c++) {
                z[r][c] = plane(north - (r + half) * STEP, west + (c + half) * STEP);
            }
        }
        return z;
    }

    static Stream<Arguments> layouts() {
        List<Arguments> out = new ArrayList<>();
        for (TinyTiff.Sample s : TinyTiff.Sample.values()) {
            for (TinyTiff.Packing p : TinyTiff.Packing.values()) {
                out.add(Arguments.of(s, p, false, ByteOrder.LITTLE_ENDIAN));
                out.add(Arguments.of(s, p, true, ByteOrder.BIG_ENDIAN));
            }
        }
        return out.stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void everyLayoutGivesTheSamePlane(TinyTiff.Sample sample, TinyTiff.Packing packing, boolean tiled, ByteOrder order)
            throws IOException {
        double west = 9.99;
        double north = 40.01;
        byte[] tiff = new TinyTiff(order)
                .heights(planeAtCentres(west, north, 0.5), sample, packing, tiled, 16)
                .place(west, north, STEP, STEP)
                .keys(1024, 2, 1025, 1, 2048, 4326)
                .toBytes();
        HeightField field = read(tiff).heights();
        // whole-number samples are off by half a metre at most; floats by the centimetre that is kept
        double allowed = sample == TinyTiff.Sample.FLOAT32 ? 0.02 : 0.5;
        for (Place at : List.of(new Place(0, 0), new Place(100, -80), new Place(-33, 170))) {
            LatLon p = new LocalFrame(ORIGIN).toLatLon(at);
            assertThat(field.heightMetres(at))
                    .isEqualTo(plane(p.latitudeDegrees(), p.longitudeDegrees()), within(allowed));
        }
    }

    @Test
    void pixelIsPointShiftsByHalfACell() throws IOException {
        byte[] tiff = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(planeAtCentres(9.99, 40.01, 0), TinyTiff.Sample.FLOAT32, TinyTiff.Packing.NONE, false, 7)
                .place(9.99, 40.01, STEP, STEP)
                .keys(1024, 2, 1025, 2, 2048, 4326)
                .toBytes();
        // half a cell is 0.075 m here; the centimetre that is kept tells the two apart
        assertThat(read(tiff).heights().heightMetres(0, 0)).isEqualTo(plane(40, 10), within(0.02));
    }

    @Test
    void aMarkedGapTakesTheHeightBesideItAndIsSaid() throws IOException {
        double[][] z = planeAtCentres(9.99, 40.01, 0.5);
        z[20][20] = -32768;
        byte[] tiff = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(z, TinyTiff.Sample.INT16, TinyTiff.Packing.DEFLATE, true, 16)
                .place(9.99, 40.01, STEP, STEP)
                .keys(1024, 2, 1025, 1, 2048, 4326)
                .noData("-32768")
                .toBytes();
        Terrain terrain = read(tiff);
        assertThat(terrain.records()).extracting(ImportRecord::kind).contains("heights missing");
        assertThat(terrain.heights().heightMetres(0, 0)).isEqualTo(plane(40, 10), within(1.0));
    }

    @Test
    void feetBecomeMetres() throws IOException {
        byte[] tiff = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(planeAtCentres(9.99, 40.01, 0.5), TinyTiff.Sample.FLOAT32, TinyTiff.Packing.NONE, false, 40)
                .place(9.99, 40.01, STEP, STEP)
                .keys(1024, 2, 1025, 1, 2048, 4326, 4099, 9002)
                .toBytes();
        assertThat(read(tiff).heights().heightMetres(0, 0)).isEqualTo(plane(40, 10) * 0.3048, within(0.02));
    }

    @Test
    void aGridInUtmMetresLiesWhereItsZoneSays() throws IOException {
        // UTM zone 32 has its middle at 9 E; the corner was taken from the frame itself and must come back
        RasterFrame utm =
                new RasterFrame(0, 1, 0, 0, 0, 1, Projections.ofEpsg(32632).orElseThrow());
        double[] at = utm.columnAndRow(ORIGIN);
        double[][] z = new double[SIZE * 2][SIZE * 2];
        for (int r = 0; r < z.length; r++) {
            for (int c = 0; c < z.length; c++) {
                z[r][c] = 50 + 0.1 * c;
            }
        }
        byte[] tiff = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(z, TinyTiff.Sample.FLOAT32, TinyTiff.Packing.NONE, false, 20)
                .place(at[0] - 400, at[1] + 400, 10, 10)
                .keys(1024, 1, 1025, 1, 3072, 32632)
                .toBytes();
        // the origin lies on the corner between columns 39 and 40
        assertThat(read(tiff).heights().heightMetres(0, 0)).isEqualTo(50 + 0.1 * 39.5, within(0.02));
    }

    @Test
    void anAsciiGridGivesTheSamePlane() throws IOException {
        double[][] z = planeAtCentres(9.99, 40.01, 0.5);
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "ncols %d%nnrows %d%nxllcorner 9.99%nyllcorner %.6f%ncellsize %.6f%nNODATA_value -9999%n",
                SIZE,
                SIZE,
                40.01 - SIZE * STEP,
                STEP));
        for (double[] row : z) {
            for (double v : row) {
                text.append(String.format(Locale.ROOT, "%.3f ", v));
            }
            text.append('\n');
        }
        HeightField field = read(text.toString().getBytes(java.nio.charset.StandardCharsets.US_ASCII))
                .heights();
        assertThat(field.heightMetres(0, 0)).isEqualTo(plane(40, 10), within(0.02));
        // cells of 0.0005 degrees are 55.5 m high
        assertThat(field.resolutionMetres()).isEqualTo(55.5, within(0.1));
    }

    @Test
    void aRasterOfAnotherRegionIsRefused() throws IOException {
        byte[] tiff = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(planeAtCentres(19, 50, 0.5), TinyTiff.Sample.FLOAT32, TinyTiff.Packing.NONE, false, 40)
                .place(19, 50, STEP, STEP)
                .keys(1024, 2, 1025, 1, 2048, 4326)
                .toBytes();
        assertThatThrownBy(() -> read(tiff)).isInstanceOf(UserFault.class).hasMessageContaining("does not cover");
    }

    @Test
    void anUnknownProjectionIsRefused() throws IOException {
        byte[] tiff = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(planeAtCentres(0, 0, 0.5), TinyTiff.Sample.FLOAT32, TinyTiff.Packing.NONE, false, 40)
                .place(0, 0, 30, 30)
                .keys(1024, 1, 1025, 1, 3072, 2056)
                .toBytes();
        assertThatThrownBy(() -> read(tiff)).isInstanceOf(UserFault.class).hasMessageContaining("EPSG:2056");
    }

    @Test
    void aBlockThatUnpacksToMoreThanItStatesIsRefused() throws IOException {
        Deflater deflater = new Deflater();
        deflater.setInput(new byte[64 << 20]);
        deflater.finish();
        byte[] bomb = new byte[1 << 20];
        int size = deflater.deflate(bomb);
        byte[] tiff = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(planeAtCentres(9.99, 40.01, 0.5), TinyTiff.Sample.FLOAT32, TinyTiff.Packing.DEFLATE, true, 16)
                .block(0, Arrays.copyOf(bomb, size))
                .place(9.99, 40.01, STEP, STEP)
                .keys(1024, 2, 1025, 1, 2048, 4326)
                .toBytes();
        assertThatThrownBy(() -> read(tiff)).isInstanceOf(UserFault.class).hasMessageContaining("more than it states");
    }

    @Test
    void aBlockThatBreaksOffIsRefusedAndNotWaitedFor() throws IOException {
        Deflater deflater = new Deflater();
        deflater.setInput(new byte[16 * 16 * 4]);
        deflater.finish();
        byte[] whole = new byte[1000];
        int size = deflater.deflate(whole);
        byte[] tiff = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(planeAtCentres(9.99, 40.01, 0.5), TinyTiff.Sample.FLOAT32, TinyTiff.Packing.DEFLATE, true, 16)
                .block(0, Arrays.copyOf(whole, size / 2))
                .place(9.99, 40.01, STEP, STEP)
                .keys(1024, 2, 1025, 1, 2048, 4326)
                .toBytes();
        assertThatThrownBy(() -> read(tiff)).isInstanceOf(UserFault.class).hasMessageContaining("breaks off");
    }

    @Test
    void aHeaderThatClaimsHugeStripsIsRefused() throws IOException {
        byte[] tiff = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(planeAtCentres(9.99, 40.01, 0.5), TinyTiff.Sample.FLOAT32, TinyTiff.Packing.DEFLATE, false, 40)
                .size(60_000, 60_000)
                .place(9.99, 40.01, STEP, STEP)
                .keys(1024, 2, 1025, 1, 2048, 4326)
                .toBytes();
        assertThatThrownBy(() -> read(tiff)).isInstanceOf(UserFault.class).hasMessageContaining("too large to unpack");
    }

    @Test
    void aBrokenOffGridNamesTheRow() {
        String text = "ncols 3\nnrows 3\nxllcorner 9.99\nyllcorner 39.99\ncellsize 0.01\n1 2 3\n4 5\n";
        assertThatThrownBy(() -> read(text.getBytes(java.nio.charset.StandardCharsets.US_ASCII)))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("row 2 of 3");
    }

    private Terrain read(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("heights.bin"), bytes);
        return new RasterTerrain().read(file, FlatCourse.at(ORIGIN));
    }
}
