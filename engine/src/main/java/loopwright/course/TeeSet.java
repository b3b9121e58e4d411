package loopwright.course;

import java.util.Map;

/** A set of tees: a name ("blue", "back") and a place on every hole; rank 0 is the longest set of its course. */
public record TeeSet(String name, int rankFromBack, Map<Integer, TeePlace> placeByHole) {
    public TeeSet {
        placeByHole = Map.copyOf(placeByHole);
    }

    /** The place on a hole; fails if the set does not know the hole. */
    public TeePlace getPlace(int hole) {
        TeePlace place = placeByHole.get(hole);
        if (place == null) {
            throw new IllegalArgumentException("the " + name + " tees have no hole " + hole);
        }
        return place;
    }
}
