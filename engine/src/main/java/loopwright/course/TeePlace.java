package loopwright.course;

import java.util.Optional;
import loopwright.geo.Place;

/** Where a set of tees starts on one hole; {@code standsIn} names the set it was borrowed from, if it was. */
public record TeePlace(Place place, Optional<String> standsIn) {}
