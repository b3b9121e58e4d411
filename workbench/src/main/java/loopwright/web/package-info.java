/**
 * The bench in the browser: pages, forms and pictures over HTTP, on this computer only.
 * Deliberately not here: anything that is worked out; pages ask the same actions as the command line.
 */
@NullMarked
package loopwright.web;

import org.jspecify.annotations.NullMarked;
