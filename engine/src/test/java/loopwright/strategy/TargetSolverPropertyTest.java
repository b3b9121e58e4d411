package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loopwright.numerics.Watch;
import loopwright.player.RoundDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The solver against the slow and obvious way on {@link TinyHole}s, and laws of the chance. */
class TargetSolverPropertyTest {
    private static final double EXACT = 1e-9; // sums of some thousand products of doubles
    private static final int PAR = 3;
    private static final double GOOD = 0.15;
    private static final double BAD = 0.12;

    private static TargetSolution round(List<TargetHole> holes) {
        Ability ability = holes.get(0).mean().problem().ability();
        return TargetSolver.solve(
                holes, List.of(new DayAbility(ability, RoundDay.ORDINARY)), TargetSettings.EXACT, Watch.NONE);
    }

    private static TargetHole hole(ScoreTable table) {
        return new TinyHole(PAR, 4, GOOD, BAD).strokeByStroke(table);
    }

    /** Tables of gross strokes, the putt included; each settles after so many strokes. */
    static Stream<Arguments> tables() {
        return Stream.of(
                Arguments.of(List.of(ScoreTable.maximum(7), ScoreTable.maximum(6, 1)), 7),
                Arguments.of(List.of(ScoreTable.stableford(4, 0), ScoreTable.stableford(4, 1)), 7));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void tablesWithACeilingAgreeWithASearchOfEveryHistory(List<ScoreTable> tables, int settled) {
        TargetHole solved = hole(tables.get(0));
        TargetSolution round = round(tables.stream()
                .map(t -> new TargetHole(solved.mean(), solved.evaluation(), t))
                .toList());
        Search search = new Search(tables, settled);
        for (int limit = -9; limit <= 15; limit++) {
            assertThat(round.targetPlay(limit)).as("limit %d", limit).isCloseTo(search.tee(0, limit), within(EXACT));
        }
    }

    @Test
    void chancesRiseWithTheStrokesInHandAndTargetPlayIsNeverWorse() {
        TargetHole one = hole(ScoreTable.strokes());
        TargetSolution round = round(List.of(one, one, one));
        for (int first = 0; first < 3; first++) {
            for (int inHand = 3; inHand < 30; inHand++) {
                double chance = round.targetPlayFrom(first, inHand);
                assertThat(chance).isGreaterThanOrEqualTo(round.targetPlayFrom(first, inHand - 1));
                assertThat(chance).isGreaterThanOrEqualTo(round.meanPlayFrom(first, inHand) - EXACT);
            }
        }
    }

    @Test
    void chancesAloneAreTheSameAndNothingCanBePlayed() {
        TargetHole one = hole(ScoreTable.stableford(4, 1));
        List<DayAbility> days = List.of(new DayAbility(one.mean().problem().ability(), RoundDay.ORDINARY));
        TargetSolution played = TargetSolver.solve(List.of(one, one), days, Watch.NONE);
        TargetSolution alone = TargetSolver.chances(List.of(one, one), days, Watch.NONE);
        for (int limit = -9; limit <= 1; limit++) {
            assertThat(alone.targetPlay(limit)).as("limit %d", limit).isEqualTo(played.targetPlay(limit));
        }
        assertThat(played.holes().get(0).field()).isNotNull();
        assertThatThrownBy(() -> alone.holes().get(0).field()).isInstanceOf(IllegalStateException.class);
    }

    /** All choices, all outcomes, stroke by stroke; only what is alike on a tee is worked out once. */
    private static final class Search {
        private final List<ScoreTable> tables;
        private final int settled;
        private final Map<List<Integer>, Double> known = new HashMap<>();

        Search(List<ScoreTable> tables, int settled) {
            this.tables = tables;
            this.settled = settled;
        }

        double tee(int hole, int inHand) {
            if (hole == tables.size()) {
                return inHand >= 0 ? 1 : 0;
            }
            List<Integer> key = List.of(hole, inHand);
            if (!known.containsKey(key)) {
                known.put(key, from(hole, inHand, 0, 0));
            }
            return known.get(key);
        }

        private double from(int hole, int inHand, int strides, int strokes) {
            if (strides >= PAR) {
                return tee(hole + 1, inHand - tables.get(hole).counts(strokes + 1));
            }
            if (strokes >= settled) {
                return tee(hole + 1, inHand - tables.get(hole).counts(strokes));
            }
            double steady = from(hole, inHand, strides + 1, strokes + 1);
            double bold = GOOD * from(hole, inHand, strides + 2, strokes + 1)
                    + BAD * from(hole, inHand, strides, strokes + 1)
                    + (1 - GOOD - BAD) * steady;
            return Math.max(steady, bold);
        }
    }
}
