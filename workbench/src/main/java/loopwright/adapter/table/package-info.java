/**
 * Tables and records as files: shot, count, score and putt lists as CSV, the player as JSON.
 * Deliberately not here: maps, pictures and any computing.
 */
@NullMarked
package loopwright.adapter.table;

import org.jspecify.annotations.NullMarked;
