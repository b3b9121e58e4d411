/**
 * Keeps the bench in a database, an embedded one or PostgreSQL, and carries it in and out as zip files.
 * Deliberately not here: what the kept documents mean; they are text to this package.
 */
@NullMarked
package loopwright.adapter.store;

import org.jspecify.annotations.NullMarked;
