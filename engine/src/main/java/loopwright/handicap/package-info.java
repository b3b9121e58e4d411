/**
 * The arithmetic of the Rules of Handicapping: differentials, index, caps, course and playing handicap, strokes received.
 * Deliberately not here: issuing an index (only an authorised association does that) and keeping anybody's record.
 */
@NullMarked
package loopwright.handicap;

import org.jspecify.annotations.NullMarked;
