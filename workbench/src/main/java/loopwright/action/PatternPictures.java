package loopwright.action;

import java.nio.file.Path;
import loopwright.player.Player;
import loopwright.player.ShotLog;

/** Port: draws a player's shot patterns with the balls they were fitted to. */
public interface PatternPictures {
    /**
     * Writes one picture of all clubs on ground ruled in the reader's unit; {@code shots} may be empty. The file appears
     * whole or not at all.
     */
    void drawPatterns(Player player, ShotLog shots, LengthUnit lengths, Path target);
}
