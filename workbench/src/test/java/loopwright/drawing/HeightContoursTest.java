package loopwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.HeightField;
import org.junit.jupiter.api.Test;

class HeightContoursTest {
    private static final Extent WINDOW = new Extent(0, 0, 300, 400);
    private static final SheetView VIEW = new SheetView(new Place(0, 0), WINDOW.centre(), 0, 1);

    /** A synthetic plane that rises 5 in 100 to the north. */
    private static HeightField plane(double stepMetres) {
        int n = (int) Math.round(600 / stepMetres) + 1;
        float[] heights = new float[n * n];
        for (int i = 0; i < heights.length; i++) {
            int row = i / n;
            heights[i] = (float) (50 + 0.05 * row * stepMetres);
        }
        return new HeightField(n, n, heights, HeightField.Grid.square(new Place(-300, -300), stepMetres));
    }

    @Test
    void contoursOfAPlaneAreLevelAndEvenlySpaced() {
        List<Trace> lines = new HeightContours(plane(20), VIEW, WINDOW)
                .lines().stream()
                        .flatMap(m -> ((Mark.Shape) m).traces().stream())
                        .toList();
        // 400 m of a plane of 5 % rise 66 ft, some more at the rim: a contour every 10 ft, 60.96 m apart.
        assertThat(lines).hasSizeBetween(6, 8);
        for (int i = 1; i < lines.size(); i++) {
            double apart = lines.get(i - 1).points().get(0).y()
                    - lines.get(i).points().get(0).y();
            // Heights are kept as float: 4 micrometres at 60 m, a tenth of a millimetre of ground on this slope.
            assertThat(apart).isBetween(60.96 - 0.01, 60.96 + 0.01);
            assertThat(lines.get(i).extent().height()).isLessThan(0.01);
        }
    }

    @Test
    void theNumberStandsOnTheLine() {
        Lettering lettering = new Lettering(WINDOW);
        new HeightContours(plane(20), VIEW, WINDOW).letter(lettering);
        assertThat(lettering.texts()).extracting(m -> ((Mark.Label) m).text()).contains("200 ft", "210 ft");
    }

    @Test
    void coarseHeightsClaimNothingAboutAGreen() {
        Region green = Region.circle(new Place(0, 0), 12);
        assertThat(new HeightContours(plane(20), VIEW, WINDOW).onGreen(green)).isEmpty();
        assertThat(new HeightContours(plane(2), VIEW, WINDOW).onGreen(green)).isNotEmpty();
    }
}
