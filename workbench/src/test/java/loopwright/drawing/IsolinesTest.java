package loopwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class IsolinesTest {
    @Test
    void aConeGivesOneClosedCircle() {
        List<Trace> lines = Isolines.of(cone(41, 20, 20), 12.3);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).closed()).isTrue();
        for (Point p : lines.get(0).points()) {
            // A cone is straight along radii; on the grid's edges the error is at most h^2/(8 r) = 1/98.
            assertThat(p.distanceTo(new Point(20, 20))).isBetween(12.3 - 0.011, 12.3 + 0.011);
        }
    }

    @Test
    void aPlaneGivesOneOpenLineFromEdgeToEdge() {
        double[][] plane = new double[5][9];
        for (int r = 0; r < 5; r++) {
            for (int c = 0; c < 9; c++) {
                plane[r][c] = c;
            }
        }
        List<Trace> lines = Isolines.of(plane, 3.25);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).closed()).isFalse();
        assertThat(lines.get(0).points()).hasSize(5).allMatch(p -> p.x() == 3.25);
        assertThat(lines.get(0).length()).isEqualTo(4);
    }

    @Test
    void aSaddleIsDecidedByItsMiddle() {
        double[][] high = {{1, 0}, {0, 1.2}};
        // Mean 0.55: the high corners are joined across the middle, so each line cuts off one low corner.
        for (Trace line : Isolines.of(high, 0.5)) {
            Point a = line.points().get(0);
            Point b = line.points().get(1);
            Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
            assertThat(Math.min(middle.distanceTo(new Point(1, 0)), middle.distanceTo(new Point(0, 1))))
                    .isLessThan(0.5);
        }
        assertThat(Isolines.of(high, 0.5)).hasSize(2);
    }

    @Test
    void unknownCornersCarryNoLine() {
        double[][] values = cone(41, 20, 20);
        values[20][32] = Double.NaN;
        List<Trace> lines = Isolines.of(values, 12.3);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).closed()).isFalse();
    }

    private static double[][] cone(int side, double x, double y) {
        double[][] out = new double[side][side];
        for (int r = 0; r < side; r++) {
            for (int c = 0; c < side; c++) {
                out[r][c] = Math.hypot(c - x, r - y);
            }
        }
        return out;
    }
}
