package loopwright.scoring;

import java.util.random.RandomGenerator;
import loopwright.geo.Place;

/** Plays out a green, putt by putt, with fresh random draws. */
@FunctionalInterface
public interface GreenPlay {
    /** Number of putts, 1 or more, to hole out from this place. */
    int putts(Place ball, Place hole, RandomGenerator random);

    /** The same where the hole has taken so many strokes already; most players do not care. */
    default int putts(Place ball, Place hole, int strokes, RandomGenerator random) {
        return putts(ball, hole, random);
    }
}
