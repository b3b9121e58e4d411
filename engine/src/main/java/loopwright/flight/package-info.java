/**
 * From the strike to the landing: air, wind, launch, drag and lift, ball flight, and response surfaces of whole clouds.
 * Deliberately not here: what the ball does after it has touched the ground ({@code ground}) and whose ball it is.
 */
@NullMarked
package loopwright.flight;

import org.jspecify.annotations.NullMarked;
