package loopwright.course;

import loopwright.geo.Place;

/** Something that can be seen from the tee and aimed at: a church, a lone tree, a chimney. */
public record SkylineTarget(String name, Place place) {
    public SkylineTarget {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a skyline target needs a name");
        }
    }
}
