package loopwright.scoring;

import java.util.random.RandomGenerator;
import loopwright.geo.Place;
import loopwright.putting.LevelGreenOdds;

/** Plays a level green with fresh putts, each at the pace that needs fewest putts from its distance. */
public final class LevelGreenPlay implements GreenPlay {
    private static final int RUNAWAY = 100;

    private final LevelGreenOdds odds;

    public LevelGreenPlay(LevelGreenOdds odds) {
        this.odds = odds;
    }

    @Override
    public int putts(Place ball, Place hole, RandomGenerator random) {
        double left = ball.distanceTo(hole);
        for (int putts = 1; putts < RUNAWAY; putts++) {
            left = odds.putt().play(left, odds.bestOvershootMetres(left), random.nextGaussian(), random.nextGaussian());
            if (left <= 0) {
                return putts;
            }
        }
        throw new IllegalStateException("a putt of " + ball.distanceTo(hole) + " m is not holed out");
    }
}
