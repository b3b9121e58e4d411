/**
 * Keeping and explaining scores: published strokes to hole out, strokes gained, and rounds as they were recorded.
 * Deliberately not here: choosing a shot (that is {@code strategy}) and reading files.
 */
@NullMarked
package loopwright.scoring;

import org.jspecify.annotations.NullMarked;
