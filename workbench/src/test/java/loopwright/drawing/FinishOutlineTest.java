package loopwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinishOutlineTest {
    @ParameterizedTest
    @CsvSource({"60,0.5", "60,0.8", "600,0.5", "600,0.8", "3000,0.8"})
    void holdsTheShareItSays(int balls, double share) {
        List<Point> finishes = finishes(balls, 0, 5);
        FinishOutline outline = new FinishOutline(finishes, 0.7);
        long inside = finishes.stream()
                .filter(p -> Texture.inside(outline.holding(share), p))
                .count();
        // The level is that of the ball which completes the share; interpolation on the grid may swap balls that lie
        // within a cell (1.5 points) of the outline: at most 3 in 100, and the rounding of one ball.
        assertThat((double) inside / balls).isBetween(share - 0.03 - 1.0 / balls, share + 0.03 + 1.0 / balls);
    }

    @Test
    void isTheEllipseOfANormalSample() {
        FinishOutline outline = new FinishOutline(finishes(20_000, 0, 8), 0);
        double area = area(outline.holding(0.5));
        // Half of a normal sample lies inside 2 ln 2 squared radii. Smoothing widens both axes by 1 + n^(-1/3) = 1.037
        // squared; 20,000 balls scatter the area by about 1 %, the grid by less.
        double exact = Math.PI * 2 * Math.log(2) * 8 * 16;
        assertThat(area / exact).isBetween(0.97, 1.07);
    }

    @Test
    void ballsThatGatherApartGetAnOutlineEach() {
        List<Point> both = new ArrayList<>(finishes(400, 0, 5));
        both.addAll(finishes(400, 150, 5));
        assertThat(new FinishOutline(both, 0)
                        .holding(0.5).stream().filter(t -> t.length() > 18).count())
                .isEqualTo(2);
    }

    @Test
    void fewBallsGetNone() {
        assertThat(FinishOutline.worthwhile(finishes(19, 0, 5))).isFalse();
        assertThat(FinishOutline.worthwhile(finishes(20, 0, 5))).isTrue();
    }

    @Test
    void ballsAllInOnePlaceStillGiveAnOutline() {
        List<Point> same = finishes(30, 0, 0);
        assertThat(new FinishOutline(same, 0).holding(0.8)).isNotEmpty();
    }

    private static List<Point> finishes(int balls, double x, double spread) {
        SplittableRandom random = new SplittableRandom(7);
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < balls; i++) {
            out.add(new Point(x + 2 * spread * random.nextGaussian(), 40 + spread * random.nextGaussian()));
        }
        return out;
    }

    private static double area(List<Trace> rings) {
        double sum = 0;
        for (Trace ring : rings) {
            List<Point> p = ring.points();
            double twice = 0;
            for (int i = 0, j = p.size() - 1; i < p.size(); j = i++) {
                twice += p.get(j).x() * p.get(i).y() - p.get(i).x() * p.get(j).y();
            }
            sum += Math.abs(twice) / 2;
        }
        return sum;
    }
}
