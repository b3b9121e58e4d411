/**
 * Reads map files with OpenStreetMap's golf tagging into a course, with a record for every oddity, and writes courses.
 * Deliberately not here: what a plan makes of the course, and heights, which {@code adapter.terrain} reads.
 */
@NullMarked
package loopwright.adapter.osm;

import org.jspecify.annotations.NullMarked;
