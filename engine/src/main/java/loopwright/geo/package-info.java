/**
 * The local metric frame of a course and the shapes in it: places, lines, regions and grids; JTS stays hidden inside.
 * Axes, once for the whole engine: x east, y north, z up, metres; bearings clockwise from north, radians.
 */
@NullMarked
package loopwright.geo;

import org.jspecify.annotations.NullMarked;
