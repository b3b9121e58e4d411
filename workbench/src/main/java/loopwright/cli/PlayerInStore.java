package loopwright.cli;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A player of the store. */
final class PlayerInStore {
    @Option(names = "--player", paramLabel = "NAME", required = true, description = "Name or id of the player.")
    String player = "";

    @Mixin
    StoreOptions where = new StoreOptions();
}
