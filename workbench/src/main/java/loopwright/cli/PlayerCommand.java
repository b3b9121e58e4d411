package loopwright.cli;

import picocli.CommandLine.Command;

/** The verb "player"; its own verbs are added by {@code boot}. */
@Command(
        name = "player",
        mixinStandardHelpOptions = true,
        description = "Makes players from what they say, what was counted and what was measured.",
        synopsisSubcommandLabel = "VERB")
public final class PlayerCommand {}
