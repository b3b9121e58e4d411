package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import loopwright.numerics.Watch;
import loopwright.player.RoundDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Hardy's game through the whole hole solver: raster, nodes, clouds and lanes ({@link TinyHole}) give the exact answers
 * of references statistics 3.1 and 3.2 (reference/strategy).
 */
class TargetSolverReferenceTest {
    private static final double SIX_DIGITS = 0.5e-6 + 1e-12; // printed to six decimals
    /** Sums of some thousand products of doubles. */
    private static final double EXACT = 1e-9;

    /** The putt that ends the hole is not one of Hardy's strokes. */
    private static final ScoreTable LESS_THE_PUTT = ScoreTable.net(1);

    private static TargetSolution round(TargetHole hole, int n) {
        Ability ability = hole.mean().problem().ability();
        return TargetSolver.solve(
                Collections.nCopies(n, hole),
                List.of(new DayAbility(ability, RoundDay.ORDINARY)),
                TargetSettings.EXACT,
                Watch.NONE);
    }

    @ParameterizedTest
    @CsvSource({"3, .2, .1", "4, .2, .1", "5, .2, .1", "4, .1, .1", "4, .2, .2"})
    void oneHoleHasHardysDistribution(int par, double good, double bad) {
        TargetHole hole = new TinyHole(par, 4, good, bad).hardy(LESS_THE_PUTT);
        double[] scores = hole.evaluation().scores();
        ScoreDistribution hardy = HardyGame.strokes(par, good, bad);
        for (int strokes = 1; strokes < PolicyEvaluation.MOST_STROKES - 1; strokes++) {
            assertThat(scores[strokes + 1])
                    .as("%d strokes", strokes)
                    .isCloseTo(hardy.probability(strokes), within(EXACT));
        }
        TargetSolution one = round(hole, 1);
        for (int limit = 1; limit < 12; limit++) {
            assertThat(one.targetPlay(limit)).isCloseTo(hardy.probabilityAtMost(limit), within(EXACT));
        }
    }

    @Test
    void safeOrRiskyHolesGiveTheTableOfExactAnswers() {
        TargetHole hole = new TinyHole(4, 4, 0.2, 0.2).withSafety(LESS_THE_PUTT);
        assertThat(hole.evaluation().expected()).isCloseTo(5, within(EXACT));
        TargetSolution eighteen = round(hole, 18);
        for (TargetTable.Row row : TargetTable.rows()) {
            int first = 18 - row.holes();
            int limit = 4 * row.holes() + row.d();
            assertThat(eighteen.targetPlayFrom(first, limit)).as("%s", row).isCloseTo(row.best(), within(SIX_DIGITS));
            assertThat(eighteen.meanPlayFrom(first, limit)).as("%s", row).isZero();
        }
        assertThat(eighteen.meanPlay(72)).isEqualTo(1);
    }

    @Test
    void alwaysRiskyHolesGiveTheirColumn() {
        TargetSolution eighteen = round(new TinyHole(4, 4, 0.2, 0.2).hardy(LESS_THE_PUTT), 18);
        for (TargetTable.Row row : TargetTable.rows()) {
            double chance = eighteen.targetPlayFrom(18 - row.holes(), 4 * row.holes() + row.d());
            assertThat(chance).as("%s", row).isCloseTo(row.risky(), within(SIX_DIGITS));
        }
    }
}
