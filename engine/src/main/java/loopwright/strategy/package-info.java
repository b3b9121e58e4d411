/**
 * Choosing: score distributions, score tables, and the options that cost fewest strokes or best beat a target.
 * Deliberately not here: replaying rounds against the rules, and strokes gained (that is {@code scoring}).
 */
@NullMarked
package loopwright.strategy;

import org.jspecify.annotations.NullMarked;
