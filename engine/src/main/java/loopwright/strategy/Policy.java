package loopwright.strategy;

import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.rules.Relief;

/** A fixed way of playing one hole: a choice for every place, and the values that decide between reliefs. */
public interface Policy {

    /** What to do with a ball at rest here, off the green of the hole. */
    Choice choose(Place ball, Surface surface, Situation situation);

    /** Expected strokes to hole out from a ball at rest here in this situation, before the stroke. */
    double value(Place ball, Surface surface, Situation situation);

    /** Expected strokes to hole out from a ball dropped here, its situation not yet known. */
    double valueOfDrop(Place place, Surface surface);

    /** The same policy for a hole that has taken so many strokes already; most do not care. */
    default Policy afterStrokes(int strokes) {
        return this;
    }

    /** What stroke and distance costs from where the stroke was played; the lowest cost is chosen. */
    default double costOfReplay(Place from, Surface surface, Situation situation) {
        return 1 + value(from, surface, situation);
    }

    /** What a drop costs, on the same scale. */
    default double costOfDrop(Relief.Option drop, Surface surface) {
        return drop.penaltyStrokes() + valueOfDrop(drop.place(), surface);
    }
}
