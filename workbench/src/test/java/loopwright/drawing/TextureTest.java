package loopwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextureTest {
    private static final Extent SQUARE = new Extent(0, 0, 40, 40);
    private static final Extent HOLE = new Extent(10, 10, 30, 30);
    private static final List<Trace> RING = List.of(Trace.rectangle(SQUARE), Trace.rectangle(HOLE));

    @Test
    void ruledLinesStayInTheAreaAndLeaveItsHoleFree() {
        for (double angle : new double[] {0, 0.7, -1.1, Math.PI / 2}) {
            List<Trace> lines = Texture.ruled(RING, angle, 3, SQUARE);
            assertThat(lines).hasSizeGreaterThan(12);
            for (Trace line : lines) {
                Point a = line.points().get(0);
                Point b = line.points().get(1);
                Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
                assertThat(SQUARE.grown(1e-9).contains(line.extent())).isTrue();
                assertThat(HOLE.grown(-1e-9).contains(middle)).isFalse();
            }
        }
    }

    @Test
    void ruledLengthTimesSpacingIsTheArea() {
        double length = Texture.ruled(RING, 0.4, 0.05, SQUARE).stream()
                .mapToDouble(Trace::length)
                .sum();
        // 1,200 square points; a rule of 0.05 misses at most one spacing along each of the eight edges (240 points).
        assertThat(length * 0.05).isBetween(1200 - 240 * 0.05, 1200 + 240 * 0.05);
    }

    @Test
    void scatteredPointsLieInsideAndAreAboutAsManyAsThePitchSays() {
        List<Point> points = Texture.scattered(RING, 2, 0.3, SQUARE);
        assertThat(points).allMatch(p -> SQUARE.contains(p) && !HOLE.contains(p));
        double expected = 1200 / (2 * 2 * Math.sqrt(3) / 2);
        // A lattice shaken by less than half its pitch gains or loses points only along its edges.
        assertThat((double) points.size()).isBetween(expected * 0.85, expected * 1.15);
    }

    @Test
    void fringeStandsOnTheSideAskedFor() {
        Trace square = Trace.rectangle(SQUARE);
        assertThat(Texture.fringe(square, 5, 4, true))
                .allMatch(t -> !SQUARE.grown(-1e-6).contains(t.points().get(1)));
        assertThat(Texture.fringe(square, 5, 4, false))
                .allMatch(t -> SQUARE.contains(t.points().get(1)));
    }
}
