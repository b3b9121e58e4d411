package loopwright.scoring;

import java.util.OptionalInt;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.rules.Relief;
import loopwright.strategy.Choice;
import loopwright.strategy.Policy;
import loopwright.units.Distance;

/**
 * Looks over a policy's shoulder while the referee plays one hole, and keeps what a scorecard with counts would: where the
 * second stroke was played from, and after how many strokes the ball first lay round the green. One per hole and round.
 */
public final class HoleWitness implements Policy {
    /** Round the green: off it, within this of the hole, 50 yd. */
    private static final double AROUND_METRES = 50 * Distance.METRES_PER_YARD;

    private final Policy policy;
    private final Place hole;
    private int calls;
    private boolean fairway;
    private int strokesWhenAround = -1;

    public HoleWitness(Policy policy, Place hole) {
        this.policy = policy;
        this.hole = hole;
    }

    @Override
    public Policy afterStrokes(int strokes) {
        return new Following(policy.afterStrokes(strokes), strokes);
    }

    /** True if the second stroke was played from the fairway; a ball that found the green is told by the putts. */
    public boolean secondFromFairway() {
        return fairway;
    }

    /** Strokes taken when the ball first lay round the green, if it did. */
    public OptionalInt strokesWhenAround() {
        return strokesWhenAround < 0 ? OptionalInt.empty() : OptionalInt.of(strokesWhenAround);
    }

    private void see(Place ball, Surface surface, int strokes) {
        calls++;
        fairway |= calls == 2 && strokes == 1 && surface == Surface.FAIRWAY;
        if (strokes > 0 && strokesWhenAround < 0 && ball.distanceTo(hole) <= AROUND_METRES) {
            strokesWhenAround = strokes;
        }
    }

    @Override
    public Choice choose(Place ball, Surface surface, Situation situation) {
        return afterStrokes(0).choose(ball, surface, situation);
    }

    @Override
    public double value(Place ball, Surface surface, Situation situation) {
        return policy.value(ball, surface, situation);
    }

    @Override
    public double valueOfDrop(Place place, Surface surface) {
        return policy.valueOfDrop(place, surface);
    }

    /** The policy after some strokes, seen. */
    private final class Following implements Policy {
        private final Policy now;
        private final int strokes;

        Following(Policy now, int strokes) {
            this.now = now;
            this.strokes = strokes;
        }

        @Override
        public Choice choose(Place ball, Surface surface, Situation situation) {
            see(ball, surface, strokes);
            return now.choose(ball, surface, situation);
        }

        @Override
        public double value(Place ball, Surface surface, Situation situation) {
            return now.value(ball, surface, situation);
        }

        @Override
        public double valueOfDrop(Place place, Surface surface) {
            return now.valueOfDrop(place, surface);
        }

        @Override
        public double costOfReplay(Place from, Surface surface, Situation situation) {
            return now.costOfReplay(from, surface, situation);
        }

        @Override
        public double costOfDrop(Relief.Option drop, Surface surface) {
            return now.costOfDrop(drop, surface);
        }
    }
}
