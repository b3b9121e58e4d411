/**
 * Putting: the green's surface, how a ball rolls on it and is captured, a player's putting skill, odds and fitting.
 * Deliberately not here: chips, and which pace a round's target asks for (that is {@code strategy}).
 */
@NullMarked
package loopwright.putting;

import org.jspecify.annotations.NullMarked;
