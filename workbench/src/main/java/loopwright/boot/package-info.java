/**
 * The only place that wires actions, adapters and faces together.
 * Deliberately not here: anything else.
 */
@NullMarked
package loopwright.boot;

import org.jspecify.annotations.NullMarked;
