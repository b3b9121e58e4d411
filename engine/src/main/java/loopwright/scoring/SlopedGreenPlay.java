package loopwright.scoring;

import java.util.random.RandomGenerator;
import loopwright.geo.Place;
import loopwright.putting.SlopedGreenOdds;
import loopwright.putting.SlopedPutt;

/** Plays a measured green with fresh putts, each rolled over the green by itself, aimed as the odds advise. */
public final class SlopedGreenPlay implements GreenPlay {
    private static final int RUNAWAY = 100;

    private final SlopedGreenOdds aims;
    private final SlopedPutt putt;

    /** The odds only say what the player means to do; what becomes of it is the putt's. */
    public SlopedGreenPlay(SlopedGreenOdds aims, SlopedPutt putt) {
        this.aims = aims;
        this.putt = putt;
    }

    @Override
    public int putts(Place ball, Place hole, RandomGenerator random) {
        double x = ball.x();
        double y = ball.y();
        for (int putts = 1; putts < RUNAWAY; putts++) {
            SlopedGreenOdds.Stroke meant = aims.stroke(x, y);
            SlopedPutt.Finish finish = putt.play(
                    x, y, meant.startRadians(), meant.startSpeed(), random.nextGaussian(), random.nextGaussian());
            if (finish.holed()) {
                return putts;
            }
            x = finish.x();
            y = finish.y();
        }
        throw new IllegalStateException("a putt from " + ball + " is not holed out");
    }
}
