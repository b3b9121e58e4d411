package loopwright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import loopwright.geo.Place;
import loopwright.putting.GreenSpeed;
import loopwright.putting.PlaneGreen;
import loopwright.putting.PuttingSkill;
import loopwright.putting.PuttingSkillPrior;
import loopwright.putting.SlopedGreenOdds;
import loopwright.putting.SlopedPutt;
import org.junit.jupiter.api.Test;

class SlopedGreenPlayTest {
    private static final GreenSpeed TEN = GreenSpeed.ofRollMetres(3.048);
    private static final PuttingSkill NINETY = PuttingSkillPrior.ofLevel(90);
    private static final int PLAYS = 3_000;

    @Test
    void puttsPlayedOneByOneNeedAsManyAsTheOddsSay() {
        PlaneGreen plane = new PlaneGreen(0.02, -0.015);
        Place hole = new Place(3, -2);
        SlopedGreenOdds odds = new SlopedGreenOdds(plane, TEN, NINETY, hole.x(), hole.y());
        SlopedGreenPlay play = new SlopedGreenPlay(odds, new SlopedPutt(plane, TEN, NINETY, hole.x(), hole.y()));
        SplittableRandom random = new SplittableRandom(5);
        for (double metres : new double[] {0.1, 0.7, 1.7, 3.5, 7.3, 13}) {
            for (double bearing : new double[] {0.4, 2.2, 4.1}) {
                Place ball = hole.along(bearing, metres);
                double sum = 0;
                double squares = 0;
                for (int i = 0; i < PLAYS; i++) {
                    int putts = play.putts(ball, hole, random);
                    sum += putts;
                    squares += putts * putts;
                }
                double mean = sum / PLAYS;
                double error = Math.sqrt((squares / PLAYS - mean * mean) / PLAYS);
                // chance; and the aim and the value between nodes, up to two hundredths of a putt where it bends most
                assertThat(mean)
                        .as("%s m at %s rad", metres, bearing)
                        .isCloseTo(odds.expectedPutts(ball.x(), ball.y()), within(4 * error + 0.02));
            }
        }
    }
}
