/**
 * The hole solver: outcomes of every option, the choice with the fewest expected strokes, and the evaluation of any fixed policy.
 * Deliberately not here: the play-out that referees it ({@code scoring}), which shares no raster and no cloud with it.
 */
@NullMarked
package loopwright.strategy;

import org.jspecify.annotations.NullMarked;
