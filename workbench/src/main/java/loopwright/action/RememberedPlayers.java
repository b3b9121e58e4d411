package loopwright.action;

import java.nio.file.Path;
import loopwright.player.PlayerProfile;

/** Players from files that never change (see {@link Workroom}): each is read once while it is in use. */
public final class RememberedPlayers implements PlayerFiles {
    private static final int KEPT = 12;

    private final PlayerFiles files;
    private final Remembered<Path, PlayerProfile> kept = new Remembered<>(KEPT);

    public RememberedPlayers(PlayerFiles files) {
        this.files = files;
    }

    @Override
    public PlayerProfile read(Path file) {
        return kept.get(file, () -> files.read(file));
    }

    @Override
    public void write(PlayerProfile profile, Path target) {
        files.write(profile, target);
    }
}
