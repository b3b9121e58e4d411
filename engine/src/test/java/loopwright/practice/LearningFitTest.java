package loopwright.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import org.junit.jupiter.api.Test;

/** What a player's own drills say of how fast he learns. */
class LearningFitTest {
    private static final LearningTable TABLE = LearningTable.assumed(
                    PlayerPrior.of(90, Player.Hand.RIGHT).player("test"))
            .with(Skill.PACE, new LearningCurve(0.6, 20));

    @Test
    void withoutDrillsNothingMoves() {
        LearningTable fitted = LearningFit.of(TABLE, Map.of());
        TABLE.curves()
                .forEach((skill, curve) ->
                        assertThat(fitted.get(skill).hours()).isCloseTo(curve.hours(), within(1e-9 * curve.hours())));
    }

    @Test
    void tenSessionsOfAFastLearnerMoveHisHoursAndALittleThoseOfTheOthers() {
        LearningCurve truth =
                TABLE.get(Skill.PACE).withHours(TABLE.get(Skill.PACE).hours() / 3);
        LearningTable fitted = LearningFit.of(TABLE, Map.of(Skill.PACE, sessions(truth, 10, 0.03)));
        double own = fitted.get(Skill.PACE).hours() / TABLE.get(Skill.PACE).hours();
        double other = fitted.get(Skill.CHIP).hours() / TABLE.get(Skill.CHIP).hours();
        assertThat(own).isLessThan(0.7);
        assertThat(other).isBetween(own, 0.99);
    }

    @Test
    void manySessionsFindTheTruth() {
        LearningCurve truth =
                TABLE.get(Skill.PACE).withHours(TABLE.get(Skill.PACE).hours() / 2);
        LearningTable fitted = LearningFit.of(TABLE, Map.of(Skill.PACE, sessions(truth, 400, 0.03)));
        // 400 sessions of 3 % over two of his times: the rate is known to some 5 %; prior and grid of a tenth beside it
        assertThat(fitted.get(Skill.PACE).hours()).isCloseTo(truth.hours(), within(0.15 * truth.hours()));
    }

    private static List<LearningFit.Point> sessions(LearningCurve truth, int count, double sd) {
        SplittableRandom random = new SplittableRandom(3);
        List<LearningFit.Point> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double hours = 20.0 * i / count;
            out.add(new LearningFit.Point(hours, Math.log(truth.left(hours)) + sd * random.nextGaussian(), sd));
        }
        return out;
    }
}
