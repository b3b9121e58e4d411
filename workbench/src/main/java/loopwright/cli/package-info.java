/**
 * The terminal's face: reads the command line, calls actions, prints.
 * Deliberately not here: any computing and any file format.
 */
@NullMarked
package loopwright.cli;

import org.jspecify.annotations.NullMarked;
