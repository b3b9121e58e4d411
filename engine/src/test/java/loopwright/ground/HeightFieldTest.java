package loopwright.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import loopwright.geo.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeightFieldTest {
    /** Heights are kept as floats: 24 bits, so 4e-6 m at 40 m. */
    private static final double FLOAT = 1e-5;

    /** The plane z = 10 + 0.03 x - 0.02 y on nodes 5 m apart from (-50, -50) to (50, 50). */
    private static HeightField plane() {
        float[] heights = new float[21 * 21];
        for (int r = 0; r < 21; r++) {
            for (int c = 0; c < 21; c++) {
                heights[r * 21 + c] = (float) (10 + 0.03 * (5 * c - 50) - 0.02 * (5 * r - 50));
            }
        }
        return new HeightField(21, 21, heights, HeightField.Grid.square(new Place(-50, -50), 5));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "12.3, -7.7", "-50, -50", "50, 50", "49.99, -49.99"})
    void aPlaneIsReadExactlyBetweenNodes(double x, double y) {
        assertThat(plane().heightMetres(x, y)).isEqualTo(10 + 0.03 * x - 0.02 * y, within(FLOAT));
    }

    @Test
    void slopesOfAPlane() {
        HeightField f = plane();
        Place at = new Place(3, 4);
        // two heights 5 m apart, each to 1e-5 m
        assertThat(f.slopeEast(at)).isEqualTo(0.03, within(FLOAT));
        assertThat(f.slopeNorth(at)).isEqualTo(-0.02, within(FLOAT));
        assertThat(f.slopeAlong(at, Math.PI / 2)).isEqualTo(0.03, within(FLOAT));
        assertThat(f.slopeAlong(at, Math.PI)).isEqualTo(0.02, within(FLOAT));
        assertThat(f.riseMetres(new Place(0, 0), new Place(10, 0))).isEqualTo(0.3, within(2 * FLOAT));
    }

    @Test
    void beyondTheEdgeTheEdgeHolds() {
        assertThat(plane().heightMetres(500, 0)).isEqualTo(11.5, within(FLOAT));
        assertThat(plane().covers(new Place(500, 0))).isFalse();
        assertThat(plane().covers(new Place(0, 0))).isTrue();
    }

    @Test
    void aTurnedAndStretchedGridFindsItsNodes() {
        var grid = new HeightField.Grid(3, 0.2, 0.01, 7, 0.02, -0.25);
        Place node = grid.place(5, 2);
        assertThat(grid.column(node.x(), node.y())).isEqualTo(5, within(1e-12));
        assertThat(grid.row(node.x(), node.y())).isEqualTo(2, within(1e-12));
    }

    @Test
    void coarseCellsDoNotShowGreens() {
        assertThat(plane().resolutionMetres()).isEqualTo(5, within(1e-12));
        assertThat(plane().showsGreens()).isTrue();
        HeightField coarse = new HeightField(2, 2, new float[4], HeightField.Grid.square(new Place(0, 0), 30));
        assertThat(coarse.showsGreens()).isFalse();
    }

    @Test
    void refusesMissingHeights() {
        assertThatThrownBy(() -> new HeightField(
                        2, 2, new float[] {1, 2, Float.NaN, 4}, HeightField.Grid.square(new Place(0, 0), 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
