/**
 * Scores: the play-out that referees every solver, score distributions and strokes gained.
 * Deliberately not here: how a choice is found.
 */
@NullMarked
package loopwright.scoring;

import org.jspecify.annotations.NullMarked;
