package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EvaluatorTest {
    /** Rounding of a handful of additions of numbers below ten. */
    private static final double EXACT = 1e-12;

    private static final double[] NONE = {};

    @Test
    void strokeAndDistanceIsSolvedAndNotWaitedFor() {
        // One shot: 0.8 to a cell worth 2, 0.2 out of bounds: v = 1 + 0.8 * 2 + 0.2 (1 + v) = 3.5.
        assertThat(Evaluator.solve(1 + 0.8 * 2, 0.2, NONE, NONE, 0, 9)).isCloseTo(3.5, within(EXACT));
    }

    @Test
    void reliefIsTakenWhereItIsCheaperThanTheReplay() {
        // 0.7 to a cell worth 2; 0.3 cross the edge, where a drop costs 2.5 in all: v = 1 + 1.4 + 0.75 = 3.15 < 1 + v.
        double v = Evaluator.solve(1 + 0.7 * 2, 0, new double[] {2.5}, new double[] {0.3}, 1, 9);
        assertThat(v).isCloseTo(3.15, within(EXACT));
    }

    @Test
    void replayIsTakenWhereEveryDropIsWorse() {
        // The drop would cost 6: v = 1 + 1.4 + 0.3 (1 + v), so v = 2.7 / 0.7, and 1 + v = 4.857 < 6.
        double v = Evaluator.solve(1 + 0.7 * 2, 0, new double[] {6}, new double[] {0.3}, 1, 9);
        assertThat(v).isCloseTo(2.7 / 0.7, within(EXACT));
    }

    @Test
    void theAnswerDoesNotDependOnTheStart() {
        double[] cost = {2.5, 6, 4.1};
        double[] weight = {0.1, 0.1, 0.1};
        double high = Evaluator.solve(2.4, 0.05, cost, weight, 3, 50);
        double low = Evaluator.solve(2.4, 0.05, cost, weight, 3, 0);
        assertThat(high).isCloseTo(low, within(EXACT));
    }

    @Test
    void aShotThatNeverStaysInPlayTakesItsDropHoweverLowTheStart() {
        // v = 1 + min(5, 1 + v), all of it: the replay alone would never end
        double v = Evaluator.solve(1, 0, new double[] {5}, new double[] {1}, 1, 0);
        assertThat(v).isCloseTo(6, within(EXACT));
    }

    @Test
    void aShotThatNeverStaysInPlayIsHopeless() {
        assertThat(Evaluator.solve(1, 1, NONE, NONE, 0, 4)).isInfinite();
    }
}
