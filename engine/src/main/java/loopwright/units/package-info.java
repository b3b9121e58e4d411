/**
 * Value types for the quantities that cross the engine's public border: SI inside, the unit in every name.
 * Deliberately not here: parsing and printing, which belong to the faces (cli, web, table, book).
 */
@NullMarked
package loopwright.units;

import org.jspecify.annotations.NullMarked;
