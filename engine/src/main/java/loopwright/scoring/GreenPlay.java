package loopwright.scoring;

import java.util.random.RandomGenerator;

/** Plays out a green, putt by putt, with fresh random draws. */
@FunctionalInterface
public interface GreenPlay {
    /** Number of putts, 1 or more, to hole out from this distance. */
    int putts(double metres, RandomGenerator random);
}
