/**
 * Reads elevation rasters (GeoTIFF, ESRI ASCII grid) into a height field in the local frame of a course, and images of
 * its ground.
 * Deliberately not here: what slopes do to a ball, and drawing them.
 */
@NullMarked
package loopwright.adapter.terrain;

import org.jspecify.annotations.NullMarked;
