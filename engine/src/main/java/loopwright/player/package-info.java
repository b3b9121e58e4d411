/**
 * A player as numbers: the bag, each club's shot pattern, mishits, the effect of the lie, habits and fitting.
 * Deliberately not here: where the ball goes after it has landed, and any choice of club or aim.
 */
@NullMarked
package loopwright.player;

import org.jspecify.annotations.NullMarked;
