package loopwright.action;

import java.nio.file.Path;
import loopwright.player.PlayerProfile;

/** Port: reads and writes a player as a file. */
public interface PlayerFiles {
    /** Reads a player file; a {@link UserFault} names the field that cannot be used. */
    PlayerProfile read(Path file);

    /** Writes a player file that reads back to the same player; the file appears whole or not at all. */
    void write(PlayerProfile profile, Path target);
}
