package loopwright.scoring;

import java.util.random.RandomGenerator;
import loopwright.geo.Place;

/** Plays out a green, putt by putt, with fresh random draws. */
@FunctionalInterface
public interface GreenPlay {
    /** Number of putts, 1 or more, to hole out from this place. */
    int putts(Place ball, Place hole, RandomGenerator random);
}
