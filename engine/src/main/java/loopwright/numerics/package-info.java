/**
 * Sampling, roots and quadrature on top of Hipparchus, and {@link Watch} for progress and cancelling.
 * Deliberately not here: anything that knows golf.
 */
@NullMarked
package loopwright.numerics;

import org.jspecify.annotations.NullMarked;
