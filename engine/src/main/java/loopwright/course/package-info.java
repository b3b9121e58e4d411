/**
 * A golf course as the engine needs it: areas, holes, tees, trees, the survey, and the exact surface at any place.
 * Deliberately not here: reading map files, which is the work of adapters.
 */
@NullMarked
package loopwright.course;

import org.jspecify.annotations.NullMarked;
