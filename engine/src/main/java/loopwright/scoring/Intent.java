package loopwright.scoring;

import java.util.Optional;
import loopwright.geo.LatLon;

/**
 * What a player meant to do with a stroke, said before it, and whether he then struck it so.
 *
 * @param club he first named, where that was written down
 * @param aim the place he aimed at
 * @param finish the lie he expected the ball to finish on
 * @param struckAsMeant his own word after the stroke
 */
public record Intent(
        Optional<String> club, Optional<LatLon> aim, Optional<Lie> finish, Optional<Boolean> struckAsMeant) {
    /** Nothing written down. */
    public static final Intent NONE =
            new Intent(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
