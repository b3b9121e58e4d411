package loopwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.course.AreaKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lies must be told apart on a grey print: measured on rendered swatches without any colour. */
class LiesTest {
    private static final double SIDE = 60;

    /**
     * What a grey print shows of a swatch's inside: mean tone, contrast, and how the contrast splits into strokes along
     * and across (ruled lines change down the sheet, hatches along it too, dots both ways but rarely). Tones 0 to 255.
     */
    record GreyLook(double tone, double contrast, double changeAlong, double changeDown) {
        double differenceTo(GreyLook o) {
            return Math.max(
                    Math.max(Math.abs(tone - o.tone), Math.abs(contrast - o.contrast)),
                    Math.max(Math.abs(changeAlong - o.changeAlong), Math.abs(changeDown - o.changeDown)));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 0.62})
    void everyTwoLiesDifferWithoutColour(double detail) {
        Map<AreaKind, GreyLook> looks = new TreeMap<>();
        for (AreaKind kind : AreaKind.values()) {
            looks.put(kind, look(kind, detail));
        }
        List<String> alike = new ArrayList<>();
        looks.forEach((a, lookOfA) -> looks.forEach((b, lookOfB) -> {
            // 4 grey levels of 255 (1.6 %) side by side is about twice the smallest step an eye sees on paper. Kinds
            // that share a texture on purpose (see edgesTellTheRest) are told by their edges.
            if (a.compareTo(b) < 0 && !toldByTheirEdges(a, b) && lookOfA.differenceTo(lookOfB) < 4) {
                alike.add(a + " and " + b + ": " + lookOfA + " " + lookOfB);
            }
        }));
        assertThat(alike).isEmpty();
    }

    /** Penalty areas share the ruling, bare-paper kinds the paper; their edges are different shapes. */
    private static boolean toldByTheirEdges(AreaKind a, AreaKind b) {
        List<AreaKind> penalty = List.of(AreaKind.YELLOW_PENALTY_AREA, AreaKind.RED_PENALTY_AREA);
        List<AreaKind> bare = List.of(AreaKind.ROUGH, AreaKind.PATH, AreaKind.PRACTICE, AreaKind.OUT_OF_BOUNDS);
        List<AreaKind> plainWash = List.of(AreaKind.FAIRWAY, AreaKind.TEE, AreaKind.ROAD);
        return penalty.containsAll(List.of(a, b))
                || bare.containsAll(List.of(a, b))
                || plainWash.containsAll(List.of(a, b));
    }

    @ParameterizedTest
    @CsvSource({
        "YELLOW_PENALTY_AREA,RED_PENALTY_AREA",
        "ROUGH,PATH",
        "ROUGH,OUT_OF_BOUNDS",
        "ROUGH,PRACTICE",
        "PATH,OUT_OF_BOUNDS",
        "FAIRWAY,TEE",
        "FAIRWAY,ROAD",
        "TEE,ROAD"
    })
    void edgesTellTheRest(AreaKind a, AreaKind b) {
        double[] first = greys(a, 1);
        double[] second = greys(b, 1);
        int different = 0;
        for (int i = 0; i < first.length; i++) {
            different += Math.abs(first[i] - second[i]) > 24 ? 1 : 0;
        }
        // 24 of 255 is a step nobody overlooks; the edge of the 60-point swatch is some 700 pixels long here, and at
        // least a seventh of it has to look different.
        assertThat(different).isGreaterThan(100);
    }

    private static GreyLook look(AreaKind kind, double detail) {
        double[] grey = greys(kind, detail);
        int side = (int) Math.round(Math.sqrt(grey.length));
        int rim = side / 5;
        double sum = 0;
        double squares = 0;
        double along = 0;
        double down = 0;
        int n = 0;
        for (int y = rim; y < side - rim; y++) {
            for (int x = rim; x < side - rim; x++) {
                double g = grey[y * side + x];
                sum += g;
                squares += g * g;
                along += Math.abs(grey[y * side + x + 1] - g);
                down += Math.abs(grey[(y + 1) * side + x] - g);
                n++;
            }
        }
        double mean = sum / n;
        return new GreyLook(mean, Math.sqrt(Math.max(0, squares / n - mean * mean)), along / n, down / n);
    }

    private static double[] greys(AreaKind kind, double detail) {
        Extent sheet = new Extent(0, 0, SIDE + 20, SIDE + 20);
        List<Trace> rings = List.of(Trace.rectangle(sheet.grown(-10)));
        Drawing drawing =
                new Drawing("swatch", sheet.width(), sheet.height(), new Lies(detail, sheet).marks(kind, rings));
        BufferedImage image = Raster.of(drawing, Raster.DOTS_PER_INCH);
        double[] out = new double[image.getWidth() * image.getHeight()];
        for (int i = 0; i < out.length; i++) {
            int rgb = image.getRGB(i % image.getWidth(), i / image.getWidth());
            // Luma of ITU-R BT.601, what a grey printer driver does.
            out[i] = 0.299 * (rgb >> 16 & 255) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255);
        }
        return out;
    }

    @Test
    void aCrownLiesAboveTheEarlierOnesThatItMeetsAndTheRestAreOneMark() {
        List<Point> centres = List.of(new Point(0, 0), new Point(3, 0), new Point(6, 0), new Point(40, 0));
        List<Mark> marks = new Lies(1, new Extent(-10, -10, 50, 10)).crowns(centres, List.of(2.0, 2.0, 2.0, 2.0));
        // outlines and shades of a layer, from the bottom up: the first and the one apart, the second, the third
        assertThat(marks).map(m -> ((Mark.Shape) m).traces().size()).containsExactly(2, 2, 1, 1, 1, 1);
    }
}
