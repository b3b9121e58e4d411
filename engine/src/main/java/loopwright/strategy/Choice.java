package loopwright.strategy;

import loopwright.geo.Place;
import loopwright.rules.Relief;

/** What a player decides to do with a ball at rest off the green. */
public sealed interface Choice {

    /**
     * A stroke.
     *
     * @param shot number of the shot in {@code StrikeModel}
     * @param target a full swing is aimed in its direction; a touch shot is meant to stop there
     */
    record Stroke(int shot, Place target) implements Choice {}

    /** A ball declared unplayable and dropped (Rule 19). */
    record Unplayable(Relief.Option drop) implements Choice {}
}
