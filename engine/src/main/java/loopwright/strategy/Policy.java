package loopwright.strategy;

import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;

/** A fixed way of playing one hole: a choice for every place, and the values that decide between reliefs. */
public interface Policy {

    /** What to do with a ball at rest here, off the green of the hole. */
    Choice choose(Place ball, Surface surface, Situation situation);

    /** Expected strokes to hole out from a ball at rest here in this situation, before the stroke. */
    double value(Place ball, Surface surface, Situation situation);

    /** Expected strokes to hole out from a ball dropped here, its situation not yet known. */
    double valueOfDrop(Place place, Surface surface);
}
