package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import loopwright.geo.Place;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayingLength;
import loopwright.player.RoundDay;
import loopwright.player.StrikeModel;
import org.junit.jupiter.api.Test;

class StartReadingTest {
    private static final Place BALL = new Place(0, 0);
    private static final double TWO_DEGREES = Math.toRadians(2);

    private final Player player = PlayerPrior.of(90, Player.Hand.RIGHT).player("test");
    private final StrikeModel straight = new StrikeModel(player);
    private final int seven = number("7-iron");

    private int number(String label) {
        for (int s = 0; s < straight.shots(); s++) {
            if (straight.label(s).equals(label)) {
                return s;
            }
        }
        throw new IllegalStateException("no " + label);
    }

    private static Optional<PlayingLength> wind(double metres, double driftRadians) {
        return Optional.of(new PlayingLength(130, driftRadians, 0, metres, 0, 0));
    }

    @Test
    void aStraightBallIsStartedAtItsFinish() {
        RoundPlan.Start start = new StartReading(straight).of(BALL, 0.3, 130, seven, Optional.empty());
        assertThat(start.spotOffsetMetres()).isZero();
        assertThat(start.finish().distanceTo(BALL.along(0.3, 130))).isLessThan(1e-9);
        assertThat(start.moreClubs()).isZero();
    }

    @Test
    void aBallThatFinishesRightStartsLeftOfTheLineToIt() {
        StrikeModel right = new StrikeModel(player.on(new RoundDay(TWO_DEGREES, 1, 1)));
        RoundPlan.Start start = new StartReading(right).of(BALL, 0, 130, seven, Optional.empty());
        // 92 in ahead, 2 degrees: 3.2 in
        assertThat(start.spotOffsetMetres() / 0.0254).isCloseTo(-92 * Math.tan(TWO_DEGREES), within(1e-9));
        assertThat(start.spot().distanceTo(BALL)).isCloseTo(92 * 0.0254, within(1e-9));
        assertThat(start.finish().x()).isCloseTo(130 * Math.sin(TWO_DEGREES), within(1e-9));
    }

    @Test
    void theWindsDriftCountsAsTheShapeDoes() {
        RoundPlan.Start start = new StartReading(straight).of(BALL, 0, 130, seven, wind(0, -TWO_DEGREES));
        assertThat(start.spotOffsetMetres()).isPositive();
        assertThat(start.finish().x()).isNegative();
    }

    @Test
    void aHeadWindAsksForClubsInHalves() {
        double club = straight.lengthMetres(number("6-iron")) - straight.lengthMetres(seven);
        StartReading reading = new StartReading(straight);
        assertThat(reading.of(BALL, 0, 130, seven, wind(0.5 * club, 0)).moreClubs())
                .isEqualTo(0.5);
        assertThat(reading.of(BALL, 0, 130, seven, wind(1.1 * club, 0)).moreClubs())
                .isEqualTo(1);
        assertThat(reading.of(BALL, 0, 130, seven, wind(1.4 * club, 0)).moreClubs())
                .isEqualTo(1.5);
        assertThat(reading.of(BALL, 0, 130, seven, wind(-2 * club, 0)).moreClubs())
                .isZero();
    }
}
