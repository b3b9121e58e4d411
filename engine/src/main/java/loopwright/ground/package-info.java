/**
 * What the ball lands and rolls on: surface kinds, firmness, height, bounce and roll.
 * Deliberately not here: which surface lies where (that is {@code course}).
 */
@NullMarked
package loopwright.ground;

import org.jspecify.annotations.NullMarked;
