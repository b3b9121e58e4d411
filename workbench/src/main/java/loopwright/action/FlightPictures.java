package loopwright.action;

import java.nio.file.Path;

/** Port: draws the flight of one ball. */
public interface FlightPictures {
    /**
     * Draws from the side and from above; the file appears whole or not at all.
     *
     * @throws UserFault if the place cannot be written or its ending is unknown
     */
    void drawFlight(FlownShot shot, Path target);
}
