package loopwright.scoring;

import java.util.random.RandomGenerator;
import loopwright.geo.Place;
import loopwright.putting.LevelPutt;
import loopwright.strategy.HoleTarget;

/** Plays a level green for the target: the pace of every putt is chosen by what is still allowed. */
public final class TargetGreenPlay implements GreenPlay {
    private static final int RUNAWAY = 100;

    private final LevelPutt putt;
    private final HoleTarget hole;
    private final int inHand;

    /** {@code inHand} strokes on the tee of the hole. */
    public TargetGreenPlay(LevelPutt putt, HoleTarget hole, int inHand) {
        this.putt = putt;
        this.hole = hole;
        this.inHand = inHand;
    }

    @Override
    public int putts(Place ball, Place hole, RandomGenerator random) {
        return putts(ball, hole, 0, random);
    }

    @Override
    public int putts(Place ball, Place cup, int strokes, RandomGenerator random) {
        double left = ball.distanceTo(cup);
        for (int putts = 0; putts < RUNAWAY; ) {
            double past = hole.overshootMetres(inHand, strokes + putts, left);
            left = putt.play(left, past, random.nextGaussian(), random.nextGaussian());
            putts++;
            if (left <= 0) {
                return putts;
            }
        }
        throw new IllegalStateException("a putt from " + ball + " is not holed out");
    }
}
