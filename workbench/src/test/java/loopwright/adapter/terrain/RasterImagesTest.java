package loopwright.adapter.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import loopwright.action.CourseImage;
import loopwright.action.CourseImage.Corners;
import loopwright.action.UserFault;
import loopwright.course.Course;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Images with one bright patch, whose place on the ground is known. */
class RasterImagesTest {
    private static final LatLon ORIGIN = new LatLon(48, 9);
    private static final Course COURSE = FlatCourse.at(ORIGIN);
    private static final LocalFrame FRAME = new LocalFrame(ORIGIN);
    /** Pixels of a metre each, from 600 m west and north of the middle of the course to as far east and south. */
    private static final int SIDE = 1200;

    private static final Place PATCH = new Place(120, -70);

    @TempDir
    Path folder;

    private CourseImage read(byte[] bytes, Optional<Corners> corners) {
        try {
            Path file = Files.write(folder.resolve("in3871.bin"), bytes);
            return new RasterImages(Clock.systemUTC()).read(file, "from above.png", corners, COURSE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static LatLon at(double x, double y) {
        return FRAME.toLatLon(new Place(x, y));
    }

    /** The patch, nine pixels square, in an image whose pixels lie in turned rows. */
    private static byte[] picture(double turn, String format) throws IOException {
        BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
        double column = SIDE / 2.0 + PATCH.x() * Math.cos(turn) - PATCH.y() * Math.sin(turn);
        double row = SIDE / 2.0 - PATCH.x() * Math.sin(turn) - PATCH.y() * Math.cos(turn);
        for (int c = -4; c <= 4; c++) {
            for (int r = -4; r <= 4; r++) {
                image.setRGB((int) column + c, (int) row + r, Color.WHITE.getRGB());
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    /** The middle of the bright pixels of what was kept, on the ground. */
    private static Place brightPlace(CourseImage kept) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(kept.png()));
        double columns = 0;
        double rows = 0;
        int count = 0;
        for (int c = 0; c < image.getWidth(); c++) {
            for (int r = 0; r < image.getHeight(); r++) {
                if ((image.getRGB(c, r) & 0xFF) > 128) {
                    columns += c + 0.5;
                    rows += r + 0.5;
                    count++;
                }
            }
        }
        assertThat(count).isPositive();
        double across = columns / count / image.getWidth();
        double down = rows / count / image.getHeight();
        Corners k = kept.corners();
        Place a = FRAME.toPlace(k.upperLeft());
        Place b = FRAME.toPlace(k.upperRight());
        Place d = FRAME.toPlace(k.lowerLeft());
        return new Place(
                a.x() + across * (b.x() - a.x()) + down * (d.x() - a.x()),
                a.y() + across * (b.y() - a.y()) + down * (d.y() - a.y()));
    }

    /** Whole pixels of a metre, and half a metre of bend between degrees and the local frame. */
    private static void assertPatch(CourseImage kept) throws IOException {
        assertThat(brightPlace(kept).distanceTo(PATCH)).isLessThan(1.5);
    }

    @Test
    void aPngWithTwoCornersLiesWhereTheySay() throws IOException {
        assertPatch(read(picture(0, "png"), Optional.of(Corners.northUp(at(-600, 600), at(600, -600)))));
    }

    @Test
    void aJpegIsTakenToo() throws IOException {
        assertPatch(read(picture(0, "jpg"), Optional.of(Corners.northUp(at(-600, 600), at(600, -600)))));
    }

    @Test
    void threeCornersTurnIt() throws IOException {
        double turn = 0.4;
        Place middle = new Place(0, 0);
        Corners corners = Corners.turned(
                FRAME.toLatLon(middle.offset(turn, 600, -600)),
                FRAME.toLatLon(middle.offset(turn, 600, 600)),
                FRAME.toLatLon(middle.offset(turn, -600, 600)));
        assertPatch(read(picture(turn, "png"), Optional.of(corners)));
    }

    private static double[][] bright() {
        double[][] z = new double[SIDE][SIDE];
        for (int c = -4; c <= 4; c++) {
            for (int r = -4; r <= 4; r++) {
                z[(int) (600 - PATCH.y()) + r][(int) (600 + PATCH.x()) + c] = 255;
            }
        }
        return z;
    }

    private static byte[] tiff(TinyTiff.Packing packing) {
        LatLon corner = at(-600, 600);
        LatLon far = at(600, -600);
        return new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(bright(), TinyTiff.Sample.UINT8, packing, packing == TinyTiff.Packing.NONE, 16)
                .place(
                        corner.longitudeDegrees(),
                        corner.latitudeDegrees(),
                        (far.longitudeDegrees() - corner.longitudeDegrees()) / SIDE,
                        (corner.latitudeDegrees() - far.latitudeDegrees()) / SIDE)
                .keys(1024, 2, 1025, 1, 2048, 4326)
                .toBytes();
    }

    @ParameterizedTest
    @EnumSource(TinyTiff.Packing.class)
    void aGeoTiffSaysItselfWhereItLies(TinyTiff.Packing packing) throws IOException {
        assertPatch(read(tiff(packing), Optional.empty()));
    }

    @Test
    void whatIsKeptIsCutToTheCourseAndItsSurroundings() throws IOException {
        CourseImage kept = read(picture(0, "png"), Optional.of(Corners.northUp(at(-3000, 3000), at(3000, -3000))));
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(kept.png()));
        // a straight hole of 300 m with 300 m round it, in pixels of 5 m; one pixel more at either edge
        assertThat(image.getWidth()).isBetween(120, 123);
        assertThat(image.getHeight()).isBetween(180, 183);
        assertThat(kept.name()).isEqualTo("from above.png");
    }

    @Test
    void whatCannotBeUsedIsNamedByItsOwnName() throws IOException {
        byte[] png = picture(0, "png");
        assertRefused(png, Optional.empty(), "state its upper left and lower right corner");
        assertRefused(
                png, Optional.of(Corners.turned(at(600, 600), at(-600, 600), at(-600, -600))), "show it from below");
        assertRefused(
                png,
                Optional.of(Corners.northUp(new LatLon(51, 9), new LatLon(50.99, 9.01))),
                "does not cover the course");
        assertRefused(
                "no image".getBytes(java.nio.charset.StandardCharsets.US_ASCII), Optional.empty(), "accepted are");
        byte[] bare = new TinyTiff(ByteOrder.LITTLE_ENDIAN)
                .heights(bright(), TinyTiff.Sample.UINT8, TinyTiff.Packing.NONE, false, 16)
                .toBytes();
        assertRefused(bare, Optional.empty(), "does not say where it lies");
    }

    @Test
    void exchangedCornersAreRefused() {
        assertThatThrownBy(() -> Corners.northUp(at(600, -600), at(-600, 600)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("north-west");
    }

    private void assertRefused(byte[] bytes, Optional<Corners> corners, String words) {
        assertThatThrownBy(() -> read(bytes, corners))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining(words)
                .hasMessageContaining("from above.png")
                .hasMessageNotContaining("in3871");
    }

    /** Flipped bits and stumps give an image or one sentence. */
    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg"})
    void anImageThatBreaksOffIsRefused(String format) throws IOException {
        byte[] whole = picture(0, format);
        for (int percent : new int[] {30, 60, 90, 99}) {
            byte[] cut = Arrays.copyOf(whole, whole.length * percent / 100);
            assertRefused(cut, Optional.of(Corners.northUp(at(-600, 600), at(600, -600))), "breaks off before its end");
        }
    }

    @Test
    void damagedImagesGiveAnImageOrASentence() throws IOException {
        Optional<Corners> corners = Optional.of(Corners.northUp(at(-600, 600), at(600, -600)));
        for (byte[] base : new byte[][] {picture(0, "png"), tiff(TinyTiff.Packing.DEFLATE)}) {
            for (long seed = 1; seed <= 60; seed++) {
                SplittableRandom random = new SplittableRandom(seed);
                byte[] damaged = base.clone();
                for (int i = 0; i < 6; i++) {
                    // heads and directories lie at either end
                    int near = random.nextInt(200);
                    damaged[random.nextBoolean() ? near : damaged.length - 1 - near] ^= (byte) (1 << random.nextInt(8));
                }
                byte[] given = random.nextInt(5) == 0
                        ? java.util.Arrays.copyOf(damaged, random.nextInt(damaged.length))
                        : damaged;
                try {
                    assertThat(read(given, corners).png()).isNotEmpty();
                } catch (UserFault e) {
                    assertThat(e.getMessage()).as("seed " + seed).isNotBlank().doesNotContain("\n");
                }
            }
        }
    }
}
