package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SkillDoubtTest {
    private static final int DRAWS = 4000;

    private static Player measured(double assumedShare, int balls) {
        Player prior = PlayerPrior.of(85, Player.Hand.RIGHT).player("test");
        return new Player(
                prior.name(),
                prior.hand(),
                prior.level(),
                prior.swings().stream()
                        .map(s -> new Swing(s.club(), s.effort(), s.pattern(), new Evidence(balls, assumedShare)))
                        .toList(),
                prior.touchShots(),
                prior.putting(),
                prior.lostBallsPerRound());
    }

    private static double logSpreadSd(Player player) {
        SkillDoubt doubt = new SkillDoubt(player);
        SplittableRandom random = new SplittableRandom(3);
        double usual = player.swings().get(0).pattern().directionSdRadians();
        double squares = 0;
        for (int i = 0; i < DRAWS; i++) {
            double log = Math.log(doubt.draw(random).swings().get(0).pattern().directionSdRadians() / usual);
            squares += log * log / DRAWS;
        }
        return Math.sqrt(squares);
    }

    @Test
    void whereNothingIsMeasuredTheSpreadIsAsUncertainAsThePrior() {
        double prior = Math.hypot(PriorTable.SHARED_LOG_SPREAD_SD, PriorTable.CLUB_LOG_SPREAD_SD);
        // Four standard errors of a standard deviation from so many draws.
        assertThat(logSpreadSd(measured(1, 0))).isCloseTo(prior, within(prior * 4 / Math.sqrt(2.0 * DRAWS)));
    }

    @Test
    void ballsShrinkTheDoubt() {
        double quarter = logSpreadSd(measured(0.25, 30));
        double prior = Math.hypot(PriorTable.SHARED_LOG_SPREAD_SD, PriorTable.CLUB_LOG_SPREAD_SD);
        assertThat(quarter).isCloseTo(prior / 2, within(prior / 2 * 4 / Math.sqrt(2.0 * DRAWS)));
        assertThat(logSpreadSd(measured(0, 100_000))).isLessThan(1e-6);
    }
}
