package loopwright.adapter.terrain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loopwright.action.UserFault;
import loopwright.geo.LatLon;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** However a raster is damaged, reading it gives heights or one sentence for the user, and never a hang. */
class DamagedRasterPropertyTest {
    /** A hang, not a speed. */
    private static final double HANG_SECONDS = 5;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"1, 60", "2, 60"})
    void damagedRastersGiveHeightsOrASentence(long seed, int count) throws IOException {
        for (byte[] base : bases()) {
            damage(base, seed * 1_000_000, count);
        }
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource({"11, 500", "12, 500"})
    void thousandsOfDamagedRasters(long seed, int count) throws IOException {
        damagedRastersGiveHeightsOrASentence(seed, count);
    }

    private static List<byte[]> bases() {
        double[][] z = new double[20][20];
        StringBuilder text = new StringBuilder("ncols 20\nnrows 20\nxllcorner 9.99\nyllcorner 39.99\ncellsize 0.001\n");
        for (int r = 0; r < 20; r++) {
            for (int c = 0; c < 20; c++) {
                z[r][c] = r + c;
                text.append(r + c).append(' ');
            }
            text.append('\n');
        }
        List<byte[]> out = new ArrayList<>(List.of(text.toString().getBytes(StandardCharsets.US_ASCII)));
        for (TinyTiff.Packing p : TinyTiff.Packing.values()) {
            out.add(new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                    .heights(z, TinyTiff.Sample.FLOAT32, p, p == TinyTiff.Packing.LZW, 16)
                    .place(9.99, 40.01, 0.001, 0.001)
                    .keys(1024, 2, 1025, 1, 2048, 4326)
                    .toBytes());
        }
        return out;
    }

    private void damage(byte[] base, long firstSeed, int count) throws IOException {
        for (long seed = firstSeed; seed < firstSeed + count; seed++) {
            Path file = Files.write(folder.resolve("damaged"), damaged(base, new SplittableRandom(seed)));
            long start = System.nanoTime();
            try {
                new RasterTerrain().read(file, FlatCourse.at(new LatLon(40, 10)));
            } catch (UserFault e) {
                assertThat(e.getMessage()).as("seed " + seed).isNotBlank().doesNotContain("\n");
            } catch (RuntimeException | Error e) {
                throw new AssertionError("seed " + seed, e);
            }
            assertThat((System.nanoTime() - start) / 1e9).as("seed " + seed).isLessThan(HANG_SECONDS);
        }
    }

    /** Flipped bits, mostly in the head and the directory at the end, or a stump. */
    private static byte[] damaged(byte[] base, SplittableRandom random) {
        if (random.nextInt(5) == 0) {
            return java.util.Arrays.copyOf(base, random.nextInt(base.length));
        }
        byte[] out = base.clone();
        int flips = 1 + random.nextInt(12);
        for (int i = 0; i < flips; i++) {
            int at = random.nextInt(3) == 0
                    ? random.nextInt(out.length)
                    : random.nextBoolean()
                            ? random.nextInt(Math.min(128, out.length))
                            : out.length - 1 - random.nextInt(Math.min(400, out.length));
            out[at] ^= (byte) (1 << random.nextInt(8));
        }
        return out;
    }
}
