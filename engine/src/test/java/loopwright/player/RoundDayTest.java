package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RoundDayTest {
    private static final DayEffect EFFECT = new DayEffect(0.02, 0.1);
    /** A handful of additions. */
    private static final double EXACT = 1e-12;

    private static double average(java.util.function.ToDoubleFunction<RoundDay> value) {
        return EFFECT.days().stream()
                .mapToDouble(d -> d.weight() * value.applyAsDouble(d))
                .sum();
    }

    @Test
    void fiveDaysHaveTheMomentsOfTheNormalLaws() {
        assertThat(EFFECT.days()).hasSize(5);
        assertThat(EFFECT.days().get(0).isOrdinary()).isTrue();
        assertThat(average(d -> 1)).isCloseTo(1, within(EXACT));
        assertThat(average(RoundDay::biasRadians)).isCloseTo(0, within(EXACT));
        assertThat(average(d -> d.biasRadians() * d.biasRadians())).isCloseTo(0.0004, within(EXACT));
        // The fourth moment of a normal law is three times the square of its variance.
        assertThat(average(d -> Math.pow(d.biasRadians(), 4))).isCloseTo(3 * 0.0004 * 0.0004, within(EXACT));
        assertThat(average(d -> Math.pow(Math.log(d.spread()), 2))).isCloseTo(0.01, within(EXACT));
        assertThat(average(d -> Math.pow(Math.log(d.spread()), 4))).isCloseTo(3e-4, within(EXACT));
    }

    @Test
    void aDayTurnsAndWidensEverySwing() {
        Player player = PlayerPrior.of(90, Player.Hand.RIGHT).player("test");
        Player today = player.on(new RoundDay(0.03, 1.5, 1));
        List<Swing> usual = player.swings();
        for (int i = 0; i < usual.size(); i++) {
            ShotPattern before = usual.get(i).pattern();
            ShotPattern after = today.swings().get(i).pattern();
            assertThat(after.directionRadians() - before.directionRadians()).isCloseTo(0.03, within(EXACT));
            assertThat(after.directionSdRadians()).isCloseTo(1.5 * before.directionSdRadians(), within(EXACT));
            assertThat(after.carryMetres()).isEqualTo(before.carryMetres());
            assertThat(after.mishitRate()).isEqualTo(before.mishitRate());
        }
        assertThat(player.on(RoundDay.ORDINARY)).isEqualTo(player);
    }

    @Test
    void daysAreDrawnWithTheStatedSpread() {
        SplittableRandom random = new SplittableRandom(5);
        double squares = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double bias = EFFECT.draw(random).biasRadians();
            squares += bias * bias / n;
        }
        // The standard error of a variance of n normal draws is sqrt(2/n) of it; four of them.
        assertThat(squares).isCloseTo(0.0004, within(0.0004 * 4 * Math.sqrt(2.0 / n)));
    }
}
