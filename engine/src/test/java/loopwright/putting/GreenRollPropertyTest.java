package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GreenRollPropertyTest {
    private static final GreenSpeed TEN = Anchors.TEN_FEET;

    /** Fixed steps against steps fifteen times as fine, on random planes up to 5 % and random strokes. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void finerStepsMoveTheBallByLessThanThreeMillimetres(long seed) {
        RandomGenerator random = new SplittableRandom(seed);
        for (int i = 0; i < 25; i++) {
            GreenSurface plane = plane(random);
            double speed = 0.8 + 3.2 * random.nextDouble();
            double bearing = 2 * Math.PI * random.nextDouble();
            RollWorkspace coarse = new RollWorkspace(0, 0);
            RollWorkspace fine = new RollWorkspace(0, 0);
            new GreenRoll(plane, TEN).roll(0, 5, speed * Math.sin(bearing), speed * Math.cos(bearing), coarse);
            new GreenRoll(plane, TEN, GreenRoll.STEP_SECONDS / 15)
                    .roll(0, 5, speed * Math.sin(bearing), speed * Math.cos(bearing), fine);
            // a putt is measured to the centimetre; a third of that keeps the roll out of every other error
            assertThat(Math.hypot(coarse.x - fine.x, coarse.y - fine.y)).isLessThan(0.003);
        }
    }

    @Test
    void mirroredSlopesGiveMirroredRolls() {
        RandomGenerator random = new SplittableRandom(11);
        for (int i = 0; i < 50; i++) {
            double east = 0.08 * random.nextDouble() - 0.04;
            double north = 0.08 * random.nextDouble() - 0.04;
            double vx = 2 * random.nextDouble() - 1;
            RollWorkspace one = new RollWorkspace(0, 3);
            RollWorkspace other = new RollWorkspace(0, 3);
            new GreenRoll(new PlaneGreen(east, north), TEN).roll(0, 0, vx, 1.9, one);
            new GreenRoll(new PlaneGreen(-east, north), TEN).roll(0, 0, -vx, 1.9, other);
            assertThat(other.x).isEqualTo(-one.x);
            assertThat(other.y).isEqualTo(one.y);
            assertThat(Math.abs(other.offset)).isCloseTo(Math.abs(one.offset), within(1e-12)); // rounding
        }
    }

    @Test
    void runningBackFromTheRimAndForwardAgainMeetsTheHole() {
        RandomGenerator random = new SplittableRandom(12);
        for (int i = 0; i < 50; i++) {
            GreenRoll roll = new GreenRoll(plane(random), TEN);
            RollWorkspace ball = new RollWorkspace(0, 0);
            double speed = 0.3 + 1.3 * random.nextDouble();
            roll.traceBack(0, 0, speed, 2 * Math.PI * random.nextDouble(), 1 + 9 * random.nextDouble(), ball);
            roll.roll(ball.x, ball.y, -ball.vx, -ball.vy, ball);
            assertThat(ball.offset).isCloseTo(0, within(0.005)); // two step errors
            assertThat(Math.sqrt(ball.speedSquared)).isCloseTo(speed, within(0.02));
        }
    }

    @Test
    void whereASlopeHoldsNoBallItIsTakenAsOneThatJustDoes() {
        RollWorkspace ball = new RollWorkspace(0, 100);
        new GreenRoll(new PlaneGreen(0, -0.2), TEN).roll(0, 0, 0, 0.5, ball);
        assertThat(ball.y).isBetween(0.5, 10.0);
    }

    private static GreenSurface plane(RandomGenerator random) {
        double slope = 0.05 * random.nextDouble();
        double bearing = 2 * Math.PI * random.nextDouble();
        return new PlaneGreen(slope * Math.sin(bearing), slope * Math.cos(bearing));
    }
}
