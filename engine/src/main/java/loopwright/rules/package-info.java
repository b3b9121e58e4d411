/**
 * Relief and penalties as the Rules of Golf give them, each naming its Rule.
 * Deliberately not here: which relief to take, which is a choice of {@code strategy}.
 */
@NullMarked
package loopwright.rules;

import org.jspecify.annotations.NullMarked;
